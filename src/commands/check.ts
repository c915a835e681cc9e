import { PRACTICE_NAMES } from '../trade/practice-names.ts'
import { choice, describe, flag, quantity, word } from './describe.ts'

export const check = describe({
  name: 'check',
  summary: 'judge every rule of job files',
  rows: {
    files: word('FILES', 'job files, folders of them, or patterns in quotes; - reads one from a pipe', {
      argument: true,
      required: true,
      many: 'repeat'
    }),
    format: choice(
      ['table', 'json', 'ndjson', 'junit', 'sarif', 'markdown'],
      'what to print; --json is --format json, and goes before another',
      {
        default: 'table',
        why: 'for the eye'
      }
    ),
    only: word('RULE', 'rules to ask, and no others', { many: 'comma' }),
    skip: word('RULE', 'rules not to ask', { many: 'comma' }),
    practice: choice(PRACTICE_NAMES, 'the practice whose limits apply, whatever a job says'),
    samples: quantity('count', 'N', 'random draws inside the bounds of every thing besides, as a check of the worst case; into JSON'),
    threads: quantity('count', 'N', 'files judged at the same time; left out, as many as there are cores where there are files enough'),
    watch: flag('judge again whatever changes, and the jobs of a bench that does, until it is stopped')
  },
  examples: [
    'check examples/gearbox-preheater.yaml',
    'check examples --json',
    'check "examples/bad/*.yaml" --only seat/jams-in-run-out,drop/too-much --format markdown'
  ],
  load: () => import('./check.run.ts')
})
