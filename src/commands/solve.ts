import { PRACTICE_NAMES } from '../trade/practice-names.ts'
import { choice, describe, quantity, word } from './describe.ts'

export const solve = describe({
  name: 'solve',
  summary: 'the least or the greatest value of a field of a job with which nothing fails',
  rows: {
    file: word('FILE', 'the job file; - reads one from a pipe', { argument: true, required: true }),
    field: word('PATH', 'the field as it stands in the file, as holes.left.found.depth', { required: true }),
    from: word('Q', 'where to look from', { required: true }),
    to: word('Q', 'where to look to', { required: true }),
    want: choice(['least', 'greatest'], 'which of the values that fit', { required: true }),
    steps: quantity('count', 'N', 'places looked at before the edge between two is closed in on', {
      default: '100',
      why: 'a gap narrower than a step is not seen'
    }),
    only: word('RULE', 'rules to ask, and no others', { many: 'comma' }),
    skip: word('RULE', 'rules not to ask', { many: 'comma' }),
    practice: choice(PRACTICE_NAMES, 'the practice whose limits apply, whatever the job says')
  },
  examples: [
    'solve examples/gearbox-preheater.yaml --field circuit.runs.2.wire.length --from "2 m" --to "60 m" --want greatest',
    'solve examples/hydraulic-tank-sensor.yaml --field holes.elbow.found.depth --from "10 mm" --to "24 mm" --want least --strict'
  ],
  load: () => import('./solve.run.ts')
})
