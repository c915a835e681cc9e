// example: what a job says of a warm-up, what is missing in it, and what goes before what; all figures are invented
import { describe, expect, it } from 'vitest'
import { CIRCUIT, judged, settledByHand } from './heat-job.ts'

const AIR = 'surroundings: { air: 4 °C, humidity: 78 %, altitude: 0 m, airflow: 2 m/s, hot: 40 °C }\n'
/** Without a word of its surface, nothing is radiated at the nominal. */
const PLAIN = 'mass: 0.45 kg, material: aluminium, area: 0.03 m2, size: 60 mm, machine: 0 W/K'
const BLOCK = `${PLAIN}, emissivity: aluminium-rough`
const WANTED = 'start: as the air, target: 3 K above dew, within: 6 min, limit: { greatest: 120 °C, reason: invented }'
const NONE = 'cooling: { fall: 0 K }'
const warm = (...fields: readonly string[]) => `warm: { ${fields.join(', ')} }\n`
const WHOLE = AIR + warm(BLOCK, WANTED, NONE)

describe('a whole job', () => {
  const { verdicts, errors, cautions } = judged(CIRCUIT + WHOLE)
  it('is judged in every question', () => {
    expect(errors).toEqual([])
    expect(verdicts).toEqual({
      'dew/surface-wet': 'pass',
      'warm/never-reaches': 'pass',
      'warm/too-slow': 'pass',
      'warm/too-hot': 'fail',
      'warm/metal-softens': 'caution',
      'warm/needs-thermostat': 'pass'
    })
  })
  it('says that it is no icing protection, and what a margin is', () => {
    expect(cautions).toContain('no icing protection')
    expect(cautions).toContain('estimate of the temperature of the metal')
    expect(cautions).not.toContain('left out')
  })
})

describe('what is missing is named', () => {
  it.each([
    ['warm/never-reaches', AIR + warm(BLOCK, WANTED), 'warm.cooling'],
    ['warm/too-slow', AIR + warm(BLOCK, WANTED), 'warm.cooling'],
    ['dew/surface-wet', AIR + warm(BLOCK, WANTED), 'warm.cooling'],
    ['warm/never-reaches', warm(BLOCK, WANTED, NONE), 'surroundings.air'],
    ['warm/never-reaches', AIR.replace('humidity: 78 %, ', '') + warm(BLOCK, WANTED, NONE), 'surroundings.humidity'],
    ['dew/surface-wet', AIR.replace('humidity: 78 %, ', '') + warm(BLOCK, WANTED, NONE), 'surroundings.humidity'],
    ['warm/never-reaches', AIR.replace(', airflow: 2 m/s', '') + warm(BLOCK, WANTED, NONE), 'surroundings.airflow'],
    ['warm/never-reaches', AIR + warm(BLOCK.replace(', size: 60 mm', ''), WANTED, NONE), 'warm.size'],
    ['warm/never-reaches', AIR + warm(BLOCK.replace(', area: 0.03 m2', ''), WANTED, NONE), 'warm.area'],
    ['warm/too-slow', AIR + warm(BLOCK.replace('mass: 0.45 kg, ', ''), WANTED, NONE), 'warm.mass'],
    ['warm/too-slow', AIR + warm(BLOCK.replace(', material: aluminium', ''), WANTED, NONE), 'warm.material'],
    ['warm/never-reaches', AIR + warm(BLOCK, NONE), 'warm.target'],
    ['warm/too-slow', AIR + warm(BLOCK, WANTED.replace(', within: 6 min', ''), NONE), 'warm.within'],
    ['warm/too-hot', AIR + warm(BLOCK, WANTED.replace(/, limit.*/, ''), NONE), 'warm.limit'],
    ['warm/too-hot', AIR.replace(', hot: 40 °C', '') + warm(BLOCK, WANTED, NONE), 'surroundings.hot'],
    ['warm/needs-thermostat', WHOLE, 'circuit'],
    ['dew/surface-wet', 'surroundings: { air: 4 °C, humidity: 78 % }\n', 'surroundings.metal'],
    ['dew/surface-wet', 'surroundings: { air: 4 °C, metal: 2 °C }\n', 'surroundings.humidity']
  ])('%s %#', (rule, text, field) => {
    const { finding, errors } = judged(text)
    expect(errors).toEqual([])
    expect(finding(rule)).toMatchObject({ verdict: 'not-judged', change: `give ${field}` })
  })

  it('and the hot day is judged all the same', () => {
    expect(judged(CIRCUIT + AIR + warm(BLOCK, WANTED)).finding('warm/too-hot')?.verdict).toBe('fail')
  })
})

describe('the power', () => {
  it('comes from the circuit, low and high bus', () => {
    const power = judged(CIRCUIT + WHOLE).result('warm:warm.power')
    expect(power?.value).toBeCloseTo(18, 9)
    expect(power?.low).toBeCloseTo(18 * (11 / 12) ** 2, 9)
    expect(power?.high).toBeCloseTo(18 * (15 / 12) ** 2, 9)
  })
  it('without a circuit is the rated one, and that is assumed', () => {
    const { finding, result } = judged(WHOLE)
    expect(result('warm:warm.power')?.value).toBe(18)
    expect(finding('warm/never-reaches')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('no circuit feeds it') })
  })
  it('is judged at low bus in the cold and at high bus in the heat', () => {
    const { result } = judged(CIRCUIT + AIR + warm(BLOCK.replace('size: 60 mm', 'film: 20 W/m2K, still-film: 10 W/m2K'), WANTED, NONE))
    // The casting radiates 0.06 to 0.07 of a black body.
    const cold = settledByHand({ watts: 18 * (11 / 12) ** 2, filmWPerK: 0.6, airC: 4, emissivity: 0.07 })
    const hot = settledByHand({ watts: 18 * (15 / 12) ** 2, filmWPerK: 0.3, airC: 40, emissivity: 0.06 })
    expect(result('warm:warm.steady')?.low).toBeCloseTo(cold, 6)
    expect(result('warm:warm.steady.hot')?.high).toBeCloseTo(hot, 6)
  })
  it('fixed or not: the window between cold moving and hot still air', () => {
    const narrow = WANTED.replace('120 °C', '60 °C').replace('3 K above dew', '25 °C')
    const { result, finding } = judged(
      CIRCUIT + AIR + warm(PLAIN.replace('size: 60 mm', 'film: 20 W/m2K, still-film: 10 W/m2K'), narrow, NONE)
    )
    // 0.6·21 W at 11 V and 0.3·20 W at 15 V, turned to 12 V.
    expect(result('warm:warm.power.least')?.value).toBeCloseTo(12.6 * (12 / 11) ** 2, 9)
    expect(result('warm:warm.power.greatest')?.value).toBeCloseTo(6 * (12 / 15) ** 2, 9)
    expect(finding('warm/needs-thermostat')).toMatchObject({ verdict: 'fail', says: expect.stringContaining('no fixed power meets both') })
  })
})

