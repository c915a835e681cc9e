import { type BoundsOf, boundsOf } from '../formula/bounds.ts'
import { fact } from '../formula/formula.ts'
import { OutsideRange } from '../formula/outside-range.ts'
import { SOURCES } from '../formula/source.ts'
import type { Result, Table } from '../report/answer.ts'
import { resultOf } from '../report/result.ts'
import type { Finding } from '../rules/finding.ts'
import { asked } from '../rules/rule.ts'
import { type Settled, settledMetal } from '../rules/settled-metal.ts'
import { metalSoftens } from '../rules/warm/metal-softens.ts'
import { neverReaches } from '../rules/warm/never-reaches.ts'
import { type Film, stoppedAir } from '../trade/heat/film.ts'
import { steadyC } from '../trade/heat/heating.ts'
import { type BlockMaterial, readMaterial } from '../trade/heat/read-material.ts'
import { warm as calculation, type Warm } from '../trade/heat/warm.ts'
import { warmCautions } from '../trade/heat/warm-cautions.ts'
import { warmCurve } from '../trade/heat/warm-up.ts'
import { WARM_RESULTS } from '../work/results/warm-results.ts'
import type { Run } from './describe.ts'
import { likewise } from './likewise.ts'
import { quickSum } from './quick-sum.ts'
import { refused } from './refusal.ts'
import { sum, type Taken } from './sum.ts'
import { warm as description } from './warm.ts'
import { filmOf, type WarmWords } from './warm-film.ts'

export const run: Run = quickSum(description, { material: (text: string) => readMaterial(text) }, words => {
  const air = filmOf(words)
  if (refused(air)) return air
  const tree = treeOf(words, air.film)
  const still = whenStopped(tree)
  const stopped = still === undefined ? [] : [still]
  return sum({
    title: `${words.material.says}, ${air.says}`,
    tree: () => tree,
    calculation,
    taken: { ...air.taken, ...startTaken(words, tree) },
    results: WARM_RESULTS,
    more: () => [
      ...(still !== undefined && 'steadyC' in still ? [resultOf('steady.still', STILL, still.steadyC)] : []),
      ...specificHeat(words.material)
    ],
    tables: r => ({ 'warm-up': warmUpTable(words, tree, r) }),
    findings: r => [...reached(r), asked(metalSoftens, { metal: settledMetal(words.material, [r, ...stopped], null) })],
    cautions: r => cautionsOf(air.film, r)
  })
})

const STILL = { ...steadyC, says: 'temperature that it settles at when the air stops' }

function reached({ holdMarginK }: BoundsOf<ReturnType<typeof calculation>>): readonly Finding[] {
  return holdMarginK === null ? [] : [asked(neverReaches, { hold: { holdMarginK } })]
}

function treeOf(words: WarmWords, film: Film): Warm {
  return {
    powerW: words.power,
    massKg: words.mass,
    heatJPerKgK: words.material.heatJPerKgK,
    areaM2: words.area,
    airC: words.air,
    altitudeM: words.altitude,
    startC: words.start ?? likewise(words.air, 'start', 'as the air'),
    film,
    targetC: words.target,
    metal: words.material.metal
  }
}

function startTaken({ start }: WarmWords, { startC }: Warm): Taken {
  return start === null ? { start: { value: startC, why: 'as the air' } } : {}
}

/** Where it settles when the air that moves stops. */
function whenStopped(tree: Warm): Settled | undefined {
  const film = 'airflowMPerS' in tree.film ? stoppedAir(tree.film) : null
  if (film === null) return undefined
  try {
    // The ends are those of another tree than the one whose working is shown.
    return { steadyC: { ...boundsOf({ ...tree, film }, x => calculation(x).steadyC), lowAt: [], highAt: [] } }
  } catch (error) {
    if (error instanceof OutsideRange && error.input === 'surfaceC') return { beyondC: error.greatest }
    throw error
  }
}

/** What the name of a material was taken for. */
function specificHeat({ says, heatJPerKgK, source }: BlockMaterial): readonly Result[] {
  if (source === null) return []
  const facts = fact('heatJPerKgK', { says: `specific heat of ${says}`, symbol: 'c', source: SOURCES[source.id as keyof typeof SOURCES] })
  return [
    resultOf(
      'specific-heat',
      facts,
      boundsOf({ heatJPerKgK }, x => x.heatJPerKgK)
    )
  ]
}

const STEPS = 60

/** The course of it at the nominal, as far as it has a course worth showing. */
function warmUpTable({ target }: WarmWords, { startC }: Warm, r: BoundsOf<ReturnType<typeof calculation>>): Table {
  const [steady, timeConstantS] = [r.steadyC.value, r.timeConstantS.value]
  const lastS = Math.max(3 * timeConstantS, Math.min(1.1 * (r.timeToTargetS?.value ?? 0), 6 * timeConstantS))
  const course = warmCurve({ steadyC: steady, startC: startC.value, timeConstantS, lastS, stepCount: STEPS })
  return {
    name: 'warm-up, °C against time',
    columns: [
      { key: 'time', name: 'time', unit: 's', shown: 'time' },
      { key: 'temperature', name: 'temperature', unit: '°C', shown: 'temperature' }
    ],
    rows: course.map(({ timeS, blockC }) => ({ time: timeS, temperature: blockC })),
    plot: {
      x: 'time',
      y: 'temperature',
      levels: [{ name: 'steady', value: steady }, ...(target === null ? [] : [{ name: 'target', value: target.value }])]
    }
  }
}

function cautionsOf(film: Film, { biotRatio, buoyancyRatio }: BoundsOf<ReturnType<typeof calculation>>): readonly string[] {
  return warmCautions({
    filmBy: film.by,
    biotRatio: biotRatio?.high ?? null,
    buoyancyRatio: buoyancyRatio?.high ?? null,
    startMarginK: null
  })
}
