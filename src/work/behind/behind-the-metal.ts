import type { Job } from '../../job/read-job.ts'
import { KEPT_GAS, LIQUID } from './fluids.ts'
import { itsLiquid } from './its-liquid.ts'
import { plainWords } from './plain-words.ts'

type Told = Pick<Job, 'ask-first'>

/** What says as a whole that there is nothing. An emptied tank is none of these: its vapour is worse than what was in it. */
const NOTHING: ReadonlySet<string> = new Set([
  'nothing',
  'nothing at all',
  'nothing there',
  'nothing behind it',
  'none',
  'nil',
  'air',
  'open air',
  'the open air',
  'outside air',
  'free air',
  'open to air',
  'open to the air',
  'open to atmosphere',
  'open to the atmosphere',
  'atmosphere',
  'the atmosphere',
  'dry',
  'solid',
  'solid metal',
  'solid casting'
])

/** Whether something may run out, or in, where the metal is opened: unless the job says, and says no more, that there is nothing. */
export function mayLeak({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what === null || !NOTHING.has(plainWords(what))
}

/** Nothing runs out of it, and it may still be under pressure: a reservoir keeps that with the machine off. */
export function isAir({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what !== null && plainWords(what) === 'air'
}

/** A water line is a pipe too: that of the boat is one that things lie at, below or under. A harbour crane stands on land. */
const OPEN_WATER = new RegExp(
  [
    '\\b(sea|lake|river|harbou?r|raw|open) ?water\\b|\\bwaterline\\b|\\b(at|below|under) ((the|its) )?water line\\b|\\bseacock\\b',
    '\\b(sea|lake|river|harbou?r)\\b(?! ((freight|mobile|container) )?(cranes?|container|freight|tractors?|trucks?|lorry|excavators?|train)\\b)'
  ].join('|')
)

/** What a text about open water and nothing else is made of. Raw water is not: it stands in the pipes of the machine. */
const WATER_WORDS: ReadonlySet<string> = new Set(
  'a and at behind below boat bottom freshwater from fresh harbor harbour hull in lake of open outside river salt saltwater sea seacock seawater the to under underneath water waterline line'.split(
    ' '
  )
)

/** Water that the boat lies in, which nobody can drain, is named. */
export function namesOpenWater({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what !== null && OPEN_WATER.test(plainWords(what))
}

/** Something may be there that is let out before the metal is opened, and filled up again: unless it is open water alone. */
export function mayDrain(told: Told): boolean {
  const what = told['ask-first']['behind-the-metal']
  if (what === null || !namesOpenWater(told)) return mayLeak(told)
  return !plainWords(what)
    .split(' ')
    .every(word => WATER_WORDS.has(word))
}

/** A gas, or what becomes one, that nobody lets out: it is taken back by those who may. */
export function isTakenBack({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what !== null && KEPT_GAS.test(itsLiquid(plainWords(what)))
}

/** Surely a liquid in an open vessel. */
export function isLiquid({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what !== null && LIQUID.test(plainWords(what))
}