describe('what nobody told of the surface', () => {
  const films = PLAIN.replace('size: 60 mm', 'film: 20 W/m2K, still-film: 10 W/m2K')
  const { result, finding, inputs, cautions } = judged(CIRCUIT + AIR + warm(films, WANTED, NONE))
  it('radiates nothing at the nominal, at its worst end as the blackest of the table: cold there, hot where it radiates nothing', () => {
    // 0.97 is black lacquer.
    const cold = settledByHand({ watts: 18 * (11 / 12) ** 2, filmWPerK: 0.6, airC: 4, emissivity: 0.97 })
    expect(result('warm:warm.steady')?.value).toBeCloseTo(4 + 18 / 0.6, 6)
    expect(result('warm:warm.steady')?.low).toBeCloseTo(cold, 6)
    expect(result('warm:warm.steady.hot')?.high).toBeCloseTo(40 + (18 * (15 / 12) ** 2) / 0.3, 6)
    expect(finding('warm/too-hot')?.value).toBeCloseTo(40 + (18 * (15 / 12) ** 2) / 0.3, 6)
  })
  it('is assumed and said, and no note is needed beside that', () => {
    expect(inputs['warm.emissivity']).toEqual({ value: 0, low: 0, high: 0.97, unit: '', assumed: 'default: the surface is not told' })
    expect(finding('dew/surface-wet')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('the surface is not told') })
    expect(cautions).not.toContain('left out')
  })
  it('and of the machine is nothing that flows, and no pass; told, it is one', () => {
    const without = judged(CIRCUIT + AIR + warm(BLOCK.replace(', machine: 0 W/K', ''), WANTED, NONE))
    expect(without.inputs['warm.machine']).toMatchObject({
      value: 0,
      unit: 'W/K',
      assumed: 'default: nothing flows into the rest of the machine'
    })
    expect(without.finding('warm/never-reaches')).toMatchObject({ verdict: 'caution', says: expect.stringContaining('warm.machine') })
    expect(judged(CIRCUIT + WHOLE).verdicts['warm/never-reaches']).toBe('pass')
    expect(judged(CIRCUIT + WHOLE).inputs['warm.machine']?.assumed).toBeNull()
  })
  it('takes no pass from where it gets hottest, where either only cools; there it fails, it says that to give them may help', () => {
    const iron = films.replace('aluminium', 'cast iron').replace(', machine: 0 W/K', '')
    const at = (greatest: string, hot = AIR) => judged(CIRCUIT + hot + warm(iron, WANTED.replace('120 °C', greatest), NONE))
    // 40 °C and 28.125 W over 0.3 W/K are 133.75 °C; half of where cast iron melts lies above that.
    expect(at('134 °C').verdicts).toMatchObject({ 'warm/too-hot': 'pass', 'warm/metal-softens': 'pass', 'warm/never-reaches': 'caution' })
    expect(at('134 °C').finding('warm/needs-thermostat')?.says).not.toContain('reckoned without')
    expect(at('133 °C').finding('warm/too-hot')).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('reckoned without warm.emissivity and warm.machine: to give that may help')
    })
    // Without a hot day the metal is looked at in the cold alone.
    expect(at('134 °C', AIR.replace(', hot: 40 °C', '')).verdicts).toMatchObject({ 'warm/metal-softens': 'pass' })
    const told = judged(CIRCUIT + AIR + warm(`${iron}, machine: 0 W/K, emissivity: cast-iron`, WANTED.replace('120 °C', '80 °C'), NONE))
    expect(told.finding('warm/too-hot')?.says).not.toContain('reckoned without')
  })
  it('is not asked where a heat test gives the loss of every air that is reckoned with', () => {
    // 18 W into 405 J/K that lose 0.6 W/K: 30 K·(1 - exp(-t/675 s)) above 4 °C.
    const readings = [0, 2, 4, 6, 8, 10, 15].map(
      min => `{ at: ${min} min, metal: ${(34 - 30 * Math.exp((-60 * min) / 675)).toFixed(2)} °C }`
    )
    const test = (was: string) =>
      `heat-test: { power: 18 W, air: 4 °C, air-was: ${was}, accuracy: 0.05 K, readings: [${readings.join(', ')}] }`
    const cold = AIR.replace(', hot: 40 °C', '')
    const told = films.replace(', machine: 0 W/K', '')
    const moving = judged(CIRCUIT + cold + warm(told, WANTED, NONE, test('moving')))
    expect(moving.errors).toEqual([])
    expect(moving.inputs['warm.machine']).toBeUndefined()
    expect(moving.inputs['warm.emissivity']).toBeUndefined()
    expect(moving.finding('warm/never-reaches')?.says).not.toContain('assumed')
    for (const other of [cold + warm(told, WANTED, NONE, test('still')), AIR + warm(told, WANTED, NONE, test('moving'))])
      expect(judged(CIRCUIT + other).inputs).toMatchObject({ 'warm.machine': { value: 0 }, 'warm.emissivity': { high: 0.97 } })
  })
})

