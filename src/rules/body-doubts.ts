import type { Judged } from './rule.ts'

/** What nobody told of the body of a part. */
export interface BodyUnknown {
  readonly solid: boolean
  readonly noNeck: boolean
  /** Where in a job it would be told. */
  readonly bodyAt?: Judged['at']
}

/** A caution for want of them names the fields, so that they are measured. */
export function bodyAssumes<J extends Judged>(judged: J, { solid, noNeck, bodyAt }: BodyUnknown): J {
  if (judged.verdict !== 'caution' || bodyAt === undefined) return judged
  const fields = [...(solid ? ['bore'] : []), ...(noNeck ? ['neck'] : [])].map(field => [...bodyAt, field])
  return fields.length === 0 ? judged : { ...judged, assumes: [...(judged.assumes ?? []), ...fields] }
}

/** Why a good margin of the body of the part is still no pass. */
export function bodyDoubts({ solid, noNeck }: BodyUnknown): readonly string[] {
  return [
    ...(solid ? ['the bore of the part is not given (0 mm where there is none): this is reckoned with a solid body'] : []),
    ...(noNeck ? ['the neck of the part is not given (the diameter of the thread where there is none): this is reckoned without one'] : [])
  ]
}
