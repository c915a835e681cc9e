// example: the order of work of the example jobs, and of jobs that lack this or that
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { SOURCES } from '../../../src/formula/source.ts'
import { PARTS, type Plan } from '../../../src/report/plan/plan.ts'
import { judgedJob } from '../../../src/work/job/judged-job.ts'
import { planOf } from '../../../src/work/plan/plan.ts'
import { type JobText, jobText } from '../invented-job.ts'

const planned = (text: string): Plan => planOf(judgedJob('x.yaml', text))
const plan = (text: JobText = {}) => planned(jobText(text))
const says = ({ steps }: Plan) => steps.map(step => step.says)
const saying = (of: Plan, part: RegExp) => of.steps.filter(step => part.test(step.says))

const examples = ['gearbox-preheater', 'hydraulic-tank-sensor'].map(name => ({
  name,
  of: planned(readFileSync(`examples/${name}.yaml`, 'utf8'))
}))

describe.each(examples)('$name', ({ of }) => {
  it('goes part by part', () => {
    const places = of.steps.map(({ part }) => PARTS.indexOf(part))
    expect(places).toEqual(places.toSorted((a, b) => a - b))
    expect(of.errors).toEqual([])
  })

  it('one action a step: short, with a source that is known', () => {
    for (const { says, source } of of.steps) {
      expect(says.length, says).toBeLessThan(140)
      if (source !== null) expect(Object.keys(SOURCES)).toContain(source)
    }
  })

  it('no number is lost and none is none', () => {
    expect(JSON.stringify(of)).not.toMatch(/NaN|Infinity|undefined/)
    for (const { figure } of of.steps) if (figure !== null) expect(figure.text).toMatch(/\d/)
  })

  it('the tightest number stands first', () => {
    const rooms = of.scraps.map(({ roomPercent }) => roomPercent)
    expect(rooms).toEqual(rooms.toSorted((a, b) => a - b))
    expect(rooms.length).toBeGreaterThan(1)
  })
})

it('the numbers are those of the job (hand arithmetic of the invented hole: flat bottom 24.0 - 0.5 - 1.0 - 0.3 = 22.2)', () => {
  const { steps, scraps } = plan()
  const figures = steps.flatMap(({ figure }) => (figure === null ? [] : [figure.text]))
  expect(figures).toContain('22.20 mm (0.8740 in)')
  // Full diameter 22.2 - 5.1·cot 59° = 19.136, 18.836 where the stop came short; less 0.6 clear 18.236, by 1.75 a turn: 10.42.
  expect(figures.filter(text => text === '10.4 turns')).toHaveLength(3)
  expect(figures.filter(text => text === '18.23 mm')).toHaveLength(3)
  // Metal left 24 + 6 - 22.2 = 7.8, at the worst end 6.4.
  expect(scraps.find(({ figure }) => figure.name === 'depth stop')?.room).toBeCloseTo(6.4, 9)
  // Room of a tap, counted for the shallowest hole: the 0.6 clear, 0.6/1.75 of a turn.
  expect(scraps[0]).toMatchObject({ figure: { name: 'turns of the tap' } })
  expect(scraps[0]!.room).toBeCloseTo(0.6 / 1.75, 9)
})

