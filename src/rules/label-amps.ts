import { PROTECTION_STYLES } from '../trade/circuit/protection-styles.ts'

const FIGURE = String.raw`(?:\d+(?:[.,]\d+)?|(?<![a-z])\.\d+)`
/** `20ADC`, `20 AAC`; how fast a fuse is, `20AT`, `20AFF` (IEC 60127-1, memory). Behind a blank `AT` ends what it tells: `PUMP 2 AT DASH` is none. */
const OF_AMPS = String.raw`dc|ac|ff?|tt|(?<=\da)t|t(?=\W*$|\s*[,;:()])`
/** `5 A`, `7.5A`, `20-A`, `20 a`, `10 amps`, `5/10 ampere`; neither ampere-hours nor milliamperes. */
const AMPS = new RegExp(
  String.raw`(?<!\d|\d[.,])(${FIGURE}(?:\s*/\s*${FIGURE})*)[\s-]*a(?:mp(?:s|[eè]r(?:es?|ios?)?)?)?(?:${OF_AMPS})?(?![a-z\d]|\.[a-z]|[\s·*.-]*h(?:rs?|ours?)?\b)`,
  'gi'
)
/** Of what else a size or a maximum may be told. */
const OTHERS = 'wire|cable|lead|conductor|terminal|lug|crimp|stud|screw|bolt|thread|drill|wrench|spanner'
/** `FUSE 10`, `breaker: 16`, `FUSE SIZE 10`, `HEATER, MAX. 10`, each without a unit; `10 x 38` is the size of a cartridge. */
const BARE = new RegExp(
  String.raw`\b(?:fuse|breaker|(?<!\b(?:${OTHERS})s?\s)(size|rating|rated|max(?:imum)?))[\s:=.-]*?(${FIGURE})(?![\d/%]|[.,]\d|\s*(?:[x×*]\s*\.?\d|of\b|°|Ω|[µmk]?(?:v|w|a|m|ohms?|ah|hz)(?:dc|ac)?\b|mm|cm|awg|ga\b|c\b|f\b|k\b|in\b|s\b|min|n\s?m\b|rpm\b|bar\b|psi\b|kg\b|h\b))`,
  'gi'
)
const RATINGS_A = new Set(PROTECTION_STYLES.flatMap(({ ratingsA }) => ratingsA))
/** A small figure behind the word is oftener which of the fuses it is (common practice). */
const MOST_NUMBERED = 4

/** The amperes that a label tells; one that names none may still tell a rating by its bare figure. */
export function ampsIn(label: string, mark: string): readonly number[] {
  const told = [...label.matchAll(AMPS)].flatMap(([, figures]) => figures!.split('/').map(numberOf))
  return told.length > 0 ? told : bareIn(label, mark)
}

/** What the mark itself is numbered by is no rating. */
function bareIn(label: string, mark: string): readonly number[] {
  const own = Number(/\d+$/.exec(mark)?.[0])
  return [...label.matchAll(BARE)]
    .map(([, size, figure]) => ({ amps: numberOf(figure!), sized: size !== undefined }))
    .filter(({ amps, sized }) => RATINGS_A.has(amps) && (sized || (amps > MOST_NUMBERED && amps !== own)))
    .map(({ amps }) => amps)
}

function numberOf(figure: string): number {
  return Number(figure.replace(',', '.'))
}