it('a heat test that contradicts itself passes nothing, and names the reading', () => {
  // 18 W into 405 J/K that lose 0.6 W/K: 30 K·(1 - exp(-t/675 s)) above 4 °C; at 15 min 26.1 °C, and 5 K less.
  const text = (lastK: number) => {
    const metal = (min: number) => 34 - 30 * Math.exp((-60 * min) / 675) + (min === 15 ? lastK : 0)
    const readings = [0, 2, 4, 6, 8, 10, 12, 15].map(min => `{ at: ${min} min, metal: ${metal(min).toFixed(2)} °C }`).join(', ')
    const test = `heat-test: { power: 18 W, air: 4 °C, air-was: moving, accuracy: 0.05 K, readings: [${readings}] }`
    return CIRCUIT + AIR + warm(BLOCK, WANTED, NONE, test)
  }
  expect(judged(text(0)).verdicts['warm/never-reaches']).toBe('pass')
  expect(judged(text(-5)).finding('warm/never-reaches')).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('21.1 °C at 15 min lies furthest off the curve through the others, by 5.0 K'),
    change: 'look at the reading that is named, and measure again'
  })
})

describe('cooling', () => {
  it('by a fall lowers where it settles by as much', () => {
    const at = (fall: string) =>
      judged(AIR + warm(PLAIN.replace('size', 'film: 20 W/m2K, size'), WANTED, `cooling: { fall: ${fall} }`)).result('warm:warm.steady')
    expect(Number(at('0 K')?.value) - Number(at('22 K')?.value)).toBeCloseTo(22, 9)
  })
  it('by fuel and throat does so too, and leaves the dew point where it is', () => {
    const cooled = judged(AIR + warm(BLOCK, WANTED, 'cooling: { fuel-air: 0.08, throat: 100 m/s }'))
    expect(4 - Number(cooled.result('warm:warm.air')?.value)).toBeCloseTo(24.5 + 4.98, 0)
    expect(cooled.result('warm:warm.target')?.value).toBe(judged(WHOLE).result('warm:warm.target')?.value)
  })
  it('does not help on the hot day, when the air stands', () => {
    const hot = (cooling: string) => judged(CIRCUIT + AIR + warm(BLOCK, WANTED, cooling)).result('warm:warm.steady.hot')?.value
    expect(hot('cooling: { fall: 20 K }')).toBe(hot(NONE))
  })
})

it('air that stands on the cold day, too, has the film of still air', () => {
  const still = judged(AIR.replace('airflow: 2 m/s', 'airflow: 0 m/s') + warm(BLOCK, WANTED, NONE))
  expect(still.errors).toEqual([])
  expect(Number(still.result('warm:warm.film')?.value)).toBeLessThan(Number(judged(WHOLE).result('warm:warm.film')?.value))
})

describe('start', () => {
  it('left out is the metal of the surroundings, else the air, which is assumed', () => {
    const free = WANTED.replace('start: as the air, ', '').replace('3 K above dew', '9 °C')
    const asAir = judged(CIRCUIT + AIR + warm(BLOCK, free, NONE)).finding('warm/too-slow')
    expect(asAir).toMatchObject({ verdict: 'caution', says: expect.stringContaining('warm.start (as the air)') })
    expect(judged(CIRCUIT + AIR.replace('hot:', 'metal: 4 °C, hot:') + warm(BLOCK, free, NONE)).finding('warm/too-slow')?.verdict).toBe(
      'pass'
    )
  })
})