describe('after the cut (at the axis the drill cuts air: what a rod or a gauge can find is worked out by hand)', () => {
  // The stop 22.2, set within 0.3.
  it('the collar is where it was set, on every drill, before it is loosened', () => {
    const of = plan()
    const drills = saying(of, /^open the hole to the stop/)
    const stayed = saying(of, /^before the collar is loosened.*as it was set: 21.90 mm at least, 22.50 mm at most/)
    expect(stayed).toHaveLength(drills.length)
    expect(stayed[0]?.caution).toMatch(/more: the stop has slipped.*work the job out anew.*less: .*drill on to the stop/)
    expect(of.steps.indexOf(stayed[0]!)).toBe(of.steps.indexOf(drills[0]!) + 1)
    const exact = planned(jobText({}).replace('  stop-error: 0.3 mm\n', ''))
    expect(saying(exact, /as it was set: 22.50 mm at most$/)).not.toEqual([])
  })

  const found = (bottom: string) => planned(jobText({}).replace('depth: 24.0 mm ± 0.5 mm', `depth: 24.0 mm ± 0.5 mm${bottom}`))

  // Whatever the floor is, no part of it is cut: the rod stops at 24 as before.
  it.each([
    ['flat', ''],
    ['flat, felt with a rod', ', rod: 6 mm, bottom: flat'],
    ['a cone', ', rod: 6 mm, bottom: cone, bottom-angle: 118°'],
    ['a fillet', ', rod: 6 mm, bottom: radius, bottom-radius: 2 mm']
  ])('a floor that is %s reads as it was found, and deeper means that the drill met it', (_, bottom) => {
    const [floor] = saying(found(bottom), /^clear the chips, and feel the depth once more.*the same as before the cut$/)
    expect(floor?.figure).toMatchObject({ value: 24, low: 23.5, high: 24.5 })
    expect(floor?.caution).toMatch(/^deeper than before: the drill has met the old bottom: stop, and work the job out anew/)
    expect(floor?.caution).not.toContain('beside the rod')
  })

  // Cone of 60° in a hole of 9: its rim stands 4.5·cot 30° = 7.79 above its tip, the drill's of 118° only 4.5·cot 59° = 2.70.
  it('where the rim of the drill comes nearest, a rod in the middle does not feel it, and that is said', () => {
    const [floor] = saying(found(', rod: 6 mm, bottom: cone, bottom-angle: 60°'), /^clear the chips, and feel/)
    expect(floor?.caution).toContain('what it met beside the rod the collar alone tells')
  })

  // 22.2 less the point 5.1·cot 59° = 3.064: 19.136, within 0.3.
  it('the edge that the drill left is at the end of full diameter, and there is none where the drill cuts nothing', () => {
    const [edge] = saying(plan(), /^feel for the edge/)
    expect(edge?.figure?.value).toBeCloseTo(22.2 - 5.1 / Math.tan((59 * Math.PI) / 180), 9)
    expect(edge?.says).toContain('18.83 to 19.44 mm')
    const wide = planned(jobText({}).replace('diameter: 9.0 mm', 'diameter: 10.2 mm'))
    expect(saying(wide, /^clear the chips, and feel/)).toHaveLength(1)
    expect(saying(wide, /^feel for the edge/)).toEqual([])
  })

  it('nobody is sent to measure a tip that left no mark', () => {
    expect(JSON.stringify(plan())).not.toContain('depth at the tip')
  })
})

it('a tap is stopped by the mark on its shank; what it dropped in is taken off the turns', () => {
  const of = plan()
  expect(saying(of, /^mark the shank of the (taper|second|bottoming) tap/)).toHaveLength(3)
  expect(saying(of, /^screw in the/).every(({ caution }) => /dropped in before it bit are taken off/.test(caution ?? ''))).toBe(true)
})

it('no tap is ordered past the end of the shallowest hole, however little it is to keep clear', () => {
  // 18.836 where the stop came short, less 0.1.
  const [mark] = saying(planned(jobText({}).replace('tap-clear: 0.6 mm', 'tap-clear: 0.1 mm')), /^mark the shank/)
  expect(mark?.figure?.value).toBeCloseTo(22.2 - 0.3 - 5.1 / Math.tan((59 * Math.PI) / 180) - 0.1, 9)
})

