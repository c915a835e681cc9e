import type { Source } from '../../formula/source.ts'

/** One condition of the wire and what it does to the printed current. */
export interface Derating {
  readonly factor: number
  /** `already in`: the printed current allows for it. `none`: there is nothing to take off. */
  readonly status: 'applied' | 'already in' | 'none'
  readonly says: string
  readonly source: Source
}

export function applied(factor: number, says: string, source: Source): Derating {
  return { factor, status: 'applied', says, source }
}

export function alreadyIn(says: string, source: Source): Derating {
  return { factor: 1, status: 'already in', says, source }
}

export function nothingOff(says: string, source: Source): Derating {
  return { factor: 1, status: 'none', says, source }
}
