/** What nobody told of the body of a part. */
export interface BodyUnknown {
  readonly solid: boolean
  readonly noNeck: boolean
}

/** Why a good margin of the body of the part is still no pass. */
export function bodyDoubts({ solid, noNeck }: BodyUnknown): readonly string[] {
  return [
    ...(solid ? ['the bore of the part is not given (0 mm where there is none): this is reckoned with a solid body'] : []),
    ...(noNeck ? ['the neck of the part is not given (the diameter of the thread where there is none): this is reckoned without one'] : [])
  ]
}
