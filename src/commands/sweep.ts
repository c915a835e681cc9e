import { PRACTICE_NAMES } from '../trade/practice-names.ts'
import { choice, describe, flag, quantity, word } from './describe.ts'

export const sweep = describe({
  name: 'sweep',
  summary: 'results and verdicts of a job over one of its fields',
  rows: {
    file: word('FILE', 'the job file; - reads one from a pipe', { argument: true, required: true }),
    field: word('PATH', 'the field as it stands in the file, as holes.left.found.depth', { required: true }),
    from: word('Q', 'its first value', { required: true }),
    to: word('Q', 'its last value', { required: true }),
    steps: quantity('count', 'N', 'even steps between the two', { default: '10', why: 'enough to see where it turns' }),
    results: word('ID', 'results to show; without it every one that moves', { many: 'comma' }),
    plot: word('ID', 'draw this result over the field'),
    only: word('RULE', 'rules to ask, and no others', { many: 'comma' }),
    skip: word('RULE', 'rules not to ask', { many: 'comma' }),
    practice: choice(PRACTICE_NAMES, 'the practice whose limits apply, whatever the job says'),
    format: choice(['table', 'json', 'csv', 'svg'], 'what to print; --json is --format json, and goes before another', {
      default: 'table',
      why: 'for the eye'
    }),
    output: word('FILE', 'file to write; without it all goes to the screen', { short: 'o' }),
    force: flag('write over a file that is there')
  },
  examples: [
    'sweep examples/gearbox-preheater.yaml --field holes.sump.found.depth --from "20 mm" --to "26 mm" --steps 6',
    'sweep examples/gearbox-preheater.yaml --field circuit.runs.2.wire.length --from "2 m" --to "20 m" --plot circuit.sump:drop.drop-percent --only drop/too-much'
  ],
  load: () => import('./sweep.run.ts')
})
