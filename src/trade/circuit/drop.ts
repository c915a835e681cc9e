import type { Given, Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import type { Conductor } from './conductor.ts'
import { operatingPoint } from './constant-power.ts'
import * as copper from './copper.ts'
import * as feed from './feed.ts'
import * as load from './load.ts'
import { threeDigits } from './three-digits.ts'
import * as wire from './wire-resistance.ts'

export type WayBack = { readonly by: 'wire'; readonly returnM: Given } | { readonly by: 'structure' }

/** What the far end takes. A current alone says nothing of the bus. */
export type FedLoad =
  | { readonly takes: 'current'; readonly currentA: Given; readonly busV: Given | undefined }
  | { readonly takes: 'constant-resistance'; readonly powerW: Given; readonly ratedV: Given; readonly busV: Given }
  | { readonly takes: 'constant-power'; readonly powerW: Given; readonly busV: Given }

export interface Drop {
  readonly conductor: Conductor
  /** One way. */
  readonly lengthM: Given
  readonly back: WayBack
  readonly conductorC: Given
  /** All joints both ways, and the structure where it carries the current back. */
  readonly jointsOhm: Given
  readonly load: FedLoad
}

/** The drop there and back, and what is left at the load. */
export function drop({ conductor, lengthM, back, conductorC, jointsOhm, load }: Plain<Drop>) {
  const conductorOhmPerM = wire.conductorOhmPerM(conductor)
  const hotOhmPerM = copper.hotOhmPerM({ conductorOhmPerM, conductorC })
  const returnM = back.by === 'wire' ? back.returnM : 0
  const loopOhm = feed.loopOhm({ hotOhmPerM, lengthM, returnM, jointsOhm })
  const currentA = fedA(load, loopOhm)
  const dropV = feed.dropV({ currentA, loopOhm })
  return { loopOhm, currentA, dropV, ...atLoad({ busV: load.busV, currentA, dropV }) }
}

function fedA(fed: Plain<FedLoad>, loopOhm: number): number {
  switch (fed.takes) {
    case 'current':
      return fed.currentA
    case 'constant-resistance': {
      const { busV, ratedV, powerW } = fed
      const resistanceOhm = load.resistanceOhm({ ratedV, powerW })
      return feed.fedA({ busV, resistanceOhm, loopOhm })
    }
    case 'constant-power':
      return operatingPoint({ busV: fed.busV, loopOhm, powerW: fed.powerW }).constantPowerA
  }
}

interface AtLoad {
  readonly busV: number | undefined
  readonly currentA: number
  readonly dropV: number
}

interface LeftAtLoad {
  readonly dropPercent: number | undefined
  readonly loadV: number | undefined
  readonly loadW: number | undefined
}

function atLoad({ busV, currentA, dropV }: AtLoad): LeftAtLoad {
  if (busV === undefined) return { dropPercent: undefined, loadV: undefined, loadW: undefined }
  if (dropV > busV) throw tooMuch({ busV, currentA, dropV })
  const loadV = feed.loadV({ busV, dropV })
  return { dropPercent: feed.dropPercent({ dropV, busV }), loadV, loadW: feed.loadW({ loadV, currentA }) }
}

function tooMuch({ busV, currentA, dropV }: { readonly busV: number; readonly currentA: number; readonly dropV: number }): NoAnswer {
  const most = threeDigits((currentA * busV) / dropV, 'down')
  return new NoAnswer(
    `${threeDigits(currentA)} A would lose ${threeDigits(dropV)} V on the way, more than the ${threeDigits(busV)} V of the bus`,
    `take thicker or shorter wire, or less current: ${most} A is what would flow into a dead short at the far end`
  )
}
