import { check } from './check.ts'
import { compare } from './compare.ts'
import { completion } from './completion.ts'
import type { Description } from './describe.ts'
import { dew } from './dew.ts'
import { drill } from './drill.ts'
import { drop } from './drop.ts'
import { each } from './each.ts'
import { explain } from './explain.ts'
import { heater } from './heater.ts'
import { hole } from './hole.ts'
import { joint } from './joint.ts'
import { mass } from './mass.ts'
import { measure } from './measure.ts'
import { fresh } from './new.ts'
import { plan } from './plan.ts'
import { protect } from './protect.ts'
import { prove } from './prove.ts'
import { schema } from './schema.ts'
import { seat } from './seat.ts'
import { sheet } from './sheet.ts'
import { solve } from './solve.ts'
import { sources } from './sources.ts'
import { supply } from './supply.ts'
import { sweep } from './sweep.ts'
import { thread } from './thread.ts'
import { torque } from './torque.ts'
import { warm } from './warm.ts'
import { wire } from './wire.ts'

/** Every command, in the order help shows them. */
export const COMMANDS: readonly Description[] = [
  thread,
  drill,
  torque,
  hole,
  seat,
  joint,
  heater,
  drop,
  dew,
  warm,
  mass,
  wire,
  protect,
  supply,
  each,
  fresh,
  check,
  measure,
  plan,
  sheet,
  prove,
  compare,
  sweep,
  solve,
  explain,
  sources,
  schema,
  completion
]
