import { PRACTICE_NAMES } from '../../trade/practice-names.ts'
import { readBenchName } from '../bench-name.ts'
import { choice, map, named, quantity, text, word } from '../field.ts'
import { ASK_FIRST } from './ask-first.ts'
import { CIRCUIT } from './circuit.ts'
import { HOLE } from './hole.ts'
import { MASS } from './mass.ts'
import { PART } from './part.ts'
import { PROOF, READINGS } from './proof.ts'
import { RECORD } from './record.ts'
import { SUPPLY } from './supply.ts'
import { SURROUNDINGS } from './surroundings.ts'
import { TOOLS } from './tools.ts'
import { WARM } from './warm.ts'

const reason = text('why this limit instead of that of the practice', { required: true, example: "maker's letter 14" })

/** One whole fitting. Types, reading, JSON Schema and the page of fields all come from here. */
export const JOB = map('one whole fitting', {
  fettle: choice(['1'], 'version of this form', { required: true, example: '1' }),
  job: map(
    'what is to be done',
    {
      title: text('title of the job', { required: true, example: 'Filter-head heaters, 24 V forwarder' }),
      practice: choice(PRACTICE_NAMES, 'the practice whose limits apply', { default: 'general', example: 'road' })
    },
    { required: true }
  ),
  'ask-first': ASK_FIRST,
  limits: map('limits of this job in place of those of the practice', {
    'metal-below': map(
      'least floor below the drill',
      { least: quantity('length', 'least', { least: 0, required: true, example: '3 mm' }), reason },
      { optional: true }
    ),
    drop: map(
      'greatest drop as a share of the bus',
      { greatest: quantity('percent', 'greatest', { least: 0, required: true, example: '3 %' }), reason },
      { optional: true }
    ),
    'ground-shift': map(
      'greatest voltage of a ground point against 0 V',
      { greatest: quantity('voltage', 'greatest', { least: 0, required: true, example: '0.1 V' }), reason },
      { optional: true }
    )
  }),
  bench: word(readBenchName, 'file of tools and meters, beside this one; what stands here goes before it', {
    example: 'workshop.bench.yaml'
  }),
  parts: named('parts to be fitted', PART),
  tools: TOOLS,
  holes: named('holes to be opened', HOLE),
  circuit: CIRCUIT,
  supply: SUPPLY,
  surroundings: SURROUNDINGS,
  warm: WARM,
  mass: MASS,
  proof: PROOF,
  readings: READINGS,
  record: RECORD
})