describe('a thermostat', () => {
  const WIRED = CIRCUIT.replace('to: hot, bond: 0 ohm', 'to: hot, through: [{ thermostat: T2, resistance: 0 ohm }]')
  const at60 = AIR + warm(BLOCK, WANTED, NONE, 'thermostat: { off: 60 °C ± 5 K, on: 45 °C ± 5 K }')
  it('keeps it from getting too hot', () => {
    expect(judged(WIRED + at60).verdicts).toMatchObject({
      'warm/too-hot': 'pass',
      'warm/needs-thermostat': 'pass',
      'warm/never-reaches': 'pass',
      'warm/thermostat-not-wired': 'pass'
    })
  })
  it('counts for nothing where it is in no wire of the heater', () => {
    const { verdicts, finding } = judged(CIRCUIT + at60)
    expect(verdicts).toMatchObject({ 'warm/too-hot': 'fail', 'warm/thermostat-not-wired': 'fail' })
    expect(finding('warm/thermostat-not-wired')?.says).toContain('on the way to left:')
    const beside = WIRED.replace('runs: [', 'runs: [{ from: bus, to: hot, bond: 0.1 ohm }, ')
    expect(judged(beside + at60).finding('warm/thermostat-not-wired')).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('bus-hot leads round the thermostat of left')
    })
  })
  it('beside another takes the power off with it, both open', () => {
    const both = WIRED.replace('runs: [', 'runs: [{ from: bus, to: hot, through: [{ thermostat: T3, resistance: 0 ohm }] }, ')
    expect(judged(both + at60).verdicts).toMatchObject({ 'warm/too-hot': 'pass', 'warm/thermostat-not-wired': 'pass' })
  })
  describe('in the only feed of two heaters that switches put in series or in parallel', () => {
    // S4 links left and right; S2 feeds right and S3 takes left home beside that. All closed at once they lead round both heaters.
    const run = (from: string, to: string, item: string) => `{ from: ${from}, to: ${to}, through: [{ ${item}, resistance: 0 ohm }] }`
    const [on, off] = ['', ', state: open']
    const drawn = (link: string, sides: string, feeds = 'hot') => `
circuit:
  source: { bus: 12 V, low: 11 V, high: 15 V, resistance: 0 ohm, ground: frame }
  runs: [${run('bus', 'hot', 'thermostat: T2')}, ${run('m', 'n', `switch: S4${link}`)}, ${run(feeds, 'n', `switch: S2${sides}`)}, ${run('m', 'frame', `switch: S3${sides}`)}]
  loads: [{ heater: left, from: hot, to: m }, { heater: right, from: n, to: frame }]
`
    const both = (circuit: string) =>
      judged(circuit + at60, head => head.replace(/ {2}left: (.*)\n/, '  left: $1\n  right: $1\n')).finding('warm/thermostat-not-wired')
    it.each([
      ['series', drawn(on, off)],
      ['parallel', drawn(off, on)]
    ])('takes the power off both, drawn in %s', (_, circuit) => {
      expect(both(circuit)?.verdict).toBe('pass')
    })
    it('does not where one of them is fed before it in parallel', () => {
      for (const circuit of [drawn(on, off, 'bus'), drawn(off, on, 'bus')])
        expect(both(circuit)).toMatchObject({ verdict: 'fail', says: expect.stringMatching(/^no thermostat .* on the way to right:/) })
    })
    it('nor where a switch leads round it, which is named', () => {
      const bypass = (circuit: string) => circuit.replace('runs: [', `runs: [${run('bus', 'hot', 'switch: S8, state: open')}, `)
      for (const circuit of [drawn(on, off), drawn(off, on)])
        expect(both(bypass(circuit))).toMatchObject({
          verdict: 'fail',
          says: expect.stringMatching(/^bus-hot leads round the thermostat of left, right:/)
        })
    })
    it('is not judged of one that is bridged for good', () => {
      const bridged = `
circuit:
  source: { bus: 12 V, low: 11 V, high: 15 V, resistance: 0 ohm, ground: frame }
  runs: [${run('bus', 'hot', 'thermostat: T2')}, { from: hot, to: m, bond: 1 mohm }, { from: n, to: frame, bond: 0 ohm }]
  loads: [{ heater: left, from: hot, to: m }, { heater: right, from: m, to: n }]
`
      expect(both(bridged)).toMatchObject({ verdict: 'not-judged', says: expect.stringContaining('feeds left') })
    })
  })
  it('with a lamp across it, and across a switch before it, takes the power off all the same', () => {
    const lamp = CIRCUIT.replace(
      'runs: [{ from: bus, to: hot, bond: 0 ohm }',
      'runs: [{ from: bus, to: s, through: [{ switch: S1, resistance: 0 ohm }] }, { from: s, to: hot, through: [{ thermostat: T2, resistance: 0 ohm }] }'
    ).replace('loads: [', 'loads: [{ load: lamp, kind: lamp, power: 0.2 W, voltage: 12 V, from: bus, to: hot }, ')
    expect(judged(lamp + at60).verdicts['warm/thermostat-not-wired']).toBe('pass')
    expect(judged(lamp.replace('{ switch: S1,', '{ switch: S1, state: open,') + at60).verdicts['warm/thermostat-not-wired']).toBe('pass')
  })
  describe('holds the metal colder than it would settle', () => {
    // 8 °C and 90 %: 0.9 of 10.73 hPa is 9.66 hPa, whose logarithm over 6.112 hPa is 0.458: 243.12·0.458/(17.62 - 0.458) = 6.5 °C.
    const damp = AIR.replace('air: 4 °C, humidity: 78 %', 'air: 8 °C, humidity: 90 %')
    const wanted = WANTED.replace('3 K above dew', '1 °C')
    const at = (told: string, circuit = WIRED, more = '') =>
      judged(circuit + damp + warm(BLOCK, wanted, NONE, `thermostat: { ${told} }`) + more)
    it('so that it is wet, though it would settle far above the dew point', () => {
      const wet = at('off: 5 °C ± 2 K')
      // Off from 3 °C up: 3.5 K below 6.5 °C.
      expect(wet.finding('dew/surface-wet')).toMatchObject({ verdict: 'fail', value: expect.closeTo(-3.5, 1) })
      expect(wet.finding('dew/surface-wet')?.says).toContain('with its power taken off at 3.0 °C, is 3.5 K below the dew point')
      // What it would settle at with the power on all the while stays the result, and is far above 3 °C.
      expect(wet.result('warm:warm.steady')?.low).toBeGreaterThan(30)
      expect(at('off: 0 °C').verdicts).toMatchObject({ 'dew/surface-wet': 'fail', 'warm/never-reaches': 'fail' })
    })
    it('and cools until it closes again', () => {
      // 10 °C less 3 K is above 6.5 °C, 8 °C less 3 K below.
      expect(at('off: 20 °C, on: 10 °C ± 3 K').verdicts).toMatchObject({ 'dew/surface-wet': 'pass', 'warm/never-reaches': 'pass' })
      expect(at('off: 20 °C, on: 8 °C ± 3 K').finding('dew/surface-wet')).toMatchObject({ verdict: 'fail', value: expect.closeTo(-1.5, 1) })
      // 2 °C less 3 K is 2 K below the target of 1 °C.
      expect(at('off: 20 °C, on: 2 °C ± 3 K').finding('warm/never-reaches')).toMatchObject({ verdict: 'fail', value: -2 })
    })
    it('by how much nobody knows where nobody told: a caution that names the field', () => {
      for (const rule of ['dew/surface-wet', 'warm/never-reaches'])
        expect(at('off: 20 °C').finding(rule)).toMatchObject({ verdict: 'caution', change: 'give warm.thermostat.on' })
    })
    it('no pass where what it would settle at hangs on what nobody told', () => {
      const told = WANTED.replace('3 K above dew', '10 °C')
      const closing = warm(BLOCK, told, NONE, 'thermostat: { off: 20 °C, on: 15 °C ± 3 K }')
      const untold = closing.replace(', machine: 0 W/K', '')
      expect(judged(WIRED + damp + closing).verdicts).toMatchObject({ 'dew/surface-wet': 'pass', 'warm/never-reaches': 'pass' })
      // 18 W · (11/12)² into 8 W/K and more is below 8 °C + 1.9 K: it never comes to 10 °C, let alone to 20 °C.
      expect(judged(WIRED + damp + closing.replace('machine: 0', 'machine: 8')).verdicts['warm/never-reaches']).toBe('fail')
      for (const rule of ['dew/surface-wet', 'warm/never-reaches']) {
        const says = judged(WIRED + damp + untold).finding(rule)?.says
        expect(says).toMatch(/closes again.*hangs on what was assumed: warm\.machine/)
        expect(judged(WIRED + damp + untold).verdicts[rule]).toBe('caution')
        expect(judged(damp + closing).finding(rule)).toMatchObject({
          verdict: 'caution',
          says: expect.stringContaining('parts.cartridge.rated.power (its rated power, as no circuit feeds it)')
        })
      }
    })
    it('not where it never opens, nor where it is in no wire of the heater', () => {
      for (const dry of [at('off: 110 °C'), at('off: 5 °C ± 2 K', CIRCUIT)])
        expect(dry.verdicts).toMatchObject({ 'dew/surface-wet': 'pass', 'warm/never-reaches': 'pass' })
    })
    it('also where a switch leads round it in one position and not in another', () => {
      const beside = WIRED.replace('runs: [', 'runs: [{ from: bus, to: hot, through: [{ switch: S8, state: open, resistance: 0 ohm }] }, ')
      expect(at('off: 5 °C ± 2 K', beside).verdicts).toMatchObject({ 'dew/surface-wet': 'fail', 'warm/thermostat-not-wired': 'fail' })
    })
    it('at what metal nobody knows of one that stands in the circuit alone', () => {
      const { finding } = judged(WIRED + damp + warm(BLOCK, wanted, NONE))
      for (const rule of ['dew/surface-wet', 'warm/never-reaches', 'warm/too-slow'])
        expect(finding(rule)).toMatchObject({ verdict: 'caution', change: 'give warm.thermostat' })
    })
  })
  it('beside a plug is none', () => {
    const plug = CIRCUIT.replace('to: hot, bond: 0 ohm', 'to: hot, through: [{ what: plug at thermostat housing, resistance: 0 ohm }]')
    expect(judged(plug + at60).verdicts).toMatchObject({ 'warm/too-hot': 'fail', 'warm/thermostat-not-wired': 'fail' })
  })
  it('works a relay: its contacts count as named, not as any switch, and the thermostat stands in the wire of the coil', () => {
    const contacts = (item: string) =>
      CIRCUIT.replace(
        'to: hot, bond: 0 ohm }',
        `to: hot, through: [{ ${item}, rating: 20 A, resistance: 0 ohm }] }, { from: bus, to: coil+, through: [{ thermostat: T2, resistance: 0 ohm }] }`
      ).replace('loads: [', 'loads: [{ load: coil, kind: inductive, resistance: 85 ohm, from: coil+, to: frame }, ')
    const drawn = judged(contacts('what: thermostat contacts of relay K1') + at60)
    expect(drawn.errors).toEqual([])
    expect(drawn.verdicts).toMatchObject({ 'warm/too-hot': 'pass', 'warm/thermostat-not-wired': 'pass' })
    const unnamed = judged(contacts('switch: K1') + at60)
    expect(unnamed.verdicts).toMatchObject({ 'warm/too-hot': 'fail', 'warm/thermostat-not-wired': 'fail' })
    // The advice, as it is written there, is what passes.
    const advised = /"through: \[\{ (what: [^,]*),/.exec(unnamed.finding('warm/thermostat-not-wired')!.change)![1]!
    expect(judged(contacts(advised) + at60).verdicts['warm/thermostat-not-wired']).toBe('pass')
  })
  it('may work a relay, or stand in the return', () => {
    const relay = CIRCUIT.replace('to: hot, bond: 0 ohm', 'to: hot, through: [{ what: relay K1 of thermostat T2, resistance: 0 ohm }]')
    const back = CIRCUIT.replace('to: frame, bond: 0 ohm', 'to: frame, through: [{ thermostat: T2, resistance: 0 ohm }]')
    for (const circuit of [relay, back]) expect(judged(circuit + at60).verdicts['warm/thermostat-not-wired']).toBe('pass')
  })
  it('without a circuit is taken at its word, and that is not judged', () => {
    expect(judged(at60).verdicts).toMatchObject({ 'warm/too-hot': 'pass', 'warm/thermostat-not-wired': 'not-judged' })
  })
  it('cools nothing: in air above the limit the metal is as hot as the air', () => {
    const hot = at60.replace('hot: 40 °C', 'hot: 118 °C ± 5 K')
    expect(judged(WIRED + hot).finding('warm/too-hot')).toMatchObject({ verdict: 'fail', value: 123 })
  })
  it('that may open below the target keeps it from that, too', () => {
    const at6 = AIR + warm(BLOCK, WANTED, NONE, 'thermostat: { off: 6 °C ± 3 K }')
    for (const circuit of [WIRED, ''])
      expect(judged(circuit + at6).verdicts).toMatchObject({ 'warm/never-reaches': 'fail', 'warm/too-slow': 'fail' })
    // In no wire of the heater it takes no power off: then the metal gets as warm as without it.
    expect(judged(CIRCUIT + at6).verdicts).toMatchObject({ 'warm/never-reaches': 'pass', 'warm/too-slow': 'pass' })
  })
})

