import { describe, quantity, span, word } from './describe.ts'

export const torque = describe({
  name: 'torque',
  summary: 'convert a torque, and set the wrench',
  rows: {
    torque: quantity('torque', 'TORQUE', 'the torque at the fastener, as "155 in-lb" or "17.5 N·m"', { argument: true, required: true }),
    to: word('UNIT', 'the unit to show alone, as N·m or lbf·in'),
    lever: quantity('length', 'L', 'middle of the grip to the drive of the wrench'),
    adapter: quantity('length', 'L', 'drive of the wrench to the fastener, along the adapter'),
    angle: quantity('angle', 'DEG', 'adapter against the handle: 0 straight on, 90 square, 180 back along it', {
      default: '0 °',
      why: 'straight on'
    }),
    tool: span('torque', 'lowest and greatest setting of the wrench, as "5..25 N·m"'),
    'tool-accuracy': quantity('percent', 'P', 'accuracy of the wrench, meant as ±', { least: 0 })
  },
  examples: ['torque 155 in-lb', 'torque "17.5 N·m" --lever "250 mm" --adapter "40 mm" --tool "5..25 N·m" --tool-accuracy "4 %"'],
  load: () => import('./torque.run.ts')
})
