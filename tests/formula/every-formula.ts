import type { Facts } from '../../src/formula/formula.ts'

/** A formula as a test calls it, whatever its inputs. */
export type AnyFormula = Facts & ((x: { readonly [name: string]: number }) => number)

const files = import.meta.glob<Record<string, unknown>>('../../src/{trade,fitting}/**/*.ts', { eager: true })

/** Every formula that a file of a trade room exports, by room, file and name. */
export const FORMULAS: readonly { readonly room: string; readonly file: string; readonly name: string; readonly formula: AnyFormula }[] =
  Object.entries(files).flatMap(([file, exported]) =>
    Object.entries(exported).flatMap(([name, value]) =>
      typeof value === 'function' && 'equation' in value
        ? [{ room: file.split('/').at(-2)!, file, name, formula: value as unknown as AnyFormula }]
        : []
    )
  )

/** A point well inside every range, moved along a little by `share`. */
export function pointInside({ inputs }: Facts, share: number): Record<string, number> {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, [, least, greatest]], i) => {
      const at = (((share + i * 0.13) % 0.9) + 0.05) % 1
      return [name, least > 0 && greatest / least > 100 ? least * (greatest / least) ** at : least + (greatest - least) * at]
    })
  )
}