it('a heater that is on for a part of the time is no sure way to warm anything', () => {
  const { finding } = judged(CIRCUIT.replace('heater: left,', 'heater: left, on: 40 %,') + WHOLE)
  for (const rule of ['warm/never-reaches', 'warm/too-slow']) expect(finding(rule)?.verdict).toBe('caution')
  expect(finding('warm/never-reaches')?.says).toContain('as if left stays on all the while')
})

describe('what lies beyond the range of one formula', () => {
  it('in the coldest air already is too hot, and the other rooms are judged', () => {
    const { verdicts, errors } = judged((CIRCUIT + WHOLE).replace('0.03 m2', '0.0005 m2').replace('airflow: 2 m/s', 'airflow: 0.1 m/s'))
    expect(errors).toEqual([])
    expect(verdicts).toMatchObject({ 'warm/too-hot': 'fail', 'warm/metal-softens': 'fail', 'warm/never-reaches': 'not-judged' })
  })
  it('is no dew point where the air is colder than its formula: the warm-up is judged', () => {
    const { verdicts, errors, finding } = judged(
      CIRCUIT + AIR.replace('air: 4 °C', 'air: -45 °C') + warm(BLOCK, WANTED.replace('3 K above dew', '-40 °C'), NONE)
    )
    expect(errors).toEqual([])
    expect(verdicts).toMatchObject({ 'dew/surface-wet': 'not-judged', 'warm/never-reaches': 'pass' })
    expect(finding('dew/surface-wet')?.says).toContain('colder or drier')
  })
  it('leaves a target above dew unjudged there, and where nobody gave the humidity, in every question', () => {
    const asked = ['warm/never-reaches', 'warm/too-slow', 'warm/needs-thermostat', 'dew/surface-wet']
    for (const air of [AIR.replace('air: 4 °C', 'air: -45 °C'), AIR.replace('humidity: 78 %, ', '')]) {
      const { verdicts, errors } = judged(CIRCUIT + air + warm(BLOCK, WANTED, NONE))
      expect(errors).toEqual([])
      expect(asked.map(rule => verdicts[rule])).toEqual(asked.map(() => 'not-judged'))
    }
  })
  it('is no window where the limit is hotter than any film', () => {
    const { verdicts, errors } = judged(CIRCUIT + WHOLE.replace('greatest: 120 °C', 'greatest: 500 °C'))
    expect(errors).toEqual([])
    expect(verdicts).toMatchObject({ 'warm/needs-thermostat': 'not-judged', 'warm/too-hot': 'pass' })
  })
})

