// table: what labels tell beside what the fuse is, by eye; marks and numbers are invented
import { describe, expect, it } from 'vitest'
import { wrongRating } from '../../../src/rules/label/wrong-rating.ts'
import { asked } from '../../../src/rules/rule.ts'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { jobText } from '../../work/prove/invented.ts'

const ask = (label: string | null, amps: number) =>
  asked(wrongRating, { rated: [{ mark: 'F1', ratingA: { value: amps } }], labels: { F1: label } })

describe('tells the rating, or none', () => {
  it.each([
    ['HEATER 20 A', 20],
    ['HEATER 7.5A', 7.5],
    ['heater 7,5 A', 7.5],
    ['10 amp heater', 10],
    ['HEATER 10 AMPS', 10],
    ['HEATER', 20],
    ['PUMP 2', 20],
    ['BATTERY 90 Ah', 20],
    ['BATTERY 90 A·h', 20],
    ['ALARM 500 mA', 20],
    ['HEAT OFF AT 60 °C', 20],
    ['BRANCH OF 5 A PUMP, 20 A', 20],
    ['HEATER 24V/20A', 20],
    ['MAIN,20A', 20],
    ['HEATER F20A', 20],
    ['HEATER 10/20 A', 20],
    ['HEATER .5 A', 0.5],
    ['HEATER 0.5 ampères', 0.5],
    ['BATTERY 90 AH', 20],
    ['BATTERY 90 ampere-hours', 20],
    ['BATTERY 90 amp hours', 20],
    ['WIRE 20 AWG', 10],
    ['FUSE SIZE 20', 20],
    ['FUSE 20', 20],
    ['FUSE 2', 20],
    ['BREAKER 3', 20],
    ['FUSE 1, HEATER', 20],
    ['FUSE 11', 5],
    ['FUSE 24 V', 10],
    ['FUSE 10 mm', 5],
    ['FUSE 20 AWG', 10],
    ['FUSE 10/3', 5],
    ['FUSE 5 OF 8', 3],
    ['FUSE 500 mA', 20],
    ['FUSE 10: HEATER 5 A', 5],
    ['WIRE SIZE 10', 5],
    ['HEATER SIZE 20', 20],
    ['FUSE RATING 20', 20],
    ['CABLE MAX 10', 5],
    ['MAX 10 Nm', 5],
    ['HEATER MAX 60 °C', 5],
    ['FUSE 10 x 38', 5],
    ['FUSE SIZE 10x38', 5],
    ['FUSE 5 × 20 mm', 2],
    ['PUMP BY FUSE BOX 10', 5],
    ['BREAKS 6 kA', 10],
    ['24 V ALARM', 10],
    ['HEATER 2 AND 3', 1],
    ['HEATER 20ADC', 20],
    ['HEATER 20 AT', 20],
    ['PUMP 2 AT DASH', 20],
    ['PUMP 2 AT 60 °C', 20],
    ['PUMP 2 AFT', 20],
    ['HORN 10 AM TO 6 PM', 20],
    ['SOCKET 24 AC', 20],
    ['', 20],
    [null, 20]
  ])('%s on %d A', (label, amps) => {
    expect(ask(label, amps).verdict).toBe('pass')
  })
})

