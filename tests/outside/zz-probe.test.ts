import { it } from 'vitest'
import { AIRCRAFT_PROTECTION } from '../../src/trade/circuit/protection-aircraft.ts'
import { jsonOf } from '../commands/json-of.ts'
const name = (a: number) => `"AWG ${a > 0 ? a : '0'.repeat(1 - a)}"`
it('probe', async () => {
  for (const lies of ['', '--ambient 57°C', '--ambient 57°C --bundle 15', '--ambient 57°C --bundle 15 --altitude 9144m', '--ambient 20°C --bundle 9', '--bundle 5 --ambient 30°C'])
    for (const { awg, breakerA, fuseA } of AIRCRAFT_PROTECTION)
      for (const [style, a] of [['blade', fuseA], ['glass', fuseA], ['iec-60898', breakerA]] as const) {
        if (a === null) continue
        const out = (await jsonOf(`protect --practice aircraft --current 1A --wire ${name(awg)} --rating ${a}A --style ${style} ${lies}`))
        const f = out.findings.find(({ rule }) => rule === 'protect/over-wire')!
        if (f.verdict === 'fail' || awg === 18) console.log(lies, style, awg, a, f.verdict, f.says.split('; an over')[1] ?? '')
      }
})
