import { SOURCES } from '../../formula/source.ts'

/** Exact by definition: pound in kg, standard gravity, inch in m. */
const LBF_IN_NM = 0.45359237 * 9.80665 * 0.0254

export interface NutTorque {
  readonly leastNm: number
  readonly greatestNm: number
  /** Greatest that the table allows. */
  readonly limitNm: number
}

export interface DryNutTorque {
  readonly thread: string
  readonly tensionNut: NutTorque
  readonly shearNut: NutTorque
}

export const DRY_NUT_SOURCE = SOURCES['ac-43.13-7-1']

/** Oil-free cadmium-plated steel nuts and bolts. Not for a part in a soft casting: the thread there gives earlier. Printed in pound-inches. */
export const DRY_NUT_TORQUES: readonly DryNutTorque[] = (
  [
    ['8-36', 12, 15, 20, 7, 9, 12],
    ['10-32', 20, 25, 40, 12, 15, 25],
    ['5/16-24', 100, 140, 225, 60, 85, 140],
    ['3/8-24', 160, 190, 390, 95, 110, 240],
    ['1/2-20', 480, 690, 1100, 290, 410, 660],
    ['9/16-18', 800, 1000, 1600, 480, 600, 960],
    ['3/4-16', 2300, 2500, 5000, 1300, 1500, 3000],
    ['8-32', 12, 15, 20, 7, 9, 12],
    ['1/4-20', 40, 50, 75, 25, 30, 45],
    ['5/16-18', 80, 90, 160, 48, 55, 100],
    ['7/16-14', 235, 255, 475, 140, 155, 280],
    ['1/2-13', 400, 480, 880, 240, 290, 520],
    ['5/8-11', 700, 900, 1500, 420, 540, 900],
    ['3/4-10', 1150, 1600, 2500, 700, 950, 1500]
  ] satisfies [string, number, number, number, number, number, number][]
).map(([thread, least, greatest, limit, shearLeast, shearGreatest, shearLimit]) => ({
  thread,
  tensionNut: nutTorque(least, greatest, limit),
  shearNut: nutTorque(shearLeast, shearGreatest, shearLimit)
}))

function nutTorque(least: number, greatest: number, limit: number): NutTorque {
  return { leastNm: least * LBF_IN_NM, greatestNm: greatest * LBF_IN_NM, limitNm: limit * LBF_IN_NM }
}
