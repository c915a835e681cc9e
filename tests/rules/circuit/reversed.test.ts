// table: a load that gets its voltage the wrong way round; the numbers are invented
import { expect, it } from 'vitest'
import { exactly } from '../../../src/formula/bounds.ts'
import { reversed } from '../../../src/rules/circuit/reversed.ts'
import { asked } from '../../../src/rules/rule.ts'

it('passes what is fed the way it is drawn', () => {
  expect(asked(reversed, { load: 'lamp', atV: exactly(12), reversedBy: [] }).verdict).toBe('pass')
})

it('names the source that feeds a load backwards', () => {
  expect(asked(reversed, { load: 'lamp', atV: exactly(-13.1), reversedBy: ['converter'] })).toMatchObject({
    verdict: 'caution',
    says: 'load lamp gets its voltage backwards, -13.1 V: converter drives it so, as drawn'
  })
})
