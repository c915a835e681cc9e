import type { Parameters, Reading } from './heat-test-model.ts'

/** The slowest falls off by a hundredth from the first reading to the last: as good as evenly. Each of the next is twice as quick. */
const SLOWEST = 0.01
const RATES = 20

interface Guess {
  readonly parameters: Parameters
  readonly squares: number
}

/** Where a search begins: of a row of rates the one whose best curve leaves least over. Null where none warms towards an end above the air. */
export function firstGuess(readings: readonly Reading[]): Parameters | null {
  const lengthS = readings.at(-1)!.timeS - readings[0]!.timeS
  let best: Guess | null = null
  for (let i = 0; i < RATES; i++) {
    const guess = guessAt((SLOWEST * 2 ** i) / lengthS, readings)
    if (guess !== null && guess.squares < (best?.squares ?? Number.POSITIVE_INFINITY)) best = guess
  }
  return best?.parameters ?? null
}

/** At a known rate the rise is a straight line over what of exp(-t/τ) is left since the first reading: its end, and how far below that it was. */
function guessAt(perS: number, readings: readonly Reading[]): Guess | null {
  const firstS = readings[0]!.timeS
  const left = readings.map(({ timeS }) => Math.exp(-perS * (timeS - firstS)))
  const [meanLeft, meanK] = [mean(left), mean(readings.map(({ riseK }) => riseK))]
  const belowK = -sum(left.map((x, i) => (x - meanLeft) * readings[i]!.riseK)) / sum(left.map(x => (x - meanLeft) ** 2))
  const endK = meanK + belowK * meanLeft
  const startK = endK - belowK * Math.exp(perS * firstS)
  if (!(endK > 0 && Number.isFinite(startK))) return null
  const squares = sum(left.map((x, i) => (readings[i]!.riseK - endK + belowK * x) ** 2))
  return { parameters: [-Math.log(endK * perS), -Math.log(endK), startK], squares }
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
