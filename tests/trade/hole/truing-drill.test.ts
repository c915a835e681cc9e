// table: the drill that trues an old hole. Limits as printed (ISO 965-2, M12x1.5-6H: 10.376 to 10.676; ASME B1.1, 3/8-24 UNF-2B: 8.382 to 8.636)
import { expect, it } from 'vitest'
import { truingDrill } from '../../../src/trade/hole/truing-drill.ts'
import { knownThread } from '../thread/known-thread.ts'

it.each([
  ['M12x1.5', 10.55, '10.6 mm'],
  ['M12x1.5', 10.53, '10.6 mm'],
  ['M12x1.5', 9, '10.4 mm'],
  ['M12x1.5', 10.67, undefined],
  // 21/64 = 8.334 lies below, 11/32 = 8.731 above.
  ['3/8-24 UNF', 8.2, undefined]
])('%s, a hole up to %d mm wide: %s', (thread, high, name) => {
  expect(truingDrill(knownThread(thread), { high })?.name).toBe(name)
})
