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
  ['plug to relay K1', 'joins'],
  ['Plug P3 to relay K1', 'joins'],
  ['terminal on switch', 'joins'],
  ['terminal 87 of relay K1', 'joins'],
  ['plug after switch S1', 'joins'],
  ['crimp on relay K1', 'joins'],
  ['jumper across switch', 'joins'],
  ['terminals before fuse F4', 'joins'],
  ['wire after switch S1', 'joins'],
  ['switch bypassed', 'joins'],
  ['switch S4, by-passed', 'joins'],
  ['old switch, bridged', 'joins'],
  ['relay K1 (shorted out)', 'joins'],
  ['switch, not fitted', 'joins'],
  ['fuse, bridged', 'joins'],
  ['no switch', 'joins'],
  ['No relay here', 'joins'],
  ['NO SWITCH', 'joins'],
  ['lead without a switch', 'joins'],
  ['NO switch S4', 'switches'],
  ['bypass switch S2', 'switches'],
  ['switch, not bridged', 'switches'],
  ['plug-in relay K1', 'switches'],
  ['switch after plug P3', 'switches'],
  ['plug P3', 'joins']
])('%s %s', (what, does) => {
  expect(doingOf(what)).toBe(does)
})
