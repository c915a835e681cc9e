import { SOURCES, type Source } from '../../formula/source.ts'

/** What a class promises up to a thread size. */
export interface ClassStrength {
  readonly toMajorMm: number
  readonly tensileMpa: number
  readonly yieldMpa: number
  readonly proofMpa: number
}

export interface PartClass {
  readonly name: string
  readonly sizes: readonly ClassStrength[]
  readonly source: Source
}

/** To M39, as far as ISO 898-1 and ISO 3506-1 go. */
const ALL_SIZES = 39

function sizeless(name: string, tensileMpa: number, yieldMpa: number, proofMpa: number, source: Source): PartClass {
  return { name, sizes: [{ toMajorMm: ALL_SIZES, tensileMpa, yieldMpa, proofMpa }], source }
}

const ISO_898 = SOURCES['iso-898-1']
/** Stainless classes name no proof load: the stress at 0.2 % strain is their yield and their proof stress. */
const ISO_3506 = SOURCES['iso-3506-1']

/** Least tensile strength, least yield, proof stress. */
export const PART_CLASSES: readonly PartClass[] = [
  sizeless('4.6', 400, 240, 225, ISO_898),
  sizeless('4.8', 420, 340, 310, ISO_898),
  sizeless('5.6', 500, 300, 280, ISO_898),
  sizeless('5.8', 520, 420, 380, ISO_898),
  sizeless('6.8', 600, 480, 440, ISO_898),
  {
    name: '8.8',
    sizes: [
      { toMajorMm: 16, tensileMpa: 800, yieldMpa: 640, proofMpa: 580 },
      { toMajorMm: ALL_SIZES, tensileMpa: 830, yieldMpa: 660, proofMpa: 600 }
    ],
    source: ISO_898
  },
  {
    name: '9.8',
    // No larger (memory).
    sizes: [{ toMajorMm: 16, tensileMpa: 900, yieldMpa: 720, proofMpa: 650 }],
    source: ISO_898
  },
  sizeless('10.9', 1040, 940, 830, ISO_898),
  sizeless('12.9', 1220, 1100, 970, ISO_898),
  sizeless('A2-70', 700, 450, 450, ISO_3506),
  sizeless('A4-70', 700, 450, 450, ISO_3506),
  sizeless('A2-80', 800, 600, 600, ISO_3506),
  sizeless('A4-80', 800, 600, 600, ISO_3506)
]
