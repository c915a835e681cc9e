// example: what is assumed and what is told of `drop`
import { expect, it } from 'vitest'
import { jsonOf } from './json-of.ts'

const FEED = 'drop --wire 1.5mm2 --length 0.1m --bus 24V --practice road'

it('tells a current that burns the wire, whatever it drops', async () => {
  const burns = await jsonOf(`${FEED} --current 500A`)
  expect(burns.cautions.join()).toMatch(/too much for this wire.*fettle wire/)
  const { cautions } = await jsonOf(`${FEED} --current 5A`)
  expect(cautions.join()).not.toContain('too much')
})

it('lists a structure without resistance as assumed', async () => {
  const { inputs, findings } = await jsonOf(`${FEED} --current 5A --return structure --temperature 20°C`)
  expect(inputs['connections']).toMatchObject({ value: 0, assumed: expect.stringContaining('structure without resistance') })
  expect(findings[0]).toMatchObject({ verdict: 'caution', says: expect.stringContaining('structure without resistance') })
  const given = await jsonOf(`${FEED} --current 5A --return structure --temperature 20°C --connections 3mohm`)
  expect(given.inputs['connections']?.assumed).toBeNull()
  expect(given.cautions.join()).toContain('within --connections')
  const wired = await jsonOf(`${FEED} --current 5A`)
  expect(wired.inputs['connections']?.assumed).not.toContain('structure')
})

it('a gauge whose make-up nobody told is at best a caution', async () => {
  const at = (more: string) =>
    jsonOf(
      `drop --current 8A --wire "AWG 16" --length 12ft --return structure --bus 14V --limit 0.45V --temperature 20C --connections 5mohm ${more}`
    )
  const { findings, inputs } = await at('')
  expect(findings[0]).toMatchObject({ verdict: 'caution', says: expect.stringContaining('conductor (solid') })
  expect(inputs['conductor']).toMatchObject({ assumed: expect.anything() })
  expect((await at('--conductor solid')).findings[0]?.verdict).toBe('pass')
  expect((await at('--conductor aircraft')).findings[0]?.verdict).toBe('fail')
})

it('a bus for which the practice has no limit asks for --limit', async () => {
  // 14 and 28 V have one in an aircraft, 18 V has none.
  const { findings } = await jsonOf('drop --current 10A --wire 1.5mm2 --length 5m --bus 18V --practice aircraft')
  expect(findings[0]).toMatchObject({ verdict: 'not-judged', change: 'give --limit' })
})
