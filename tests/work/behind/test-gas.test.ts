// example: words for what a leak test is made with and for what is behind the metal; what each is, is common knowledge of the trade
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { jobText } from '../invented-job.ts'

const found = (medium: string, behind: string | null) => {
  const leakTest = `{ medium: ${JSON.stringify(medium)}, pressure: 1 bar }`
  const { findings } = judgeJob('x.yaml', jobText({ behind, leakTest }))
  return findings.filter(({ rule }) => rule === 'leak/test-gas')
}
const verdict = (medium: string, behind: string | null) =>
  found(medium, behind)
    .map(one => one.verdict)
    .join()

it.each(['oxygen', 'O2', 'Medical oxygen', 'nitrogen or oxygen', 'oxygen-enriched air', 'its own oxygen'])(
  '%s fails, whatever is there',
  medium => {
    for (const behind of ['petrol', 'coolant', 'nothing', null]) expect(verdict(medium, behind), String(behind)).toBe('fail')
  }
)

it.each(['oxygen, free of oil', 'oxygen (free of oil)', 'nitrogen and oxygen, free of oil', 'oxygen free of oil', 'oxygen - free of oil'])(
  '%s is not free of oxygen',
  medium => {
    for (const behind of ['engine oil', 'coolant', null]) expect(verdict(medium, behind), String(behind)).toBe('fail')
  }
)

// What a comma or a stop parts from its "no" is there, and "no more" of it is some.
it.each(['nitrogen? no: oxygen', 'no more oxygen than needed', 'if not oxygen', 'not oxygen-free'])('%s names oxygen', medium => {
  expect(verdict(medium, 'coolant')).toBe('fail')
})

it.each([
  'acetylene',
  'propane',
  'hydrogen',
  'natural gas',
  'LPG',
  'camping gas',
  'ethane',
  'coke oven gas',
  'oxyacetylene',
  'nitrogen or propane',
  '95 % hydrogen in nitrogen'
])('%s burns itself and fails, whatever is there', medium => {
  for (const behind of ['petrol', 'coolant', 'nothing', null]) expect(verdict(medium, behind), String(behind)).toBe('fail')
})

it('so little hydrogen in nitrogen that it does not burn is left to who knows it', () => {
  for (const medium of [
    'nitrogen with 5 % hydrogen',
    '95 % nitrogen, 5 % hydrogen',
    '5 % hydrogen, 95 % nitrogen',
    '5% H2 / 95% N2',
    'hydrogen 5 % in nitrogen',
    '4.5 % hydrogen in nitrogen'
  ])
    expect(verdict(medium, 'coolant'), medium).toBe('caution')
  for (const medium of [
    'air with 5 % hydrogen',
    'nitrogen 5 %, hydrogen 95 %',
    '14.5 % hydrogen in nitrogen',
    '14,5 % hydrogen in nitrogen',
    '45 % hydrogen, nitrogen'
  ])
    expect(verdict(medium, 'coolant'), medium).toBe('fail')
})

it.each([
  'not nitrogen',
  'nitrogen is not at hand: bicycle pump',
  'no nitrogen here; tyre inflator',
  'nitrogen-free',
  'no oxygen-free nitrogen',
  'without argon',
  'instead of nitrogen what there is',
  'nitrogen, or what is at hand',
  '80 % nitrogen'
])('%s is no pass', medium => {
  for (const behind of ['petrol', 'gear oil', 'coolant']) expect(verdict(medium, behind), behind).toBe('caution')
})

it.each([
  'nitrogen',
  'dry nitrogen, 99.9 %',
  'nitrogen (oxygen-free)',
  'nitrogen, no oxygen',
  'nitrogen, free of oil, 3 bar',
  'nitrogen or argon, bottled',
  'N2',
  'oxygen-free nitrogen',
  'nitrogen gas',
  'Argon',
  'helium',
  'nitrogen, never air',
  'oxygen-free dry nitrogen',
  'oxygen-free N2',
  'oxygen-free argon',
  'nitrogen oxygen-free',
  'dry nitrogen, oxygen-free grade',
  'nitrogen free of oxygen',
  'nitrogen without any oxygen',
  'nitrogen, neither air nor oxygen',
  'nitrogen, never propane',
  'nitrogen, 99.9 %',
  'inert gas'
])('%s is inert', medium => {
  for (const behind of ['petrol', 'gear oil', null]) expect(verdict(medium, behind), String(behind)).toBe('pass')
})