describe('tells another', () => {
  it.each([
    ['HEATER 25 A', 20, 'fail'],
    ['10A', 7.5, 'fail'],
    ['BRANCH OF 80 A MAIN, 20 A', 20, 'fail'],
    ['HEATERS 24V/20A', 10, 'fail'],
    ['HEATERS 20-A', 10, 'fail'],
    ['HEATERS 20 AMPERE', 10, 'fail'],
    ['HEATERS 20 Amperes', 10, 'fail'],
    ['HEATERS 20-amp', 10, 'fail'],
    ['20 a', 10, 'fail'],
    ['20  A', 10, 'fail'],
    ['10A/20A', 10, 'fail'],
    ['20/10 A', 10, 'fail'],
    ['FUSE 10A MAX 15A', 10, 'fail'],
    ['FUSE 5A MAX 7.5A', 10, 'caution'],
    ['FUSE SIZE 10', 5, 'fail'],
    ['FUSE 10', 5, 'fail'],
    ['GEARBOX HEATER - FUSE 10', 5, 'fail'],
    ['FUSE: 7,5', 5, 'fail'],
    ['HEATER, BREAKER 16', 10, 'fail'],
    ['SIZE 10', 5, 'fail'],
    ['FUSE SIZE 3', 2, 'fail'],
    ['FUSE 10 MAX', 5, 'fail'],
    ['GEARBOX HEATER SIZE 10', 5, 'fail'],
    ['FUSE RATING 10', 5, 'fail'],
    ['FUSE RATED: 10', 5, 'fail'],
    ['FUSE MAX 10', 5, 'fail'],
    ['HEATER, MAX. 10', 5, 'fail'],
    ['FUSE10', 5, 'fail'],
    ['FUSE 10 x 38, MAX 10', 5, 'fail'],
    ['10 amperios', 5, 'fail'],
    ['HEATER 20ADC', 10, 'fail'],
    ['HEATER 20 ADC', 10, 'fail'],
    ['20Adc', 10, 'fail'],
    ['20AAC', 10, 'fail'],
    ['HEATER 20AT', 10, 'fail'],
    ['HEATER 20AT SLOW', 10, 'fail'],
    ['HEATER 20 AT', 10, 'fail'],
    ['HEATER 20 AT, SLOW', 10, 'fail'],
    ['20AF', 10, 'fail'],
    ['20 AFF', 10, 'fail'],
    ['HEATER 5ADC', 10, 'caution'],
    ['FUSE 5', 10, 'caution'],
    ['HEATERS 24V/5A', 10, 'caution'],
    ['HEATER 10 A', 20, 'caution'],
    ['HEATER 7.5 amp', 10, 'caution']
  ])('%s on %d A: what is larger than the rating fails', (label, amps, verdict) => {
    expect(ask(label, amps).verdict).toBe(verdict)
  })
})

it('a figure that is the number of the mark tells which fuse it is, but for a size', () => {
  const verdict = (label: string) => asked(wrongRating, { rated: [{ mark: 'F10', ratingA: { value: 5 } }], labels: { F10: label } }).verdict
  expect(['FUSE 10', 'FUSE 15', 'FUSE SIZE 10'].map(verdict)).toEqual(['pass', 'fail', 'fail'])
})

it('a pass says what was looked at', () => {
  expect(ask('FIFTEEN AMP', 5).says).toBe(
    'no label tells another figure in A than its fuse or breaker is of, nor a bare one right behind "fuse", "breaker", "size", "rating" or "max"'
  )
})

it('both are named, at the label', () => {
  const found = ask('HEATER 10 A', 20)
  expect(found.says).toBe('the label of F1 tells 10 A, it is of 20 A')
  expect(found.at).toEqual(['circuit', 'labels', 'F1'])
})

it('one of several is found, and a mark without a label is none', () => {
  const rated = ['F1', 'F2', 'toString'].map(mark => ({ mark, ratingA: { value: 5 } }))
  expect(asked(wrongRating, { rated, labels: { F1: 'A 5 A', F2: 'B 15 A' } })).toMatchObject({
    verdict: 'fail',
    says: 'the label of F2 tells 15 A, it is of 5 A'
  })
})

it('a job is asked of its fuses and breakers, not of its switches', () => {
  const text = jobText()
    .replace('{ what: fuse F4, resistance: 7 mohm }', '{ fuse: F4, rating: 10 A }, { switch: S1, rating: 20 A }')
    .replace('  loads:', '  labels: { F4: HEAT 5 A, S1: HEAT 5 A }\n  loads:')
  const { errors, findings } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  expect(findings.find(({ rule }) => rule === 'label/wrong-rating')).toMatchObject({
    verdict: 'caution',
    says: 'the label of F4 tells 5 A, it is of 10 A'
  })
})
