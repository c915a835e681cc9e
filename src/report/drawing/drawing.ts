/** A place on the paper: units from the left and from the top. */
export type Spot = readonly [x: number, y: number]

/** How a line or a face looks; what it is to look like is the printer's. */
export type Look =
  | 'metal'
  | 'void'
  | 'part'
  | 'stack'
  | 'outline'
  | 'thin'
  | 'dashed'
  | 'axis'
  | 'measure'
  | 'arrow'
  | 'wire'
  | 'load'
  | 'plate'
  | 'band'
  | 'grid'

export type Shape =
  | { readonly shape: 'path'; readonly look: Look; readonly spots: readonly Spot[]; readonly closed: boolean }
  | { readonly shape: 'dot'; readonly look: Look; readonly at: Spot; readonly radius: number }
  | {
      readonly shape: 'text'
      readonly at: Spot
      readonly text: string
      readonly anchor: 'start' | 'middle' | 'end'
      readonly bold: boolean
    }

/** Lines and words on a paper of so many units; on paper 4 units are a millimetre. */
export interface Drawing {
  readonly id: string
  readonly title: string
  /** All of it in words, for whoever does not see it. */
  readonly says: string
  /** As `4 : 1`; null where it is not to scale. */
  readonly scale: string | null
  readonly across: number
  readonly down: number
  readonly shapes: readonly Shape[]
}

/** Width of every drawing: a small telephone shows it unit for pixel, and on A4 it is 85 mm, two side by side. */
export const ACROSS = 340
export const UNITS_PER_PRINTED_MM = 4