it('hotter than films are worked out for is too hot, and the rest is judged', () => {
  const { verdicts, finding } = judged((CIRCUIT + WHOLE).replace('0.03 m2', '0.004 m2'))
  expect(verdicts['warm/too-hot']).toBe('fail')
  expect(finding('warm/too-hot')?.says).toContain('up to which a film is worked out')
})

describe('a heated part of its own', () => {
  const BODY = 'body: { mass: 41 g, material: brass, contact: 400 mm2, joint: aluminium-grease }'
  it('is hotter than the casting by power over conductance: 18·0.07e-4/400e-6 K', () => {
    const { result, cautions } = judged(AIR + warm(BLOCK, WANTED, NONE, BODY))
    expect(Number(result('warm:warm.body')?.value) - Number(result('warm:warm.steady')?.value)).toBeCloseTo(0.315, 9)
    expect(cautions).toContain('flat faces')
  })
  it('has its time told by steps as well', () => {
    const { result } = judged(AIR + warm(BLOCK, WANTED.replace('3 K above dew', '9 °C'), NONE, BODY))
    const [closed, stepped] = ['time-to-target', 'time-to-target.stepped'].map(id => Number(result(`warm:warm.${id}`)?.value))
    expect(stepped! / closed!).toBeCloseTo(1, 1)
    expect(judged(WHOLE).result('warm:warm.time-to-target.stepped')).toBeUndefined()
  })
  it('is what gets too hot', () => {
    const bare = BODY.replace('aluminium-grease', 'aluminium-bare')
    const [plain, two] = [NONE, `${NONE}, ${bare}`].map(
      more => judged(CIRCUIT + AIR + warm(BLOCK, WANTED, more)).finding('warm/too-hot')!.value!
    )
    expect(two! - plain!).toBeCloseTo((28.125 * 2.75e-4) / 400e-6, 6)
  })
  describe('on a casting whose thermostat', () => {
    // 28.125 W over 0.3 W/K: the casting settles at 40 + 93.75 °C. The part stands 28.125·2.75e-4/400e-6 = 19.34 K above it.
    const films = PLAIN.replace('size: 60 mm', 'film: 20 W/m2K, still-film: 10 W/m2K')
    const at = (greatest: number, off: string, more = '') =>
      judged(
        CIRCUIT.replace('to: hot, bond: 0 ohm', 'to: hot, through: [{ thermostat: T2, resistance: 0 ohm }]').replace(
          ', high: 15 V',
          more || ', high: 15 V'
        ) +
          AIR +
          warm(
            films,
            WANTED.replace('120 °C', `${greatest} °C`),
            NONE,
            BODY.replace('aluminium-grease', 'aluminium-bare'),
            `thermostat: { off: ${off} }`
          )
      )
    it('opens, is as much above that: 65 + 19.34 °C', () => {
      expect(at(84, '60 °C ± 5 K').finding('warm/too-hot')).toMatchObject({ verdict: 'fail', value: expect.closeTo(84.34, 2) })
      expect(at(84, '60 °C ± 5 K').finding('warm/needs-thermostat')?.says).toContain('the thermostat does not keep the limit')
      expect(at(85, '60 °C ± 5 K').verdicts).toMatchObject({ 'warm/too-hot': 'pass', 'warm/needs-thermostat': 'pass' })
    })
    it('never opens, is as hot as without it: 133.75 + 19.34 °C', () => {
      expect(at(150, '140 °C').finding('warm/too-hot')).toMatchObject({ verdict: 'fail', value: expect.closeTo(153.09, 2) })
    })
    it('opens, takes more from a higher bus: no pass where nobody told how high', () => {
      expect(at(120, '60 °C ± 5 K', ' ').finding('warm/too-hot')).toMatchObject({
        verdict: 'caution',
        says: expect.stringContaining('source.high')
      })
    })
    it('opens, is as far above as the power that its resistance at that temperature takes', () => {
      // 8 ohm at 90 °C of its own, 0.4 % more a kelvin from 20 °C: 15²/(8·(1 + 0.004·(T - 20))/1.28) W over 400/275 W/K above 65 °C.
      let partC = 65
      for (let round = 0; round < 50; round++) partC = 65 + ((225 * 1.28) / (8 * (1 + 0.004 * (partC - 20)))) * 0.6875
      const { finding, errors } = judged(
        CIRCUIT.replace('to: hot, bond: 0 ohm', 'to: hot, through: [{ thermostat: T2, resistance: 0 ohm }]') +
          AIR +
          warm(films, WANTED, NONE, BODY.replace('aluminium-grease', 'aluminium-bare'), 'thermostat: { off: 60 °C ± 5 K }'),
        head => head.replace('voltage: 12 V }', 'voltage: 12 V, resistance-change: { per-kelvin: 0.4 %/K, hot: 90 °C } }')
      )
      expect(errors).toEqual([])
      expect(finding('warm/too-hot')?.value).toBeCloseTo(partC, 6)
    })
  })
})

