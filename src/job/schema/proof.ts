import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'
import { readReadingOhm } from '../../trade/proof/read-reading.ts'
import { list, map, quantity, text, word } from '../field.ts'

/** `0.5` or `0.5 %`. */
function readAccuracy(written: string): Outcome<number> {
  const [bare, share] = [parseQuantity('factor', written), parseQuantity('percent', written)]
  const found = bare.ok ? bare : share
  if (!found.ok) return found
  return found.value.value >= 0 && found.value.value <= 100 ? good(found.value.value) : bad(quoted(written), 'a share from 0 to 100 %')
}

export interface Resolution {
  readonly value: number
  readonly unit: 'V' | 'A' | 'ohm'
}

/** One step of the last figure: `0.01 V`, `1 mA`, `0.1 ohm`. */
function readResolution(written: string): Outcome<Resolution> {
  for (const [kind, unit] of [
    ['voltage', 'V'],
    ['current', 'A'],
    ['resistance', 'ohm']
  ] as const) {
    const found = parseQuantity(kind, written)
    if (found.ok && found.value.value >= 0 && found.value.value <= 100) return good({ value: found.value.value, unit })
  }
  return bad(quoted(written), 'one step of the last figure shown, as "0.01 V", "0.01 A" or "0.1 ohm"')
}

/** Taken by who proves a circuit, and by nobody else: a job that is only judged assumes nothing of a meter. */
export const USUAL_BENCH = { leads: '0.2 ohm +0.3 ohm -0.1 ohm', 'test-current': '10 A' } as const

/** `± (0.5 % + 2 digits)` of a meter whose last figure steps by so much. */
function meter<const S extends string>(says: S, percent: string, digits: string, resolution: string) {
  return map(
    says,
    {
      percent: word(readAccuracy, 'accuracy in percent of the reading', {
        required: true,
        example: percent,
        measure: 'the sheet of the meter'
      }),
      digits: quantity('count', 'and so many steps of the last figure', {
        required: true,
        example: digits,
        measure: 'the sheet of the meter'
      }),
      resolution: word(readResolution, 'one step of the last figure in the range used; without it the finest range of 6000 counts', {
        example: resolution,
        measure: 'read the display'
      })
    },
    { optional: true }
  )
}

/** Less drops nothing that a meter reads. */
const LEAST_TEST_A = 0.01

/** What the circuit is proved with. */
export const PROOF = map('the bench for proving the circuit', {
  leads: quantity('resistance', `both test leads together, in a reading of ohms; without it ${USUAL_BENCH.leads}`, {
    example: '0.2 ohm ± 0.05 ohm',
    measure: 'touch the tips together'
  }),
  'test-current': quantity(
    'current',
    `known current that is passed for a millivolt test of a ground; without it ${USUAL_BENCH['test-current']}`,
    { least: LEAST_TEST_A, example: '10 A' }
  ),
  meter: map('the meters; without one a typical hand meter and clamp', {
    volts: meter('accuracy for volts', '0.5', '2', '0.01 V'),
    amps: meter('accuracy for amps', '2', '5', '0.01 A'),
    ohms: meter('accuracy for ohms', '0.9', '1', '0.1 ohm')
  })
})

/** What was measured. */
export const READINGS = list(
  'what was measured on the finished circuit',
  map(
    'a reading: volts, amps or ohms',
    {
      at: text('two points, the red lead first', { required: true, example: 'left+ to left-' }),
      volts: quantity('voltage', 'volts from the first to the second point', { example: '26.4 V' }),
      amps: quantity('current', 'current from the first to the second point, through what joins them', { example: '1.9 A' }),
      ohms: word(
        readReadingOhm,
        'ohms, power off: of the part that joins the two points, one lead taken off, else of the circuit between them; OL for no end',
        {
          example: '13.1 ohm'
        }
      ),
      passing: quantity('current', 'known current passed from outside with the power off, where volts are of a millivolt test', {
        least: LEAST_TEST_A,
        example: '10 A'
      }),
      meter: meter('the meter of this reading', '0.5', '2', '0.01 V')
    },
    { example: '{ at: left+ to left-, volts: 26.4 V }' }
  )
)
