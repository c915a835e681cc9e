import { describe, word } from './describe.ts'

export const drill = describe({
  name: 'drill',
  summary: 'size of a drill and its neighbours in every set',
  rows: { size: word('SIZE', 'the drill: #7, F, 7/16, "10.2 mm" or "0.201 in"', { argument: true, required: true }) },
  examples: ['drill 7/16', 'drill "#7"'],
  load: () => import('./drill.run.ts')
})
