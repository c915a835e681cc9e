/** Two bodies of one temperature each: the heated part gives to the casting alone, the casting to what lies outside. All constant. */
export interface Coupled {
  readonly powerW: number
  readonly bodyJPerK: number
  readonly castingJPerK: number
  readonly jointWPerK: number
  readonly outWPerK: number
  readonly outC: number
  readonly startC: number
}

/** Where both settle, and how fast. */
export interface Settled {
  readonly bodyC: number
  readonly castingC: number
  readonly fastS: number
  readonly slowS: number
}

/** The exact solution: a linear pair goes to its steady state by two exponentials. */
export function coupledAt(pair: Coupled, settled: Settled, timeS: number) {
  const { fastS, slowS } = settled
  const body = exponentials(pair.startC - settled.bodyC, pair.powerW / pair.bodyJPerK, settled)
  const casting = exponentials(pair.startC - settled.castingC, startRate(pair), settled)
  const [slow, fast] = [Math.exp(-timeS / slowS), Math.exp(-timeS / fastS)]
  return {
    bodyC: settled.bodyC + body.slowK * slow + body.fastK * fast,
    castingC: settled.castingC + casting.slowK * slow + casting.fastK * fast
  }
}

/** Heat put in, heat stored in both bodies and heat lost by the casting, from the start to a time: the first is the sum of the others. */
export function heatAccount(pair: Coupled, settled: Settled, timeS: number) {
  const { bodyC, castingC } = coupledAt(pair, settled, timeS)
  const { slowK, fastK } = exponentials(pair.startC - settled.castingC, startRate(pair), settled)
  const spent = (lengthS: number) => -lengthS * Math.expm1(-timeS / lengthS)
  const gapKTimesS = (settled.castingC - pair.outC) * timeS + slowK * spent(settled.slowS) + fastK * spent(settled.fastS)
  return {
    putInJ: pair.powerW * timeS,
    storedJ: pair.bodyJPerK * (bodyC - pair.startC) + pair.castingJPerK * (castingC - pair.startC),
    lostJ: pair.outWPerK * gapKTimesS
  }
}

/** How fast the casting begins, in kelvin a second: both bodies start at one temperature, so the joint carries nothing yet. */
function startRate({ outWPerK, startC, outC, castingJPerK }: Coupled): number {
  return (-outWPerK * (startC - outC)) / castingJPerK
}

/** The shares of the slow and the fast exponential, from a gap to the steady temperature and the rate at the start. */
function exponentials(gapK: number, rate: number, { fastS, slowS }: Settled) {
  const slowK = (rate + gapK / fastS) / (1 / fastS - 1 / slowS)
  return { slowK, fastK: gapK - slowK }
}