describe('what is behind the metal', () => {
  it.each([
    ['fuel', true],
    ['Nothing', false],
    ['air', false],
    [null, true]
  ])('%s: leak test %s', (behind, tested) => {
    const of = plan({ behind })
    expect(saying(of, /test for leaks/)).toHaveLength(tested ? 1 : 0)
    expect(saying(of, /let the pressure off/)).toHaveLength(tested ? 1 : 0)
    expect(saying(of, /fill up again/)).toHaveLength(tested ? 1 : 0)
  })

  // A text is nothing only where it says so and no more; what else it may say is for the machine to show.
  it.each([
    'no pressure, petrol',
    'no idea',
    'no',
    'nothing known',
    'none known yet; ask',
    'nothing, tank drained',
    'nothing?',
    'air over the petrol in the tank',
    'dry fuel cell',
    'empty',
    'solid fuel',
    'No pressure, diesel'
  ])('%s is something: let out, flushed, filled, tested', behind => {
    const of = plan({ behind })
    for (const wanted of [/drain or lower/, /^flush and air/, /^fill up again/, /test for leaks/])
      expect(saying(of, wanted)).toHaveLength(1)
    expect(of.cautions.join()).toContain('no spark and no flame')
  })

  it.each(['None.', ' nothing ', 'DRY', 'open to the air', 'atmosphere', 'solid metal'])('%s is nothing', behind => {
    const of = plan({ behind })
    expect(saying(of, /drain or lower|^flush and air|^fill up again|test for leaks/)).toEqual([])
    expect(saying(of, /^make sure of what is behind/)[0]?.caution).toContain('before it was emptied, is not nothing')
  })

  it.each([
    ['petrol', true],
    ['coolant', true],
    [null, true],
    ['nothing', false]
  ])('%s: vapour told %s', (behind, told) => {
    const of = plan({ behind })
    const [aired] = saying(of, /^flush and air what was emptied/)
    expect(aired?.caution ?? '').toMatch(told ? /vapour.*no spark, no flame, no electric drill/ : /^$/)
    expect(of.cautions.some(one => /vapour/.test(one))).toBe(told)
  })

  it.each(['ammonia', 'refrigerant R134a', 'LPG', 'natural gas'])('%s is let out by nobody, and no nose clears it', behind => {
    const of = plan({ behind })
    expect(saying(of, /let the pressure off, and drain|^flush and air|^fill up again/)).toEqual([])
    for (const wanted of [
      /taken back, and its pressure off, by whoever is licensed/,
      /the nose does not tell/,
      /filled in again by whoever is licensed/
    ])
      expect(saying(of, wanted), String(wanted)).toHaveLength(1)
  })

  it('what stands beside such a gas is drained as well', () => {
    const of = plan({ behind: 'petrol and LP, one engine' })
    for (const wanted of [/taken back, and its pressure off/, /drain or lower/, /^flush and air/, /^fill up again/])
      expect(saying(of, wanted), String(wanted)).toHaveLength(1)
  })

  it.each([
    ['engine oil', null],
    ['fuel', expect.stringContaining('is not let out')]
  ])('what may be a gas is said to be kept: %s', (behind, caution) => {
    expect(saying(plan({ behind }), /drain or lower/)[0]?.caution ?? null).toEqual(caution)
  })

  it('the water that a boat lies in is shut out, not drained', () => {
    const of = plan({ behind: 'sea water, open to the sea below the water line' })
    expect(saying(of, /close the seacock/)).toHaveLength(1)
    expect(saying(of, /drain or lower|fill up again/)).toEqual([])
    expect(saying(of, /let the water back slowly/)).toHaveLength(1)
  })

  it.each(['petrol tank, below the water line', 'fuel, cooled by raw water', 'raw-water cooling system', 'raw water', 'no sea water'])(
    '%s: both are done, the water shut out and what is there let out',
    behind => {
      const of = plan({ behind })
      for (const wanted of [/close the seacock/, /drain or lower/, /^flush and air/, /^fill up again/, /let the water back slowly/])
        expect(saying(of, wanted)).toHaveLength(1)
    }
  )

  it.each(['cooling water line', 'a water-line to the oil cooler'])('%s is a pipe of the machine: let out, no boat hauled', behind => {
    const of = plan({ behind })
    expect(saying(of, /drain or lower/)).toHaveLength(1)
    expect(saying(of, /seacock/)).toEqual([])
  })

  it.each([
    'seawater',
    'the sea',
    'the lake, under the hull',
    'river water behind the seacock',
    'Harbor water',
    'open, below the water-line'
  ])('%s is open water alone', behind => {
    expect(saying(plan({ behind }), /drain or lower|fill up again/)).toEqual([])
  })

  it.each([
    'sea strainer',
    'sea chest',
    'sea cock',
    'sea inlet',
    'sea on the other side',
    'harbour side of the hull',
    'river intake of the pump'
  ])('%s: the water is shut out', behind => {
    expect(saying(plan({ behind }), /close the seacock/)).toHaveLength(1)
  })

  it.each(['gear oil of the harbour crane', 'gear oil, sea freight crane', 'oil, lake tractor'])('%s: nothing floats', behind => {
    expect(saying(plan({ behind }), /seacock|slings/)).toEqual([])
  })

  it('air may be under pressure with the machine off', () => {
    expect(saying(plan({ behind: 'air' }), /^let off what pressure the air/)).toHaveLength(1)
    expect(saying(plan({ behind: 'open air' }), /pressure/)).toEqual([])
  })

  it.each([
    'coolant of a natural gas engine',
    'engine oil of the LPG forklift',
    'gear oil of the hydrogen bus',
    'HFC hydraulic fluid',
    'low pressure (LP) hydraulic oil'
  ])('%s is let out, not taken back', behind => {
    expect(saying(plan({ behind }), /taken back/)).toEqual([])
    expect(saying(plan({ behind }), /drain or lower/)).toHaveLength(1)
  })

  it.each([
    'LP tank',
    'LP side of the regulator',
    'LP pump of the forklift',
    'LP stage regulator',
    'LP fuel pump',
    'LPG',
    'fuel rail of the LPG forklift',
    'LP'
  ])('%s is taken back', behind => {
    expect(saying(plan({ behind }), /^have what is behind the metal taken back/)).toHaveLength(1)
  })

  it('a test that the job names is put in', () => {
    const [test] = saying(plan({ leakTest: '{ medium: its own coolant, pressure: 1.4 bar, hold: 10 min }' }), /test for leaks/)
    expect(test).toMatchObject({
      says: expect.stringContaining('its own coolant at this pressure, held for 10 min'),
      figure: { text: '1.4 bar', unit: 'Pa' }
    })
    expect(test?.figure?.value).toBeCloseTo(140000, 6)
  })
})

