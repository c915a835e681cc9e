export type Kind = 'charger' | 'controller' | 'panel' | 'battery' | 'charged' | 'charged by engine' | 'driven' | 'unknown'

/**
 * What a source is, by the words of its name: of each thing told, the last word of a kind before a place. Beside a battery whatever may
 * charge it counts, wherever it is told, and so does that it is charged, by what is named. One whose words tell nothing is unknown.
 */
export function kindsOf(what: string): readonly Kind[] {
  const told = new Set(what.split(JOINED).flatMap(thing => kindOf(thing.replace(PLACE, '')) ?? []))
  if (told.size === 0) return ['unknown']
  if (!told.has('battery')) return [...told]
  const charging = chargingOf(what)
  if (CHARGES.test(what)) charging.add('charged')
  if (told.has('driven') && !charging.has('charged by engine')) charging.add('driven')
  return ['battery', ...ORDER.filter(kind => charging.has(kind))]
}

/** Whether it gives what the sun gives, and there is surely nothing beside it. */
export function isPanel(what: string): boolean {
  const kinds = kindsOf(what)
  return kinds.includes('panel') && kinds.every(kind => kind === 'panel' || kind === 'controller')
}

const ORDER: readonly Kind[] = ['charged', 'charged by engine', 'driven']

/** What charges a battery, where that is told; one that is only called charged may be full and alone. */
const BY =
  /(?<!\b(?:not|never) )\b(?:re)?charg(?:ed|ing) (?:by|from|via|through|off|while|when|during) ([^,;:()]+)|\b(?:that|which) ([^,;:()]+) charges\b/i
const CHARGING = /\bcharging\b|\bon charge\b|\b(?:trickle|float)[ -]charge|\b(?:that|which)\b.*\bcharges\b/i

/** By an engine, or by whatever else; by either where nobody told by what, and an engine is named. */
function chargingOf(what: string): Set<Kind> {
  const [, by, that] = BY.exec(what) ?? []
  const named = (by ?? that)?.split(JOINED).map(each => each.replace(PLACE, ''))
  if (named !== undefined) return new Set(named.map(each => (ENGINE.test(each) ? 'charged by engine' : 'charged')))
  if (!CHARGING.test(what)) return new Set()
  return new Set(ENGINE.test(what) ? ['charged', 'charged by engine'] : ['charged'])
}

type Words = readonly (readonly [Kind, RegExp])[]

const JOINED = /\s+(?:with|and)\s+|[,;:()/+&]/i

/** A battery at the panel is a battery; a bank of panels, panels. */
const PLACE =
  /(?:^|\s)(?:at|near|by|beside|behind|under|above|next to|inside|on|in|from|for|via|through|that|which|(?<!\b(?:bank|row|string|pair|set|array)s?\s)of|to(?! (?:dc|batter|\d)))\s.*$/is

const BOARD = 'instrument|control|switch|fuse|breaker|distribution|meter|dash|battery'

/** What names the thing itself. */
const THINGS: Words = [
  ['charger', /chargers?\b|adapt[eo]rs?\b|\bmaintainers?\b|\bconverters?\b|\brectifiers?\b/gi],
  ['controller', /\b(?:solar|pv|photovoltaic|charg(?:e|ing)|mppt|pwm)\b[\w -]*\b(?:controllers?|regulators?)\b|\bmppts?\b/gi],
  ['panel', new RegExp(`\\bsolar cells?\\b|(?<!\\b(?:${BOARD})[ -])\\bpanels?\\b`, 'gi')],
  [
    'battery',
    /batter(?:y|ies)\b|\bbatts?\b|accumulators?\b|capacitors?\b|\b(?:bank|pack|cell)s?\b|\bagm\b|\blifepo\w*|\bgel\b|\blead[- ]acid\b|\bli-?ion\b|\blithium\b/gi
  ],
  ['driven', /alternators?\b|dynamos?\b|generators?\b|magnetos?\b/gi]
]
const ENGINE = new RegExp(String.raw`${THINGS.at(-1)![1].source}|\bengines?\b`, 'i')

/** What tells the kind only where no thing is named beside it. */
const HINTS: Words = [
  ['charger', /\bshore\b|\bmains\b|\bplug|\bpower (?:supply|supplies|units?)\b|\bgpu\b/gi],
  ['panel', /\bsolar\b|photovoltaic|\bpv\b/gi]
]

/** What may charge a battery. */
const CHARGES = new RegExp([THINGS[0]![1], THINGS[1]![1], ...HINTS.map(([, words]) => words)].map(({ source }) => source).join('|'), 'i')

function kindOf(thing: string): Kind | undefined {
  return lastOf(THINGS, thing) ?? lastOf(HINTS, thing)
}

/** Of two that end alike, the first of the list. */
function lastOf(kinds: Words, thing: string): Kind | undefined {
  const ends = kinds.map(([kind, words]) => ({ kind, end: endOf([...thing.matchAll(words)].at(-1)) }))
  return ends.filter(({ end }) => end > 0).sort((a, b) => b.end - a.end)[0]?.kind
}

function endOf(match: RegExpExecArray | undefined): number {
  return match === undefined ? 0 : match.index + match[0].length
}