it.each([
  'petrol',
  'fuel',
  'Diesel, 3 bar',
  'was petrol, drained and flushed',
  'the tank held kerosene',
  'LPG',
  'gas tank',
  'fuel rail of the LPG forklift',
  'LP, regulator',
  'LP side of the regulator',
  'LP water heater',
  'LP/water',
  'natural gas',
  'white spirit',
  'petrol, carburettor bowl',
  'fuel rail of a diesel engine',
  'coolant, diesel tank',
  'coolant in the diesel',
  'coolant and the tank of a petrol outboard',
  'coolant of the diesel; fuel rail beside it'
])('where %s is or was, no air goes in', behind => {
  for (const medium of ['air', 'compressed air', 'shop air', 'nitrogen or air', 'the airline'])
    expect(verdict(medium, behind), medium).toBe('fail')
})

it.each([
  'coolant',
  'nothing',
  'sea water',
  'coolant of a diesel engine',
  'coolant, diesel generator',
  'cooling water of the diesel',
  'coolant (diesel tractor)',
  'coolant of a biogas engine',
  'coolant of a two-stroke petrol outboard',
  'ethylene glycol and water',
  'open air',
  'propylene glycol',
  'coolant of the LPG forklift',
  'coolant of a natural gas engine',
  'coolant, 1 bar hot',
  'coolant, expansion tank',
  'raw water, elbow of the engine',
  'tap water',
  'ethylene glycol 50 %',
  'coolant at 90 °C',
  'gas engine coolant'
])('where %s is, air may go in', behind => {
  expect(verdict('air', behind)).toBe('pass')
})

it.each([
  'water separator of the filter head',
  'isopropyl antifreeze',
  'screenwash antifreeze',
  'DI water / IPA',
  'oily water',
  'produced water',
  'tar and water',
  'tank bottom water',
  'bilgewater',
  'header tank',
  'expansion tank',
  'coolant of the lathe',
  'low pressure (LP) hydraulic oil',
  'gear oil of the hydrogen bus',
  'engine oil of the LPG forklift',
  'HFC hydraulic fluid',
  'gear oil',
  'the bilge',
  'coolant or oil',
  'hydraulic oil, 180 bar',
  'the sump of a petrol engine',
  'a gas spring',
  'vacuum'
])('nobody can tell from "%s" whether it burns: air is a caution', behind => {
  expect(verdict('air', behind)).toBe('caution')
})

it.each([
  ['its own petrol', 'petrol', 'pass'],
  ['its own coolant', 'coolant', 'pass'],
  ['water', 'petrol', 'pass'],
  ['its own LPG', 'LPG', 'fail'],
  ['its own fuel', 'LP fuel line', 'fail'],
  ['carbon dioxide', 'petrol', 'fail'],
  // Fuel may be a liquid: nobody said.
  ['its own fuel', 'fuel', 'caution'],
  ['its own gas', 'oxygen', 'fail'],
  ['its own gas', 'LPG', 'fail'],
  ['its own gas', 'refrigerant', 'caution'],
  ['refrigerant', 'refrigerant', 'caution'],
  ['shop stuff', 'petrol', 'caution'],
  ['vacuum', 'petrol', 'caution'],
  ['air', null, 'not-judged']
])('%s, where %s is: %s', (medium, behind, wanted) => {
  expect(verdict(medium, behind)).toBe(wanted)
})

it('a job that names no leak test is not asked, and one that does is asked at its field', () => {
  expect(judgeJob('x.yaml', jobText({ behind: 'petrol' })).findings.filter(({ rule }) => rule === 'leak/test-gas')).toEqual([])
  expect(found('air', 'petrol')[0]?.where).toMatchObject({ line: 6 })
  expect(found('air', null)[0]).toMatchObject({ thing: 'ask-first', lacks: 'ask-first.behind-the-metal' })
})

it('what stands after a comma is no other liquid: the medium is compared with what comes before it', () => {
  expect(verdict('gear oil', 'gear oil, no pressure')).toBe('pass')
  expect(verdict('gear oil', 'gear oil')).toBe('pass')
  expect(verdict('coolant 1 bar hot', 'coolant, 1 bar hot')).toBe('pass')
  // A gas named there stays one.
  expect(verdict('gear oil', 'gear oil, nitrogen above it')).not.toBe('pass')
  expect(verdict('gear oil', 'hydraulic oil, no pressure')).not.toBe('pass')
})
