import { check } from './check.ts'
import type { Description } from './describe.ts'
import { drill } from './drill.ts'
import { drop } from './drop.ts'
import { explain } from './explain.ts'
import { heater } from './heater.ts'
import { hole } from './hole.ts'
import { fresh } from './new.ts'
import { plan } from './plan.ts'
import { schema } from './schema.ts'
import { seat } from './seat.ts'
import { thread } from './thread.ts'
import { torque } from './torque.ts'

/** Every command, in the order help shows them. */
export const COMMANDS: readonly Description[] = [thread, drill, torque, hole, seat, heater, drop, fresh, check, plan, explain, schema]
