import { Given } from '../../formula/given.ts'

/** One pitch, where nothing is given: what a tap maker asks for beyond thread, chamfer and front centre (read-secondary). */
export function assumedTapClear(pitchMm: Given, at: Given['at'] = []): Given {
  return new Given(pitchMm.value, { assumed: 'one pitch', at })
}
