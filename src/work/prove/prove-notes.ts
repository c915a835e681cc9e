import { PROTECTOR } from '../../job/circuit-names.ts'
import { showNumber } from '../../quantity/show.ts'
import { PRIOR } from '../../trade/proof/fault-prior.ts'
import type { ProbeGain } from '../../trade/proof/next-probe.ts'
import { findsNoEnd, NO_END } from '../../trade/proof/no-end.ts'
import { READING_UNIT, type Takes } from '../../trade/proof/reading-unit.ts'
import { unseenFaults } from '../../trade/proof/unseen-faults.ts'
import { drawingNotes } from './drawing-notes.ts'
import type { Proof } from './proof-of.ts'
import { probeText } from './prove-tables.ts'

/** Sentences that belong to no rule: what cannot be told, what would tell it, what the figures rest on. */
export function proofNotes(proof: Proof): readonly string[] {
  if (proof.diagnosis === null) return [...drawingNotes(proof), ORDER]
  return [...drawingNotes(proof), ...alikeNote(proof), ...twoNote(proof), ...openFuseNote(proof), ...unseenNote(proof), PRIOR_NOTE]
}

const ORDER =
  'before the power goes on: look, then ground and bonds, then continuity of feed and return, then insulation with the part taken off, then polarity; the volts and amps of this table come after that'

const PRIOR_NOTE = `before any reading: ${Object.entries(PRIOR)
  .map(([kind, percent]) => `${kind} ${percent} %`)
  .join(', ')}; common practice, no published source`

/** Below this a reading tells next to nothing. */
const LEAST_BITS = 0.1

function alikeNote({ diagnosis, between }: Proof): readonly string[] {
  const [suspect] = diagnosis!.suspects
  if (suspect!.members.length < 2) return []
  const names = suspect!.members.map(({ fault }) => fault.says).join('; ')
  const tells =
    between !== null && between.gainBits >= LEAST_BITS
      ? `${probeText(between)} would tell (${wouldShow(between)})`
      : `no test point of the table would tell: ${byEye(suspect!.members)}`
  return [`the readings given cannot tell these apart, so they count as one: ${names}; ${tells}`]
}

/** What each of them would show there. */
function wouldShow({ point, wouldShow: shown }: ProbeGain): string {
  return shown.map(({ fault, value }) => `${readingText(point.takes, value)} if ${fault.says}`).join('; ')
}

function readingText(takes: Takes, value: number): string {
  return findsNoEnd({ takes, value }) ? `no continuity (${NO_END})` : `${showNumber(value, 'reading')} ${READING_UNIT[takes]}`
}

function byEye(members: readonly { readonly fault: { readonly kind: string } }[]): string {
  const kinds = members.map(({ fault }) => fault.kind)
  if (kinds.includes('wrong-wire')) return 'read the mark on the wire, or measure the drop over the wire alone, without its ends'
  if (kinds.includes('wrong-part')) return 'read the mark on the part'
  return 'take the joints apart one by one and look'
}

function twoNote({ two }: Proof): readonly string[] {
  return two === null
    ? []
    : [`two faults at once would explain the readings: ${two.faults.map(({ says }) => says).join(', and ')}; a hint, no more`]
}

/** A fuse seldom opens by itself. */
function openFuseNote({ diagnosis }: Proof): readonly string[] {
  const open = diagnosis!.suspects[0]!.members.some(({ fault }) => fault.kind === 'open' && PROTECTOR.test(fault.says))
  return open ? ['a fuse or breaker that is open may have opened for a short: measure the loads cold before it is closed again'] : []
}

const MOST_NAMED = 5

function unseenNote({ predictor, faults }: Proof): readonly string[] {
  const unseen = unseenFaults(predictor, faults)
  if (unseen.length === 0) return []
  const named = unseen.slice(0, MOST_NAMED).map(({ says }) => says)
  const more = unseen.length > MOST_NAMED ? ` and ${unseen.length - MOST_NAMED} more` : ''
  return [`would hardly show in the readings given, so that nothing is said of it: ${named.join('; ')}${more}`]
}
