/** Gragg-Bulirsch-Stoer extrapolation with step and order control, after Hairer and Wanner: the part of the library that is used. */
export declare class Solver {
  constructor(n: number)
  absoluteTolerance: number
  relativeTolerance: number
  solve(
    derivative: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number
  ): { readonly y: readonly number[] /** 0: it came to the end. */; readonly outcome: 0 | 1 | 2 }
}
