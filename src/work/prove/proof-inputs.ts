import { inputOf, inputsOf } from '../../job/inputs.ts'
import type { Job } from '../../job/read-job.ts'
import type { Answer } from '../../report/answer.ts'
import { meterText, usualMeter } from '../../trade/proof/meter.ts'
import { benchOf } from './bench-of.ts'

/** The quantities of the circuit and its readings, and what was taken for the bench. */
export function proofInputs(job: Job): Answer['inputs'] {
  const { leads, testCurrent } = benchOf(job)
  const usual = [leads, testCurrent].filter(({ assumed }) => assumed !== undefined)
  const given = Object.entries(inputsOf(job)).filter(([path]) => /^(circuit|proof|readings)\./.test(path))
  const bench = usual.map(one => [one.at.join('.'), inputOf(one, one === leads ? 'ohm' : 'A')] as const)
  const meters = TAKES.filter(takes => job.proof.meter[takes] === null).map(takes => [`proof.meter.${takes}`, meterInput(takes)] as const)
  return Object.fromEntries([
    ...given.map(([path, input]) => [path, { ...input, text: `${input.value} ${input.unit}`.trim() }] as const),
    ...bench.map(([path, input]) => [path, { ...input, text: `${input.value} ${input.unit}` }] as const),
    ...meters
  ])
}

const TAKES = ['volts', 'amps', 'ohms'] as const

function meterInput(takes: (typeof TAKES)[number]) {
  const meter = usualMeter(takes)
  const text = meterText(meter)
  return { value: text, low: null, high: null, unit: '', assumed: meter.assumed ?? null, text }
}