it('never seat without what belongs under the shoulder, with the state without it', () => {
  const [by] = saying(plan(), /put the ring terminal under the shoulder/)
  expect(by?.caution).toMatch(/never without the ring terminal: at the worst end the part would jam with \d\.\d\d mm left/)
  expect(plan({ stack: '[]' }).steps.every(({ caution }) => !/never without/.test(caution ?? ''))).toBe(true)
})

describe('a leak test (its order and its cautions: common practice, no published source)', () => {
  const at = (of: Plan, part: RegExp) => says(of).findIndex(one => part.test(one))
  const tested = (medium: string, behind = 'petrol') => plan({ behind, leakTest: `{ medium: ${medium}, pressure: 2 bar, hold: 10 min }` })

  const always = ['air', 'compressed air', 'nitrogen', 'water', 'its own air', 'its own oil or air', 'shop stuff', 'vacuum']
  // Each is a gas once it is let out: 1.013 bar boils propane at -42, butane at -1, ammonia at -33, R134a at -26 °C.
  const itself = [
    'LPG',
    'LNG',
    'CNG',
    'propane',
    'butane',
    'bio-methane',
    'ammonia',
    'refrigerant',
    'Freon',
    'R-134a',
    'hydrogen',
    'biogas'
  ]
  const own = [...itself, 'natural gas', 'steam'].flatMap(gas => [
    [`its own ${gas}`, 'petrol'],
    [gas, gas],
    ['its own fluid', `${gas}, 8 bar`]
  ])
  // Autogas is mostly propane; exhaust, boost and brake air are gases; nobody says that fuel or supply is a liquid.
  const unsure = [
    ['its own fuel', 'LP fuel line'],
    ['its own fuel', 'liquefied petroleum'],
    ['its own fuel', 'fuel'],
    ['its own petrol', 'petrol and LP, one engine'],
    ['fuel', 'fuel'],
    ['its own boost pressure', 'boost air'],
    ['its own charge air', 'charge air'],
    ['its own oil mist', 'gear oil'],
    ['exhaust', 'exhaust'],
    ['its own pressure', 'pneumatic line'],
    ['its own supply', 'brake air'],
    ['its own vacuum', 'vacuum']
  ]

  /** A gas by those who may. */
  const FILLED = /fill up again|filled in again by/

  it.each([...always.map(medium => [medium, 'petrol']), ...own, ...unsure])(
    'with %s, where %s is, stands before filling and before the battery',
    (medium, behind) => {
      const of = tested(medium, behind)
      expect(saying(of, /test for leaks/)).toHaveLength(1)
      expect(at(of, /test for leaks/)).toBeGreaterThan(at(of, /count the plugs and rags that come out/))
      expect(at(of, /test for leaks/)).toBeLessThan(at(of, FILLED))
      expect(at(of, FILLED)).toBeLessThan(at(of, /battery's ground lead back on/))
      expect(at(of, /now that it is full: dry/)).toBe(at(of, FILLED) + saying(of, FILLED).length)
      expect(at(of, /once it is warm: dry/)).toBeGreaterThan(at(of, /battery's ground lead back on/))
    }
  )

  it.each([
    ['its own petrol', 'petrol'],
    ["the machine's own gear oil", 'gear oil'],
    ['coolant', 'Coolant'],
    ['its own coolant', 'ethylene glycol and water'],
    ['its own fuel', 'kerosene'],
    ['its own fuel', 'diesel fuel, 0.4 bar'],
    ['its own oil', 'hydraulic oil, up to 3 bar'],
    ['its own brake fluid', 'brake fluid'],
    ['coolant 1 bar hot', 'coolant, 1 bar hot'],
    ...['gasoline', 'diesel', 'jet fuel', 'methanol'].map(fuel => [fuel, fuel]),
    ['water', 'water']
  ])('with %s, the liquid of the machine (%s), stands after filling and before the battery', (medium, behind) => {
    const of = tested(medium, behind)
    expect(saying(of, /test for leaks/)).toHaveLength(1)
    expect(at(of, /test for leaks/)).toBeGreaterThan(at(of, /now that it is full: dry/))
    expect(at(of, /test for leaks/)).toBeLessThan(at(of, /battery's ground lead back on/))
    expect(saying(of, /test for leaks/)[0]?.caution).toMatch(/no pump of the machine: the battery stays off until it has stayed dry/)
    expect(at(of, /once it is warm: dry/)).toBeGreaterThan(at(of, /battery's ground lead back on/))
  })

  it('with a gas that burns: not ordered, an inert one first, and nothing let off', () => {
    const of = tested('its own LPG', 'LPG')
    expect(saying(of, /test for leaks with its own LPG/)).toEqual([])
    expect(saying(of, /test for leaks with nitrogen/)[0]?.caution).toMatch(
      /^never with its own LPG.*burns.*waits for an inert gas first.*licensed/
    )
    expect(saying(of, /let the pressure off slowly/)[0]?.caution).toMatch(/burns.*taken back instead/)
  })

  it('with LP fuel that is called fuel: regulator, relief valve, and an inert gas first', () => {
    const of = tested('its own fuel', 'LP fuel line')
    expect(saying(of, /regulator.*relief valve/)).toHaveLength(1)
    expect(saying(of, /test for leaks with nitrogen/)[0]?.caution).toMatch(/^never with its own fuel/)
  })

  it.each([
    ['oxygen', 'coolant'],
    ['oxygen', 'nothing'],
    ['propane', 'coolant'],
    ['air', 'petrol'],
    ['compressed air', 'drained fuel tank']
  ])('with %s, where %s is or was, is not ordered: nitrogen is, or what the maker has', (medium, behind) => {
    const of = tested(medium, behind)
    expect(of.cautions[0]).toContain('do not start')
    const [test] = saying(of, /test for leaks/)
    expect(test?.says).toMatch(/^test for leaks with nitrogen, or as the maker has it, at this pressure, held for 10 min: .*soap/)
    expect(test).toMatchObject({ figure: { text: '2 bar' }, blank: 'leak test, and with what' })
    expect(test?.caution).toContain(`never with ${medium}`)
  })

  it('without one, what was filled up is looked at before the battery is on', () => {
    const of = plan({ behind: 'petrol' })
    expect(at(of, /now that it is full: dry/)).toBe(at(of, /fill up again/) + 1)
    expect(at(of, /now that it is full: dry/)).toBeLessThan(at(of, /battery's ground lead back on/))
  })

  it('with a gas has its cautions', () => {
    const of = tested('air', 'gear oil')
    const [test] = saying(of, /test for leaks with air/)
    expect(test?.says).toMatch(/does not fall.*soap/)
    expect(test?.caution).toMatch(/fuel or its vapour.*never air; oxygen never and nowhere.*inert gas.*maker's instructions/)
    expect(saying(of, /regulator.*relief valve.*maker/)[0]?.caution).toMatch(/stores.*flies.*no more pressure/)
    expect(saying(of, /let the pressure off slowly/)).toHaveLength(1)
  })

  it('with water has the air let out first, and the water after it', () => {
    const of = tested('water')
    expect(saying(of, /let all air out/)).toHaveLength(1)
    expect(saying(of, /let the water out, and dry/)).toHaveLength(1)
    expect(saying(of, /regulator|test for leaks.*soap/)).toEqual([])
  })

  it('that nobody named says what waits until it is filled, and what does not', () => {
    const of = plan({ behind: 'petrol' })
    const [test] = saying(of, /test for leaks.*the job names none/)
    expect(test?.says).toContain('its own fluid waits until it is filled')
    expect(test?.caution).toMatch(/gas, or water that is not its own: now.*inert gas alone/)
  })

  it('that the job names is made, whatever is behind the metal', () => {
    const of = tested('nitrogen', 'nothing')
    expect(saying(of, /test for leaks with nitrogen/)).toHaveLength(1)
    expect(saying(of, /fill up again|now that it is full|once it is warm: dry/)).toEqual([])
  })
})

describe('the mouth', () => {
  it('takes turns to the shoulder before the thread bites: where they are counted from is said (geometry)', () => {
    const [byHand] = saying(withMouth('1 mm'), /count the turns to the shoulder/)
    expect(byHand?.caution).toMatch(
      /^counted from the first full thread at its end level with the face, less those .* dropped into the mouth/
    )
    const [bare] = saying(plan({ stack: '[]' }), /count the turns to the shoulder/)
    expect(bare?.caution).toMatch(/^counted from the first full thread at its end/)
  })

  const withMouth = (mouth: string) => planned(jobText({}).replace('keep-clear: 1.0 mm', `keep-clear: 1.0 mm\n    mouth: ${mouth}`))

  // M12x1.75: D1 12 − 1.0825·1.75 = 10.106; 90° and 1 mm deep: 12.106.
  it('is cut no wider than the job counts on', () => {
    const [cut] = saying(withMouth('1 mm'), /break the mouth with a 90° countersink, this far across and no wider: 1.00 mm deep/)
    expect(cut?.figure?.value).toBeCloseTo(12.106, 3)
    expect(cut?.caution).toBe('no burr may stand above the face')
  })

  it.each([
    ['0.5 mm', 'narrower than is usual, 12.00 to 13.20 mm'],
    ['2 mm', 'wider than is usual']
  ])('of %s is %s', (mouth, says) => {
    expect(saying(withMouth(mouth), /break the mouth/)[0]?.caution).toContain(says)
  })

  // 9/16 in: 14.2875 wide, and 1.1 times that 15.71625; a spread is rounded outward.
  it('of an inch thread is printed to what a countersink can be set to', () => {
    const text = jobText({}).replace('M12x1.75', '9/16-12 UNC').replace('size: 10.2 mm', 'size: 31/64')
    expect(saying(planned(text), /^take the burr off/)[0]?.caution).toContain('14.28 to 15.72 mm across')
  })

  it('that the job does not count on is not cut', () => {
    expect(saying(plan(), /countersink, this far across/)).toEqual([])
    expect(saying(plan(), /take the burr off the mouth, flush with the face, and no countersink/)).toHaveLength(1)
  })
})

describe('the metal under the drill', () => {
  const cast = (alloy: string) => planned(jobText({}).replace('alloy: A380', `alloy: ${alloy}`))
  const cautions = ({ steps }: Plan) => steps.map(({ caution }) => caution ?? '').join('; ')

  it('that burns is told before it is drilled: ask, powder, no water, sharp, coarse', () => {
    const of = cast('AZ91D')
    expect(saying(of, /ask the maker whether this casting may be drilled at all/)[0]?.part).toBe('ask first')
    expect(says(of).join('; ')).toMatch(/class D.*sharp drill.*coarse chips.*never one with water/)
    expect(cautions(of)).toContain('no water, no foam, no carbon dioxide on burning magnesium')
    expect(says(of).findIndex(one => /class D/.test(one))).toBeLessThan(says(of).findIndex(one => /fix the depth stop/.test(one)))
  })

  it.each([
    ['A380', 'light oil'],
    ['ZAMAK 3', 'light oil, a little'],
    ['grey iron class 30', 'none on grey iron']
  ])('%s does not, and has its fluid', (alloy, fluid) => {
    expect(cautions(cast(alloy))).not.toContain('magnesium')
    expect(says(cast(alloy)).join()).toContain(`cutting fluid for the tap: ${fluid}`)
  })

  it('that nobody named is to be found out', () => {
    expect(saying(cast('old stuff'), /find out what the casting is before a drill touches it: old stuff does not tell/)).toHaveLength(1)
  })
})

it('the way back is named, and settled by each thread', () => {
  const named = plan({ wayBack: '{ insert: M12x1.75 thin-walled }' })
  expect(says(named)).toContain('have the way back in the drawer: insert M12x1.75 thin-walled')
  expect(saying(named, /settle the way back, a wire thread insert for M12x1.75/)).toHaveLength(1)
  expect(saying(plan(), /settle the way back, a wire thread insert for M12x1.75/)).toHaveLength(1)
})

describe('the depth that an insert asks for, beside what is there (by hand)', () => {
  // 1 D of M12x1.75 is 12, a pitch more for its seat and 2.5 for chamfer and room: 18.125. Its drill, 12 + 0.2165·1.75 wide, has a point
  // of 6.189·cot 59° = 3.719: the stop of 22.2, come short by 0.3, leaves 18.181.
  it('is told, and is there', () => {
    const [asks] = saying(plan(), /^its shortest insert.*its drill leaves 18.18 mm at this stop/)
    expect(asks).toMatchObject({ caution: null, part: 'ask first', thing: 'holes.elbow' })
    expect(asks?.figure?.value).toBeCloseTo(12 + 1.75 + 2.5 * 1.75, 9)
  })

  it('is not there in a hole half a millimetre shallower', () => {
    const [asks] = saying(plan({ depth: '23.5 mm ± 0.5 mm' }), /^its shortest insert.*its drill leaves 17.68 mm at this stop/)
    expect(asks?.caution).toMatch(/too shallow for it.*has no way back/)
  })
})

describe('the insert that the job names', () => {
  const named = (insert: string) => says(plan({ wayBack: `{ insert: ${JSON.stringify(insert)} }` })).filter(one => /drawer/.test(one))

  it.each(['none', 'None.', 'nothing', 'no insert'])('%s is not', insert => {
    expect(named(insert)).toEqual([])
  })

  it.each(['M12x1.75', 'M12', 'wire insert M12x1.75, 1 D', 'M14x1.5 tap and M12x1.75 insert', 'as the yard has it', '12 mm of something'])(
    '%s is put in the drawer',
    insert => {
      expect(named(insert)).toEqual([`have the way back in the drawer: insert ${insert}`])
    }
  )

  it.each(['M12x1.5', 'M10', '1/2-13 UNC', 'insert (9/16-18 UNF)'])('%s is for another thread, and is told', insert => {
    expect(named(insert)).toEqual([`settle which insert goes into the drawer: the job names ${insert}, and hole elbow has M12x1.75`])
  })
})

it('the wall is printed with the end that it is judged by (6 ± 2.5 mm, less half of 12 − 9.0: 2.00 to 7.00)', () => {
  const of = planned(jobText({}).replace('wall: 6 mm', 'wall: 6 mm ± 2.5 mm'))
  expect(saying(of, /settle the way back/)[0]?.says).toContain('4.50 mm (2.00 to 7.00 mm) is there')
})

it('what is held still is the terminal that is there, and nothing where none is', () => {
  expect(saying(plan(), /^hold the ring terminal still/)).toHaveLength(1)
  const washer = plan({ stack: '[{ what: plug washer, thickness: 1.2 mm }]' })
  expect(saying(washer, /^hold the .* still|^crimp the lead to the/)).toEqual([])
  expect(saying(plan({ stack: '[]' }), /^hold the .* still/)).toEqual([])
})

it('plugs and rags are counted in and out', () => {
  const blanks = plan().steps.map(({ blank }) => blank)
  expect(blanks.indexOf('plugs and rags in')).toBeGreaterThan(-1)
  expect(blanks.indexOf('plugs and rags out')).toBeGreaterThan(blanks.indexOf('plugs and rags in'))
})

it('without a torque on the card there is no torque, and it says so', () => {
  const of = plan({ torque: null })
  expect(saying(of, /tighten to the maker's card: none is given/)).toHaveLength(1)
  expect(of.steps.some(({ figure }) => figure?.unit === 'N·m')).toBe(false)
})

it('without thread length nothing is said of turns by hand', () => {
  expect(plan({ threadLength: null }).steps.filter(({ part }) => part === 'try by hand')).toEqual([])
})

it('a hole too shallow for the taps is not tapped, and the rest is still said', () => {
  const of = plan({ depth: '4.0 mm ± 0.5 mm' })
  expect(saying(of, /leave the .* tap: the hole is too shallow/)).toHaveLength(3)
  expect(of.scraps.every(({ room, roomPercent }) => Number.isFinite(room) && Number.isFinite(roomPercent))).toBe(true)
})

it('a hole without any answer fails on top and is left out of the steps', () => {
  const of = plan({ depth: '1.0 mm ± 0.5 mm' })
  expect(of.findings.some(({ verdict }) => verdict === 'fail')).toBe(true)
  expect(of.cautions[0]).toMatch(/^do not start: \d+ rules? of this job/)
  expect(saying(of, /depth stop/)).toEqual([])
})

it('what a later room works out is taken up: the torque that strips', () => {
  const judged = judgedJob('x.yaml', jobText({}))
  const [hole] = judged.holes
  const highest = { ...hole!.result('hole.tip-depth')!, id: 'holes.elbow:joint.torque.highest', value: 20, low: 18, high: 22, unit: 'N·m' }
  const with_ = { ...judged, holes: [{ ...hole!, result: (id: string) => (id === 'joint.torque.highest' ? highest : hole!.result(id)) }] }
  // 18 less 12 and the 4 % of the wrench: 18 - 12.48.
  expect(planOf(with_).scraps.find(({ figure }) => figure.name === 'torque')?.room).toBeCloseTo(5.52, 9)
})

it('a thermostat is mounted where it feels what it guards, and waited for', () => {
  const example = planned(readFileSync('examples/snow-groomer-warming.yaml', 'utf8'))
  expect(saying(example, /^mount thermostat T4 on the casting/)).toHaveLength(1)
  // The example's thermostat opens at 60 °C ± 5 K.
  expect(saying(example, /until the thermostat has opened/)[0]?.figure).toMatchObject({ value: 65, unit: '°C' })
  expect(saying(planned(readFileSync('examples/gearbox-preheater.yaml', 'utf8')), /thermostat/)).toEqual([])
})

it('the casting is looked for where its thermostat holds it, and where that is in no wire, where it settles', () => {
  const text = readFileSync('examples/snow-groomer-warming.yaml', 'utf8')
  const [held, ...others] = saying(planned(text), /^look for the casting/)
  // Opens at 60 °C ± 5 K; without it the metal would settle above.
  expect(others).toEqual([])
  // 60 °C ± 5 K: no warmer than 65 °C, as the step beside it waits for.
  expect(held?.figure).toMatchObject({ value: 65, unit: '°C' })
  expect(held?.says).toContain('where its thermostat opens')
  const bare = text
    .replace('through: [{ thermostat: T4, rating: 10 A, resistance: 8 mohm }]', 'bond: 8 mohm')
    .replace(', T4: FILTER HEATERS OFF AT 60 °C', '')
  const [settles] = saying(planned(bare), /look for the casting/)
  expect(settles?.says).toContain('in moving air of -18.0 °C look for the casting to settle near this')
  expect(settles?.caution).toBe('in warmer or stiller air, as in a shop, it settles hotter')
  expect(settles?.figure?.value).toBeGreaterThan(65)
  // At 140 °C it never opens in the cold.
  const late = text.replace('off: 60 °C ± 5 K, on: 45 °C ± 5 K', 'off: 140 °C')
  expect(saying(planned(late), /look for the casting/)[0]?.figure).toEqual(settles?.figure)
})

it('contacts of a relay that a thermostat works stand where they are, and their thermostat on the casting', () => {
  const text = readFileSync('examples/snow-groomer-warming.yaml', 'utf8')
  const relay = planned(text.replace('{ thermostat: T4,', '{ what: thermostat contacts of relay T4,'))
  expect(saying(relay, /^mount thermostat contacts of relay T4 in the feed.* the thermostat that works it on the casting/)).toHaveLength(1)
})

it('glasses and tools for the chips come before the first hole, and not without one', () => {
  expect(saying(plan(), /eye protection/)).toHaveLength(1)
})

it('a fuse is mounted where the job tells it, and by the practice where it does not', () => {
  const fused = (along: string) =>
    planned(`
fettle: 1
job: { title: a lamp, practice: road }
circuit:
  source: { bus: 12 V, ground: frame }
  runs:
    - { from: bus, to: lamp+, wire: { size: 1 mm2, length: 2 m }, through: [{ fuse: F1, rating: 5 A, style: blade${along} }] }
  loads: [{ load: lamp, resistance: 6 ohm, from: lamp+, to: frame }]
`)
  const mounted = (along: string) => saying(fused(along), /^mount fuse F1/).map(({ says }) => says)
  expect(mounted('')).toEqual([expect.stringContaining('as close as possible to the source')])
  expect(mounted(', along: 0.1 m')).toEqual(['mount fuse F1 0.1 m from bus on the wire to lamp+'])
  expect(mounted(', along: 0 m')).toEqual(['mount fuse F1 at bus, on the wire to lamp+'])
})
