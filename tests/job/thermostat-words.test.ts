// table: words that tell of a thermostat, and words that only stand beside one; common usage of the trade, no published source
import { expect, it } from 'vitest'
import { markedItem } from '../../src/job/circuit-names.ts'
import { namesThermostat } from '../../src/job/thermostat-words.ts'

it.each([
  'thermostat',
  'Thermostat T1',
  'thermostat, snap disc',
  'bimetal thermostat',
  'over-temperature thermostat TS-2',
  'thermostat contacts of relay K1',
  'thermostat relay K1',
  'thermostat switch S9',
  'relay K1 of thermostat T2',
  'contacts of the thermostat T2',
  'relay K1 worked by thermostat T2',
  'thermostat T1 on the sump',
  'thermostat at the housing',
  'thermostat 60 °C ± 5 K',
  'thermostat (normally closed, 10 A, 24 V)',
  'adjustable capillary thermostat T2, off at 60 °C',
  'sump thermostat NC',
  '60 °C bimetal thermostat T1',
  'snap-disc thermostat T1',
  'bi-metal thermostat',
  'safety thermostat T1',
  'limit thermostat',
  'manual-reset thermostat',
  'normally-closed thermostat',
  'thermostat 60±5 °C',
  'thermostat of the gearbox',
  'thermostat in the oil sump',
  'thermostat, opens above 60 °C',
  'thermostat, opens on rise',
  'thermostat T1, off at 60 °C, on at 45 °C.'
])('%s is one', words => {
  expect(namesThermostat(words)).toBe(true)
})

it.each([
  'plug at thermostat housing',
  'thermostat housing',
  'thermostat gasket',
  'thermostat plug P3',
  'terminal near thermostat',
  'terminal near thermostat T1',
  'plug, thermostat housing',
  'stud (thermostat T1 beside it)',
  'relay K1 beside thermostat T1',
  'relay K1 of thermostat housing',
  'plug thermostat',
  'wire to thermostat T1',
  'thermostat bypass switch S2',
  'thermostat T1, bridged',
  'thermostat T1, shorted out for now',
  'thermostat T2, not fitted',
  'thermostat (linked out)',
  'thermostat; jumper across it',
  'thermostat, defective',
  'defective thermostat T1',
  'thermostat in bypass',
  'thermostat contacts of relay K1 (bypass)',
  'thermostat for the other heater',
  'thermostat, normally open',
  'thermostat off',
  'thermostat, closes at 60 °C, T1',
  'thermostat, on at 60 °C',
  'no thermostat',
  'switch S4',
  'thermostats'
])('%s is none', words => {
  expect(namesThermostat(words)).toBe(false)
})

const NOTHING = { what: null, fuse: null, breaker: null, switch: null, thermostat: null }
const item = (named: object) => markedItem({ ...NOTHING, ...named } as Parameters<typeof markedItem>[0])

it('what has a mark of its own is one by its field: a fuse of a thermostat is a fuse', () => {
  expect(item({ thermostat: 'housing' })).toMatchObject({ does: 'switches', opensByHeat: true })
  expect(item({ switch: 'thermostat K1' })).toMatchObject({ does: 'switches', opensByHeat: true })
  expect(item({ switch: 'thermostat bypass' })).toMatchObject({ does: 'switches', opensByHeat: false })
  expect(item({ fuse: 'thermostat' })).toMatchObject({ does: 'protects', opensByHeat: false })
  expect(item({ what: 'thermostat fuse F2' })).toMatchObject({ does: 'protects', opensByHeat: false })
})

it('a place beside one takes no power off', () => {
  expect(item({ what: 'plug at thermostat housing' })).toMatchObject({ does: 'joins', opensByHeat: false })
  expect(item({ what: 'thermostat contacts of relay K1' })).toMatchObject({ does: 'switches', opensByHeat: true, mark: 'K1' })
})
