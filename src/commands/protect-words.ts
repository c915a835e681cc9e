import { readInrush } from '../trade/circuit/read-inrush.ts'
import { readWire } from '../trade/circuit/wire-size.ts'
import type { protect as description } from './protect.ts'
import type { Words } from './words.ts'

export const readers = { wire: readWire, inrush: readInrush }
export type ProtectWords = Words<typeof description.rows, typeof readers>