describe('a heat test', () => {
  /** Rises of a block of 420 J/K and 0.5 W/K under 18 W, in closed form. */
  const readings = Array.from(
    { length: 13 },
    (_, i) => `{ at: ${i} min, metal: ${(12 + 36 * (1 - Math.exp((-i * 60 * 0.5) / 420))).toFixed(3)} °C }`
  )
  const test = (air: string) =>
    `heat-test: { power: 18 W, air: 12 °C, air-was: ${air}, accuracy: 0.05 K, readings: [${readings.join(', ')}] }`

  it('gives capacity and loss, with bounds that hold them', () => {
    const { result, errors } = judged(AIR + warm(WANTED, NONE, test('moving')))
    expect(errors).toEqual([])
    for (const [id, known] of [
      ['warm:heat-test.capacity', 420],
      ['warm:heat-test.loss', 0.5]
    ] as const) {
      const found = result(id)
      expect(Math.abs(Number(found?.value) / known - 1)).toBeLessThan(0.001)
      expect(found?.low).toBeLessThan(known)
      expect(found?.high).toBeGreaterThan(known)
    }
  })
  it('in moving air goes before mass, film and correlation', () => {
    const { result } = judged(AIR + warm(BLOCK, WANTED, NONE, test('moving')))
    expect(Number(result('warm:warm.steady')?.value)).toBeCloseTo(4 + 36, 1)
    expect(Number(result('warm:warm.time-constant')?.value)).toBeCloseTo(840, 0)
    expect(result('warm:warm.film')).toBeUndefined()
  })
  it('in moving air says nothing of air that stands', () => {
    const { finding } = judged(CIRCUIT + AIR + warm(WANTED, NONE, test('moving')))
    expect(finding('warm/too-hot')).toMatchObject({ verdict: 'not-judged', change: 'give warm.area' })
  })
  it('in still air gives its capacity alone to the cold day, and its loss to the hot one', () => {
    const { result, finding } = judged(CIRCUIT + AIR + warm(WANTED, NONE, test('still')))
    expect(finding('warm/never-reaches')).toMatchObject({ verdict: 'not-judged', change: 'give warm.area' })
    expect(Number(result('warm:warm.steady.hot')?.value)).toBeCloseTo(40 + 36, 1)
    const film = judged(CIRCUIT + AIR + warm(WANTED, NONE, test('still'), 'area: 0.03 m2, film: 20 W/m2K'))
    expect(Number(film.result('warm:warm.time-constant')?.value)).toBeCloseTo(420 / 0.6, 0)
  })
  describe('and the loss worked out for the other air', () => {
    // 0.03 m2 at 20 W/m2K are 0.6 W/K, at 10 W/m2K 0.3 W/K; 0.07 of a black body at some 30 °C adds 0.03·0.07·6 = 0.013 W/K at most.
    const at = (air: string, film: number, wanted = WANTED) =>
      judged(
        CIRCUIT +
          AIR +
          warm(
            PLAIN.replace('size: 60 mm', `film: ${film} W/m2K, still-film: ${film} W/m2K`),
            'emissivity: aluminium-rough',
            wanted,
            NONE,
            test(air)
          )
      )
    it('moving air takes no less than the 0.5 W/K of still air: 0.3 W/K cannot be', () => {
      const { result, finding } = at('still', 10)
      expect(Number(result('warm:warm.steady')?.value)).toBeCloseTo(4 + 18 / 0.5, 1)
      expect(finding('warm/never-reaches')).toMatchObject({
        verdict: 'caution',
        says: expect.stringMatching(/in moving air it loses the 0\.500 W\/K .* of air that stood, though .* at most 0\.31\d W\/K/),
        change: 'look at area, surface and film again, or run a heat test in moving air'
      })
      // 11 V make 15.1 W: 4 + 15.1/0.5 = 34.3 °C, and 4 + 15.1/0.31 = 52.8 °C.
      expect(at('still', 10, WANTED.replace('3 K above dew', '36 °C')).verdicts['warm/never-reaches']).toBe('fail')
    })
    it('still air takes no more than the 0.5 W/K of moving air: 0.6 W/K cannot be', () => {
      const { result, finding, verdicts } = at('moving', 20)
      // 15 V make 28.1 W: 40 + 28.1/0.5 = 96.3 °C, and 40 + 28.1/0.6 = 86.9 °C.
      expect(Number(result('warm:warm.steady.hot')?.high)).toBeGreaterThan(96.2)
      expect(verdicts['warm/never-reaches']).toBe('pass')
      expect(finding('warm/too-hot')).toMatchObject({
        verdict: 'caution',
        says: expect.stringMatching(/in still air it loses the 0\.500 W\/K .* of air that moved, though .* at least 0\.6\d\d W\/K/),
        change: 'look at area, surface and film again, or run a heat test in still air'
      })
      const over = at('moving', 20, WANTED.replace('120 °C', '90 °C')).finding('warm/too-hot')
      expect(over).toMatchObject({ verdict: 'fail', change: expect.stringMatching(/^look at area.*; then fit a thermostat/) })
    })
    it('that can be is what is reckoned with: more in moving air, less in still', () => {
      for (const [air, film, rule] of [
        ['still', 20, 'warm/never-reaches'],
        ['moving', 10, 'warm/too-hot']
      ] as const)
        expect(at(air, film, WANTED.replace('120 °C', '150 °C')).finding(rule)).toMatchObject({
          verdict: 'pass',
          says: expect.not.stringContaining('air-was')
        })
    })
    it('is not asked for what takes no part: surface and machine untold where the test gives the loss', () => {
      const untold = judged(
        CIRCUIT + AIR + warm('area: 0.03 m2, film: 20 W/m2K, still-film: 20 W/m2K', WANTED.replace('120 °C', '90 °C'), NONE, test('moving'))
      )
      expect(untold.finding('warm/too-hot')?.says).toContain('air-was')
      expect(untold.finding('warm/too-hot')?.says).not.toContain('reckoned without')
    })
  })
  it('that tells nothing has no answer, in words', () => {
    const even = test('moving').replace(/metal: [\d.]+/g, 'metal: 12')
    const { finding, verdicts } = judged(AIR + warm(WANTED, NONE, even))
    expect(finding('warm/no-answer')?.says).toContain('does not get warmer')
    expect(verdicts['dew/surface-wet']).toBe('not-judged')
  })
})

describe('several heaters', () => {
  const two = (text: string) =>
    judged(text.replace('circuit:', '  right: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }\ncircuit:'))
  it('warm together where none is named', () => {
    expect(two(CIRCUIT + WHOLE).result('warm:warm.power')?.value).toBe(36)
  })
  it('warm alone where one is named', () => {
    expect(two(CIRCUIT + AIR + warm(BLOCK, WANTED, NONE, 'heaters: [right]')).result('warm:warm.power')?.value).toBe(18)
  })
})

