// table: what an item told in words does, by what the words call it; invented words
import { expect, it } from 'vitest'
import { markedItem } from '../../src/job/circuit-names.ts'

const doingOf = (what: string) =>
  markedItem({ what, fuse: null, breaker: null, switch: null, thermostat: null } as Parameters<typeof markedItem>[0]).does

it.each([
  ['fuse F4', 'protects'],
  ['In-line fuse on the bulkhead', 'protects'],
  ['thermal breaker by the battery', 'protects'],
  ['relay K1', 'switches'],
  ['switch on the dash', 'switches'],
  ['contacts of relay K2', 'switches'],
  ['heater on off switch S4', 'switches'],
  ['press to test switch S4', 'switches'],
  ['float to off switch', 'switches'],
  ['two to one switch S4', 'switches'],
  ['normally on relay K2', 'switches'],
  ['contact from relay K1', 'switches'],
  ['switch in a box by the fuse', 'switches'],
  ['cable fuse', 'protects'],
  ['wire from relay K1', 'joins'],
  ['stud on the relay', 'joins'],
  ['splice from the switch', 'joins'],
  ['plug inside relay box', 'joins'],
  ['terminal at fuse panel', 'joins'],
  ['plug near relay K1', 'joins'],
  ['stud in the breaker box', 'joins'],
  ['lead from switch S2 to relay K1', 'joins'],
  ['plug P3', 'joins']
])('%s %s', (what, does) => {
  expect(doingOf(what)).toBe(does)
})
