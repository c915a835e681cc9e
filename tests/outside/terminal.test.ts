// table: outside source. Rows of rows/terminal.ts, each with its source and label.

import { expect, it } from 'vitest'
import { BOND_BANS, BOND_LIMITS, contactRiseK, DROP_LIMITS, PLUG_CONTACT } from '../../src/trade/circuit/terminal-bond.ts'
import { CRIMP_BANS, CRIMP_PULLS, CRIMP_SHARE_PERCENT } from '../../src/trade/circuit/terminal-crimp.ts'
import { GROUND_METALS } from '../../src/trade/circuit/terminal-ground.ts'
import { checkRows } from './electrical-rows.ts'
import { TERMINAL_ROWS } from './rows/terminal.ts'

const bondOhm = (id: string) => () => BOND_LIMITS.find(row => row.id === id)!.greatestOhm
const dropV = (id: string) => () => DROP_LIMITS.find(row => row.id === id)!.greatestV
const pullN = (awg: number) => CRIMP_PULLS.find(row => row.awg === awg)!.leastN

checkRows(
  'terminal',
  TERMINAL_ROWS,
  [
    { rows: ['terminal-001'], gives: bondOhm('bonding-jumper') },
    { rows: ['terminal-002'], gives: bondOhm('equipment-frame') },
    { rows: ['terminal-003'], gives: () => (GROUND_METALS.magnesium.ground === 'never' ? 'forbidden' : 'allowed') },
    { rows: ['terminal-004'], gives: () => (BOND_BANS.some(({ id }) => id === 'self-tapping-screw') ? 'forbidden' : 'allowed') },
    { rows: ['terminal-005'], gives: bondOhm('facility') },
    { rows: ['terminal-010'], gives: bondOhm('class-r') },
    { rows: ['terminal-011'], gives: dropV('connection') },
    { rows: ['terminal-012'], gives: dropV('ground-side') },
    { rows: ['terminal-014'], gives: () => 1000 * PLUG_CONTACT.contactOhm },
    { rows: ['terminal-015'], gives: () => contactRiseK({ knownRiseK: PLUG_CONTACT.riseK, currentA: 30, knownA: PLUG_CONTACT.atA }) },
    { rows: ['terminal-017'], gives: () => CRIMP_SHARE_PERCENT },
    { rows: ['terminal-018'], gives: () => pullN(24) },
    // Kept in whole newtons.
    { rows: ['terminal-020'], gives: () => pullN(18) / (0.45359237 * 9.80665), within: 0.12 },
    { rows: ['terminal-022'], gives: () => (CRIMP_BANS.length === 2 ? 'forbidden' : 'allowed') }
  ],
  { 'terminal-023': 'a method of test without a limit' }
)

// FAA AC 43.13-1B par. 11-66c (read-secondary, row drop-010): 0.005 ohm or less from source ground to device ground counts as satisfactory.
it('a return through the structure', () => expect(bondOhm('structure-return')()).toBe(0.005))
