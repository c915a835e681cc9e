/** What a row of mutated texts came to. */
export interface Fuzzed {
  readonly count: number
  readonly seed: number
  /** How many of each outcome. */
  readonly outcomes: { readonly [outcome: string]: number }
  /** Texts that broke something, with the number they are made from. */
  readonly flaws: readonly { readonly seed: number; readonly text: string; readonly says: string }[]
  readonly slowest: { readonly seed: number; readonly ms: number }
}

export interface Fuzz {
  readonly count: number
  readonly seed: number
  readonly made: (seed: number) => string
  readonly tried: (text: string) => { readonly outcome: string; readonly flaw: string | null }
  readonly alive: (done: number) => void
}

const MOST_FLAWS = 20
/** Longer than anything by hand takes on a slow machine. */
const HANG_MS = 20_000

/** Tries one text after the other; each has a number of its own, so that any of them can be made again. */
export function fuzzed({ count, seed, made, tried, alive }: Fuzz): Fuzzed {
  const outcomes: Record<string, number> = {}
  const flaws: { seed: number; text: string; says: string }[] = []
  let slowest = { seed, ms: 0 }
  for (let i = 0; i < count && flaws.length < MOST_FLAWS; i++) {
    const own = seed + i
    const text = made(own)
    const before = performance.now()
    const { outcome, flaw } = careful(tried, text)
    const ms = performance.now() - before
    if (ms > slowest.ms) slowest = { seed: own, ms }
    outcomes[outcome] = (outcomes[outcome] ?? 0) + 1
    const says = flaw ?? (ms > HANG_MS ? `took ${Math.round(ms)} ms` : null)
    if (says !== null) flaws.push({ seed: own, text, says })
    alive(i + 1)
  }
  return { count, seed, outcomes, flaws, slowest }
}

function careful(tried: Fuzz['tried'], text: string): ReturnType<Fuzz['tried']> {
  try {
    return tried(text)
  } catch (error) {
    return { outcome: 'thrown', flaw: String(error instanceof Error ? error.stack : error) }
  }
}

/** A number that is none, or words that only a slip of the program prints. What somebody wrote stands in quotes. */
export function flawIn(node: unknown): string | null {
  if (typeof node === 'number') return Number.isFinite(node) ? null : `the number ${node}`
  if (typeof node === 'string') return /\b(NaN|Infinity|undefined)\b|\[object |\bat \S+:\d+:\d+/.exec(node.replace(QUOTED, ''))?.[0] ?? null
  if (typeof node !== 'object' || node === null) return null
  for (const child of Object.values(node)) {
    const flaw = flawIn(child)
    if (flaw !== null) return flaw
  }
  return null
}

const QUOTED = /"(?:[^"\\]|\\.)*"/g
