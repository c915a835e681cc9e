import { ALLOWANCES } from '../../fitting/proof-allowance.ts'
import { showNumber } from '../../quantity/show.ts'
import type { Column, Table } from '../../report/answer.ts'
import type { Finding } from '../../rules/finding.ts'
import { pointText } from '../../trade/proof/drawn.ts'
import { type Meter, meterText } from '../../trade/proof/meter.ts'
import type { ProbeGain } from '../../trade/proof/next-probe.ts'
import { findsNoEnd, NO_END } from '../../trade/proof/no-end.ts'
import type { Probe } from '../../trade/proof/probe.ts'
import { READING_UNIT } from '../../trade/proof/reading-unit.ts'
import type { Proof } from './proof-of.ts'
import { powerText } from './test-points.ts'

type Row = Table['rows'][number]

const AT: Column = { key: 'at', name: 'red to black lead', unit: '' }
const LOW: Column = { key: 'low', name: 'from', unit: '', shown: 'reading' }
const HIGH: Column = { key: 'high', name: 'to', unit: '', shown: 'reading' }
const POWER: Column = { key: 'power', name: 'power', unit: '' }
const WHAT: Column = { key: 'what', name: 'what', unit: '' }
const own = (key: string, name: string): Column => ({ key, name, unit: '', shown: 'reading', unitIn: 'unit' })

/** What every point should show, before anything is measured. */
export function expectedTable({ points, expected }: Proof): Table {
  const rows = points.map((point, i) => {
    const { value, low, high } = expected[i]!
    return { ...placeOf(point), value, low, high, what: point.says, ...meterOf(point.meter) }
  })
  return { name: 'expected readings', columns: [AT, own('value', 'expected'), LOW, HIGH, POWER, WHAT], rows }
}

export function allowancesTable(): Table {
  const rows = ALLOWANCES.map(({ says, source }) => ({ what: says, source: source.id, label: source.label }))
  const columns = [
    { ...WHAT, name: 'a band holds, beside what the job says' },
    { key: 'source', name: 'source', unit: '' },
    { key: 'label', name: 'label', unit: '' }
  ]
  return { name: 'allowed for', columns, rows }
}

export function readingsTable({ readings, bands }: Proof, verdicts: readonly Finding[]): Table {
  const rows = readings.map((reading, i) => {
    const { low, high, value: expected } = bands[i]!
    return {
      ...placeOf(reading),
      value: reading.value,
      seen: findsNoEnd(reading) ? NO_END : reading.value,
      expected,
      low,
      high,
      error: reading.error,
      verdict: verdicts[i]!.verdict,
      ...meterOf(reading.meter)
    }
  })
  const columns = [AT, own('seen', 'reading'), LOW, HIGH, POWER, { key: 'verdict', name: 'verdict', unit: '' }]
  return { name: 'readings against their bands', columns, rows }
}

export function loopsTable({ readings, loops }: Proof, verdicts: readonly Finding[]): Table {
  const rows = loops.map(({ steps, sumV, allowedV }, i) => ({
    loop: steps.map(({ index, sign }) => `${sign < 0 ? '− ' : '+ '}(${pointText(readings[index]!)})`).join(' '),
    'left-over': sumV,
    allowed: allowedV,
    unit: 'V',
    verdict: verdicts[i]!.verdict
  }))
  const columns = [
    own('left-over', 'left over'),
    own('allowed', 'allowed'),
    { key: 'verdict', name: 'verdict', unit: '' },
    { key: 'loop', name: 'loop', unit: '' }
  ]
  return { name: 'loops of readings', columns, rows }
}

/** Every fault with its probability; those that the readings cannot tell apart carry one number. */
export function faultsTable({ diagnosis }: Proof): Table {
  const rows = (diagnosis?.suspects ?? []).flatMap(({ members, probabilityRatio }, i) =>
    members.map(
      ({ fault, size, fitted, priorRatio, probabilityRatio: ownRatio }): Row => ({
        suspect: i + 1,
        probability: 100 * probabilityRatio,
        own: 100 * ownRatio,
        prior: 100 * priorRatio,
        fault: fault.id,
        kind: fault.kind,
        at: fault.at,
        what: fault.says,
        'size-is': fault.sizeSays,
        size: size?.value ?? (fault.sizes.by === 'list' ? fitted.best.size : null),
        low: size?.low ?? null,
        high: size?.high ?? null,
        unit: fault.unit,
        'size-text': fitted.best.name ?? (size === null ? '' : `${showNumber(size.value, 'resistance')} ${fault.unit}`.trim())
      })
    )
  )
  const columns: readonly Column[] = [
    { key: 'suspect', name: '', unit: '' },
    { key: 'probability', name: 'likely', unit: '%', shown: 'percent' },
    { key: 'size-text', name: 'size', unit: '' },
    { ...LOW, shown: 'resistance' },
    { ...HIGH, shown: 'resistance' },
    WHAT
  ]
  const shown = rows.filter(({ probability }) => Number(probability) >= 0.1).length
  return { name: 'what explains the readings', columns, rows, most: Math.min(MOST_FAULTS, Math.max(3, shown)) }
}

const MOST_FAULTS = 12

/** What each point not yet measured would tell. */
export function nextTable({ next, points }: Proof): Table {
  const rows = next.map(({ point, gainBits }) => ({ ...placeOf(point), gain: gainBits, what: wordsFor(point, points) }))
  const columns: readonly Column[] = [
    { key: 'gain', name: 'tells, bits', unit: '', shown: 'bits' },
    { key: 'takes', name: 'take', unit: '' },
    AT,
    POWER,
    WHAT
  ]
  return { name: 'what to measure next', columns, rows, most: 5 }
}

/** What a point is called in the table of expected readings. */
function wordsFor(point: Probe, points: Proof['points']): string {
  return (
    points.find(one => one.takes === point.takes && one.red === point.red && one.black === point.black && one.passingA === point.passingA)
      ?.says ?? ''
  )
}

/** `volts panel to switched (power on)`. */
export function probeText({ point }: Pick<ProbeGain, 'point'>): string {
  return `${point.takes} ${pointText(point)}${point.passingA === null ? '' : `, ${point.passingA} A passed with the power off`}`
}

function placeOf(point: Probe) {
  return { at: pointText(point), takes: point.takes, power: powerText(point), passing: point.passingA, unit: READING_UNIT[point.takes] }
}

function meterOf(meter: Meter) {
  const { accuracyPercent, digitsCount, resolution, source } = meter
  return { meter: meterText(meter), percent: accuracyPercent, digits: digitsCount, resolution, source: source?.id ?? null }
}
