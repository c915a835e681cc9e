import type { Source } from '../../formula/source.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { nearest } from '../../quantity/near.ts'
import { quoted } from '../../quantity/quoted.ts'
import { alloyFamily } from '../circuit/terminal-ground.ts'
import { CASTING_ALLOYS, type CastingAlloy, type CastMetal } from './casting-alloys.ts'

/** The metal a thread is cut into. A strength given as a number needs none of this: `castingShearMpa` of the joint is that number. */
export interface Casting {
  readonly name: string
  readonly metal: CastMetal
  readonly tensileMpa: number
  readonly yieldMpa: number | null
  readonly shearMpa: number
  readonly tensileSource: Source
  readonly shearSource: Source
}

const STRENGTH = 'or a shear strength, as "160 MPa"'

/** An alloy as people write it: `A380`, `a 380.0`, `356-T6 sand cast`, `Zamak 3`, `gray iron class 30`. */
export function readCasting(text: string): Outcome<Casting> {
  const found = alloysBySpelling().get(bare(text).replace('gray', 'grey').replace('castiron', 'iron').replace('mold', 'mould')) ?? []
  if (found.length > 1) return severalCasts(text, found)
  return found[0] === undefined ? unknownAlloy(text) : known(found[0])
}

function known({ shearMpa, name, ...alloy }: CastingAlloy): Outcome<Casting> {
  if (shearMpa !== null) return good({ ...alloy, name: shown(name), shearMpa })
  return bad(`no shear strength of ${shown(name)} was found in print`, `another alloy, ${STRENGTH}`)
}

/** The nearest name is never one of another metal: aluminium drills as magnesium does not. */
function unknownAlloy(text: string): Outcome<never> {
  const usable = CASTING_ALLOYS.filter(({ shearMpa }) => shearMpa !== null)
  const names = namesOf(usable)
  const alike = usable.filter(({ metal }) => metal === (alloyFamily(text) ?? metal))
  const near =
    nearest(text.trim(), [...namesOf(alike), ...alike.map(({ name }) => shown(name))]) ?? namesOf(alike).find(name => shareWord(name, text))
  return bad(`unknown casting alloy ${quoted(text)}`, `one of ${names.join(', ')}, ${STRENGTH}`, near)
}

function namesOf(alloys: readonly CastingAlloy[]): readonly string[] {
  return [...new Set(alloys.map(({ name }) => short(name)))]
}

/** Irons that no row here is. */
const OTHER_IRON = /ductile|nodular|malleable|spheroidal|white/i

/** `cast iron` is a grey iron before it is anything else. */
function shareWord(name: string, text: string): boolean {
  if (OTHER_IRON.test(text)) return false
  const words = name.toLowerCase().split(' ')
  return text
    .toLowerCase()
    .split(/[^a-z]/)
    .some(word => words.includes(word))
}

/** The rows have the weakest way of casting first. */
function severalCasts(text: string, found: readonly CastingAlloy[]): Outcome<never> {
  const names = found.map(({ name }) => shown(name))
  return bad(`casting alloy ${quoted(text)} is cast in more than one way`, `one of ${names.join(', ')}, ${STRENGTH}`, names[0])
}

type Name = CastingAlloy['name']

function shown([alloy, temper, cast]: Name): string {
  return `${alloy}${temper && `-${temper}`} ${cast}`.trim()
}

function short([alloy]: Name): string {
  return alloy.replace(/\.0$/, '')
}

let bySpelling: ReadonlyMap<string, readonly CastingAlloy[]> | undefined

/** One spelling may be that of several ways of casting. */
function alloysBySpelling(): ReadonlyMap<string, readonly CastingAlloy[]> {
  if (bySpelling !== undefined) return bySpelling
  const made = new Map<string, CastingAlloy[]>()
  for (const alloy of CASTING_ALLOYS)
    for (const spelling of spellingsOf(alloy.name)) {
      const others = made.get(spelling)
      if (others === undefined) made.set(spelling, [alloy])
      else others.push(alloy)
    }
  bySpelling = made
  return made
}

/** Temper and way of casting may be left out, and so may the words `class` and `cast`. */
function spellingsOf([alloy, temper, cast]: Name): ReadonlySet<string> {
  const begins = [alloy, alloy.replace('class', ''), alloy + temper].map(bare)
  const ends = ['', cast, cast.replace(' cast', '')].map(bare)
  return new Set(begins.flatMap(begin => ends.map(end => begin + end)))
}

function bare(text: string): string {
  return text.toLowerCase().replace(/\.0(?!\d)|[^a-z0-9]/g, '')
}
