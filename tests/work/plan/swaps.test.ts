// example: two parts of one thread in each other's holes, worked out by hand
import { describe, expect, it } from 'vitest'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { planOf } from '../../../src/work/plan/plan.ts'
import { swapsOf, swapText } from '../../../src/work/plan/swaps.ts'
import { sheetOf } from '../../../src/work/sheet/sheet.ts'

const SHORT = 'kind: sensor, thread: M12x1.75, thread-length: 9 mm, overall: 10 mm'
const LONG = 'kind: sensor, thread: M12x1.75, thread-length: 22 mm, overall: 23 mm'
const hole = (takes: string, depth: string) => `{ takes: ${takes}, found: { diameter: 9 mm, depth: ${depth} }, drill: { size: 10.2 mm },
    keep-clear: 1 mm, under-shoulder: [{ what: seal, thickness: 1.2 mm }] }`
const textOf = (short = SHORT, long = LONG) => `fettle: 1
job: { title: two sensors }
ask-first: { behind-the-metal: coolant }
parts: { short: { ${short} }, long: { ${long} } }
tools: { stop-error: 0.3 mm, tap-clear: 0.6 mm, taps: [{ name: bottoming, chamfer: 1.5 }] }
holes:
  left: ${hole('short', '20 mm')}
  right: ${hole('long', '30 mm')}
`
const judged = (short?: string, long?: string) => judgedJob('x.yaml', textOf(short, long))

// Stop 20 − 1 − 0.3 = 18.7; full diameter at worst 18.7 − 0.3 − 5.1·cot 59°; full thread 0.6 and 1.5 of 1.75 less.
const LEFT_FULL_MM = 18.4 - 5.1 / Math.tan((59 * Math.PI) / 180)
const LEFT_THREAD_MM = LEFT_FULL_MM - 0.6 - 1.5 * 1.75

describe('what would come of it', () => {
  it('the long one jams in the short hole: 22 − 1.2 of thread, where 12.11 mm are', () => {
    const [long, short] = swapsOf(judged())
    expect(long).toMatchObject({ part: 'long', into: { name: 'left' } })
    expect(long?.roomMm).toBeCloseTo(LEFT_THREAD_MM - 20.8, 9)
    // The short one in the deep hole lands on its 9 − 1.2 mm.
    expect(short).toMatchObject({ part: 'short', into: { name: 'right' } })
    expect(short?.roomMm).toBeCloseTo(LEFT_THREAD_MM + 10 - 7.8, 9)
    expect(short?.engagedMm).toBeCloseTo(7.8, 9)
  })

  it('the end of a part may meet the floor first: 30 − 1.2 in 15.34', () => {
    const [long] = swapsOf(judged(SHORT, LONG.replace('overall: 23 mm', 'overall: 30 mm').replace('length: 22 mm', 'length: 10 mm')))
    expect(long?.roomMm).toBeCloseTo(LEFT_FULL_MM - 28.8, 9)
  })

  // 11.5 in a hole 10.2 wide: 4 below the shoulder, 1.2 of it in the seal, 2.8 below the face.
  it('a wide neck stands on the rim', () => {
    const necked = 'kind: sensor, thread: M12x1.75, thread-length: 9 mm, overall: 10.5 mm, undercut: 4 mm, body: { neck: 11.5 mm }'
    const text = textOf(SHORT, necked).replace(
      /right: .*\n.*/,
      `right: ${hole('long', '30 mm').replaceAll('1.2 mm', '4 mm').replace('keep-clear', 'mouth: 0.3 mm, keep-clear')}`
    )
    const [long] = swapsOf(judgedJob('x.yaml', text))
    expect(long?.onRim).toContain('it stands on the rim, 2.80 mm before the shoulder lands')
  })

  // Thread 14 − 1.2 in 12.11: 0.69 short. A neck 11.5 wide and 4 long, 1.2 of it in the seal: 2.80 short, and that is where it stops.
  it('of thread and neck the one that stops it first is told', () => {
    const long = `${LONG.replace('length: 22 mm', 'length: 14 mm').replace('overall: 23 mm', 'overall: 14.5 mm')}, undercut: 4 mm`
    const told = (neck: string) => {
      const text = textOf(SHORT, `${long}${neck}`).replace(/right: .*\n.*/, `right: ${hole('long', '30 mm').replaceAll('1.2 mm', '4 mm')}`)
      return swapText(swapsOf(judgedJob('x.yaml', text))[0]!)
    }
    expect(told(', body: { neck: 11.5 mm }')).toContain('it stands on the rim, 2.80 mm before the shoulder lands')
    expect(told(', body: { neck: 10 mm }')).toContain(`jam with ${(14 - 1.2 - LEFT_THREAD_MM).toFixed(2)} mm left under its shoulder`)
    // Short enough for both holes, but nobody told how wide its neck is.
    const untold = long.replace('length: 14 mm', 'length: 9 mm').replace('overall: 14.5', 'overall: 10.5')
    const text = textOf(SHORT, untold).replace(/right: .*\n.*/, `right: ${hole('long', '30 mm').replaceAll('1.2 mm', '4 mm')}`)
    expect(swapText(swapsOf(judgedJob('x.yaml', text))[0]!)).toMatch(
      /nobody told how wide its neck is, and as wide as the thread it would jam: .* 2\.80 mm before/
    )
  })

  it('what nobody measured is not worked out', () => {
    const [long, short] = swapsOf(judged(SHORT.replace(', overall: 10 mm', ''), LONG.replace('thread-length: 22 mm, ', '')))
    expect([long?.roomMm, short?.roomMm]).toEqual([null, null])
  })
})

const stepsOf = (of: ReturnType<typeof judged>) => planOf(of).steps

it('plan and sheet tell them apart before the first hole is opened, and wherever one is picked up', () => {
  const of = judged()
  const never = 'never the long into hole left: at the worst end it would jam with 8.69 mm left under its shoulder, and crack the casting'
  expect(planOf(of).cautions).toContain(never)
  const [tag] = stepsOf(of)
    .filter(({ part }) => part === 'make ready')
    .slice(-1)
  expect(tag?.says).toContain('tag each part with its hole: short for hole left, long for hole right')
  expect(tag?.caution).toMatch(/never the long into hole left.*never the short into hole right: it would seat, with 7.80 mm of thread/)
  const read = stepsOf(of).filter(({ says }) => says.startsWith('read the tag'))
  expect(read.map(({ part, thing }) => `${part} ${thing}`)).toEqual([
    'try by hand holes.left',
    'try by hand holes.right',
    'fit holes.left',
    'fit holes.right'
  ])
  expect(read[0]).toMatchObject({ says: 'read the tag: this hole takes the short', caution: never })
  const labels = JSON.stringify(sheetOf(of).sections.find(({ id }) => id === 'labels'))
  expect(labels).toContain('"tag on the long","hole right, and no other"')
})

it.each([
  ['alike', SHORT, SHORT],
  ['of another pitch', SHORT, LONG.replace('M12x1.75', 'M12x1.5')],
  ['of another size', SHORT, LONG.replace('M12x1.75', 'M14x1.5')]
])('parts that are %s need no tag', (_, short, long) => {
  const of = judgedJob('x.yaml', textOf(short, long).replaceAll('drill: { size: 10.2 mm },', ''))
  expect(of.answer.errors).toEqual([])
  expect(swapsOf(of)).toEqual([])
  expect(stepsOf(of).filter(({ says }) => /\btag\b/.test(says))).toEqual([])
  expect(sheetOf(of).sections.some(({ id }) => id === 'labels')).toBe(false)
})
