import { asChosen, type Bounded, boundsOf, exactly } from '../formula/bounds.ts'
import { fact } from '../formula/formula.ts'
import { Given } from '../formula/given.ts'
import { SOURCES } from '../formula/source.ts'
import { bad, good, type Outcome } from '../quantity/fault.ts'
import { findUnit } from '../quantity/find-unit.ts'
import { tellerOf } from '../quantity/in-unit.ts'
import { nearest } from '../quantity/near.ts'
import { plainNumber } from '../quantity/plain-number.ts'
import { quoted } from '../quantity/quoted.ts'
import type { Result } from '../report/answer.ts'
import { resultOf } from '../report/result.ts'
import { asked } from '../rules/rule.ts'
import { outsideWrenchRange } from '../rules/torque/outside-wrench-range.ts'
import { type Adapter, fastenerNm, pulled, straightNm, wrenchSetting, wrenchSettingNm } from '../trade/joint/torque-wrench.ts'
import type { PlainSum } from './plain-lines.ts'
import { type QuickRun, quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { sum } from './sum.ts'
import { torque as description } from './torque.ts'
import type { Words } from './words.ts'

/** The six units that are always there: id, unit, name. */
const UNITS = [
  ['newton-metre', 'N·m', 'newton metre'],
  ['pound-force-inch', 'lbf·in', 'pound-force inch'],
  ['pound-force-foot', 'lbf·ft', 'pound-force foot'],
  ['kilogram-force-centimetre', 'kgf·cm', 'kilogram-force centimetre'],
  ['kilogram-force-metre', 'kgf·m', 'kilogram-force metre'],
  ['ounce-force-inch', 'ozf·in', 'ounce-force inch']
] as const
type Unit = (typeof UNITS)[number][1]
const FACTS = UNITS.map(([, , says]) => fact('torqueNm', { says, symbol: 'T', source: SOURCES['torque-units'] }))

const whole = quickSum(description, { to: readUnit }, words => {
  const adapter = adapterOf(words)
  if (refused(adapter)) return adapter
  // Set by whoever asks for the answer first: an adapter may leave no lever.
  let setting: Given | undefined
  const settingNm = () => (setting ??= settingOf(words.torque, adapter))
  return sum({
    title: words.torque.value === 0 ? 'no torque' : 'at the fastener',
    tree: () => ({ settingNm: settingNm(), cardNm: words.torque, errorPercent: accuracyOf(words), adapter }),
    calculation: pulled,
    results: {},
    more: r => [...inEveryUnit(words), ...settingResults(words, settingNm(), r)],
    findings: () => (words.tool === null ? [] : [asked(outsideWrenchRange, { settingNm: asChosen(settingNm()), tool: words.tool })])
  })
})

const TELLERS = UNITS.map(([, unit]) => tellerOf('torque', unit))

/** A conversion and nothing else. */
function plain(words: string): PlainSum | undefined {
  const given = plainNumber('torque', words)
  if (given === undefined || !(given <= straightNm.inputs.settingNm[2])) return undefined
  return { given, results: TELLERS.map(tell => tell(given)) }
}

export const run: QuickRun = Object.assign(whole, { plain })

type TorqueWords = Words<typeof description.rows, { readonly to: typeof readUnit }>

function readUnit(text: string): Outcome<Unit> {
  const known = UNITS.map(([, unit]) => unit)
  const label = findUnit('torque', text.trim())?.label
  const unit = known.find(one => one === label)
  return unit === undefined ? bad(quoted(text), known.join(', '), nearest(text.trim(), known)) : good(unit)
}

function adapterOf({ lever: leverMm, adapter: adapterMm, angle: angleDeg }: TorqueWords): Adapter | undefined | ReturnType<typeof refusal> {
  if (leverMm === null && adapterMm === null)
    return angleDeg.assumed === undefined ? refusal('--angle', '--angle without an adapter', '--lever and --adapter as well') : undefined
  if (leverMm === null)
    return refusal('--lever', '--adapter without --lever', 'the length from the middle of the grip to the drive as well')
  if (adapterMm === null) return refusal('--adapter', '--lever without --adapter', 'the length from the drive to the fastener as well')
  return { leverMm, adapterMm, angleDeg }
}

/** One exact number: the wanted torque, with lever, adapter and angle at the end that would pull most. */
function settingOf(torque: Given, adapter: Adapter | undefined): Given {
  if (adapter === undefined) return new Given(torque.value, { at: ['torque'] })
  const torqueNm = new Given(torque.value, { at: ['torque'] })
  const { settingNm } = boundsOf({ torqueNm, adapter }, x => ({ settingNm: wrenchSetting(x) }))
  const [reason] = settingNm.hangsOn
  return new Given(settingNm.low, { assumed: reason && `${reason.at.join('.')}: ${reason.assumed}`, at: ['torque'] })
}

function accuracyOf({ 'tool-accuracy': accuracy }: TorqueWords): Given {
  return new Given(0, accuracy === null ? {} : { low: -accuracy.high, high: accuracy.high, at: ['tool-accuracy'] })
}

/** The six units; `--to` picks the one that a table shows. */
function inEveryUnit({ torque, to }: TorqueWords): readonly Result[] {
  return UNITS.map(([id, unit], i) => {
    const told = TELLERS[i]!
    const value = told(torque.value)
    const [low, high] = torque.low < torque.high ? [told(torque.low), told(torque.high)] : [value, value]
    const bounds = low === high ? value : { ...exactly(value), low, high, rss: [low, high] as const }
    return resultOf(id, FACTS[i]!, bounds, undefined, { unit, ownUnit: true, hidden: to !== null && to !== unit })
  })
}

interface PulledBounds {
  readonly fastenerNm: Bounded
  readonly shownTorqueNm: Bounded | undefined
}

/** What to set, what the fastener then gets, and the trap of setting the card value. */
function settingResults({ lever, tool, 'tool-accuracy': accuracy }: TorqueWords, settingNm: Given, r: PulledBounds): readonly Result[] {
  if (lever === null && tool === null && accuracy === null) return []
  return [
    resultOf('wrench-setting', wrenchSettingNm, settingNm.value),
    resultOf('fastener-torque', lever === null ? straightNm : fastenerNm, r.fastenerNm),
    ...(r.shownTorqueNm === undefined
      ? []
      : [
          resultOf(
            'fastener-torque.card-set',
            { ...fastenerNm, says: 'what it would get with the card value set: not this' },
            r.shownTorqueNm
          )
        ])
  ]
}