it('what is worked out beyond the range of a formula leaves the other rooms judged; what was given there is a fault of the file', () => {
  const wired = (wire: string) =>
    CIRCUIT.replace('{ from: bus, to: hot, bond: 0 ohm }', `{ from: bus, to: hot, wire: { size: 1 mm2, ${wire} } }`)
  expect(judged(wired('length: 1 m, temperature: 1200 °C') + WHOLE).errors[0]?.where.path).toBe('circuit.runs.0.wire.temperature')
  // Two batteries whose difference of voltages drives 40 A and more through 1 mm2: it would melt.
  const two = wired('length: 1 m, ambient: 40 °C, insulation: 105 °C').replace(
    '  runs:',
    '  other-sources: [{ what: second battery, voltage: 12.8 V, resistance: 1 mohm, from: frame, to: hot }]\n  runs:'
  )
  const { errors, verdicts, finding } = judged(two + WHOLE)
  expect(errors).toEqual([])
  expect(finding('circuit/no-answer')).toMatchObject({ verdict: 'fail', says: expect.stringContaining('conductor is') })
  // At its rated power, which is an assumption.
  expect(verdicts).toMatchObject({ 'warm/never-reaches': 'caution', 'dew/surface-wet': 'caution' })
})

describe('a hot day is reckoned with every other load off', () => {
  const FILMS = PLAIN.replace('size: 60 mm', 'film: 20 W/m2K, still-film: 8 W/m2K')
  const limit = (greatest: string) => WANTED.replace('120 °C', greatest)
  /** Half an ohm for both, no thermostat, 12 V. */
  const shared = (winch: string) => `
circuit:
  source: { bus: 12 V, low: 12 V, high: 12 V, resistance: 500 mohm, ground: frame }
  runs: [{ from: bus, to: hot, bond: 0 ohm }, { from: cold, to: frame, bond: 0 ohm }]
  loads:
    - { heater: left, from: hot, to: cold }
${winch}`
  const winch = '    - { load: winch, current: 4 A, kind: motor, on: 5 %, from: hot, to: cold }\n'
  // 18 W at 12 V are 8 ohm: with the winch (12 - 2)/8.5 A, without it 12/8.5 A; 8 W/m2K over 0.03 m2 above 40 °C.
  const alone = (12 / 8.5) ** 2 * 8
  const warmed = judged(shared(winch) + AIR + warm(FILMS, limit('100 °C'), NONE))
  it('as without those loads', () => {
    expect(warmed.errors).toEqual([])
    expect(Number(warmed.result('warm:warm.steady.hot')?.value)).toBeCloseTo(40 + alone / 0.24, 4)
    expect(warmed.finding('warm/too-hot')).toMatchObject({ verdict: 'fail', limit: 100 })
    expect(judged(shared('') + AIR + warm(FILMS, limit('100 °C'), NONE)).finding('warm/too-hot')?.verdict).toBe('fail')
  })
  it('the cold with them on', () => {
    expect(Number(warmed.result('warm:warm.steady')?.value)).toBeCloseTo(4 + ((10 / 8.5) ** 2 * 8) / 0.6, 6)
  })
  it('and the window with the voltage of both', () => {
    // 0.24 W/K over 60 K at the 12·8/8.5 V of the heater alone, turned to 12 V.
    expect(Number(warmed.result('warm:warm.power.greatest')?.value)).toBeCloseTo(0.24 * 60 * (8.5 / 8) ** 2, 4)
  })
  it('heaters that warm together are on together', () => {
    const hole = '  right: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }'
    const second = winch.replace('load: winch, current: 4 A, kind: motor, on: 5 %', 'heater: right')
    const both = judged(hole + shared(second) + AIR + warm(FILMS, WANTED, NONE))
    // Two of 8 ohm are 4.
    expect(both.errors).toEqual([])
    expect(Number(both.result('warm:warm.power.hot')?.value)).toBeCloseTo((12 / 4.5) ** 2 * 4, 6)
  })
})

describe('a bus of which nobody told the ends', () => {
  const FILMS = BLOCK.replace('size: 60 mm', 'film: 20 W/m2K, still-film: 10 W/m2K')
  const WIDE = WANTED.replace('120 °C', '140 °C').replace('6 min', '30 min')
  const bus = (told: string) => CIRCUIT.replace('bus: 12 V, low: 11 V, high: 15 V', told)
  const on = (told: string) => judged(bus(told) + AIR + warm(FILMS.replace('aluminium', 'cast iron'), WIDE, NONE))
  const RESTING = {
    'dew/surface-wet': 'caution',
    'warm/never-reaches': 'caution',
    'warm/too-slow': 'caution',
    'warm/too-hot': 'caution',
    'warm/metal-softens': 'caution',
    'warm/needs-thermostat': 'caution'
  }
  const all = (verdict: string) => Object.fromEntries(Object.keys(RESTING).map(rule => [rule, verdict]))
  it('leaves no pass on them', () => {
    expect(on('bus: 12 V').verdicts).toEqual(RESTING)
    expect(on('bus: 12 V').finding('warm/too-hot')?.says).toContain('source.high is not given')
  })
  it('told by its bounds, as of a supply that is regulated, or by its ends, passes', () => {
    expect(on('bus: 12 V ± 0.1 V').verdicts).toEqual(all('pass'))
    expect(on('bus: 12 V +0.1 V -0 V').verdicts).toEqual(all('pass'))
    expect(on('bus: 12 V, low: 11.5 V, high: 13 V').verdicts).toEqual(all('pass'))
  })
  it('told at one end passes what rests on that alone', () => {
    expect(on('bus: 12 V, high: 13 V').verdicts).toEqual({ ...RESTING, 'warm/too-hot': 'pass', 'warm/metal-softens': 'pass' })
    const low = { 'dew/surface-wet': 'pass', 'warm/never-reaches': 'pass', 'warm/too-slow': 'pass' }
    expect(on('bus: 12 V, low: 11 V').verdicts).toEqual({ ...RESTING, ...low })
  })
  it('is nothing to a heater that no circuit feeds', () => {
    expect(judged(AIR + warm(FILMS, WIDE, NONE)).finding('warm/too-hot')?.says).not.toContain('source.high')
  })
})
