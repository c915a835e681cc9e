// table: sizes against the smallest of the practice
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { tooSmall } from '../../../src/rules/wire/too-small.ts'
import type { Conductor } from '../../../src/trade/circuit/ampacity-conductor.ts'
import { smallestAllowed } from '../../../src/trade/circuit/ampacity-smallest-wire.ts'

const onBoat = (conductor: Conductor) => ({ size: 'it', smallest: smallestAllowed({ practice: 'boat', conductor, run: 'single' }) })

// 33 CFR 183.425 (d) to (f) (read): a single wire is AWG 16 or more; ISO 10133 (read-secondary): 1 mm² or more.
it.each([
  [onBoat({ standard: 'awg', awg: 18 }), 'fail', '33-cfr-183.425-size'],
  [onBoat({ standard: 'awg', awg: 16 }), 'pass', '33-cfr-183.425-size'],
  [onBoat({ standard: 'mm2', areaMm2: 0.75 }), 'fail', 'iso-10133'],
  [onBoat({ standard: 'mm2', areaMm2: 1 }), 'pass', 'iso-10133']
])('%j', (subject, verdict, source) => {
  expect(asked(tooSmall, subject)).toMatchObject({ verdict, source })
})
