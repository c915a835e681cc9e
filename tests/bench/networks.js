// Networks: a walk of faults beside single solutions; our solver beside ngspice, one process a circuit. Prints ratios. Never a test.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { bundled } from './bundled.js'

const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
const outfile = join(folder, 'circuit.mjs')
await bundled(
  `
      export { walkFaults } from './src/trade/circuit/fault-walk.ts'
      export { solveNetwork } from './src/trade/circuit/solve-network.ts'
      export { nodesOf } from './src/trade/circuit/network.ts'
      export { drawnNetworks } from './tests/trade/circuit/drawn-network.ts'`,
  process.cwd(),
  outfile
)
const { walkFaults, solveNetwork, nodesOf, drawnNetworks } = await import(pathToFileURL(outfile))

const median = numbers => numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)]
const millis = work => {
  const before = process.hrtime.bigint()
  work()
  return Number(process.hrtime.bigint() - before) / 1e6
}
const timed = (work, runs) => {
  for (let i = 0; i < 20; i++) work()
  return median(Array.from({ length: runs }, () => millis(work)))
}

/** A feed of 25 runs with a load at each joint, and a return of 25 runs: 50 runs, 25 loads, one fuse. */
const ohm = (id, from, to, resistanceOhm) => ({ kind: 'resistor', id, from, to, resistanceOhm })
const runs = 25
const elements = [
  { kind: 'source', id: 'battery', from: 'frame', to: 'f0', sourceV: 27, insideOhm: 0.01 },
  ...Array.from({ length: runs }, (_, i) => [
    ohm(`feed ${i}`, `f${i}`, `f${i + 1}`, 0.01 + i / 1000),
    ohm(`back ${i}`, i === 0 ? 'frame' : `r${i}`, `r${i + 1}`, 0.008),
    ohm(`load ${i}`, `f${i + 1}`, `r${i + 1}`, 20 + i)
  ]).flat()
]
const network = { ground: 'frame', elements }
const given = {
  network,
  loads: elements.filter(({ id }) => id.startsWith('load')).map(({ id }) => id),
  protectors: [{ id: 'feed 0', style: 'blade', ratingA: 40 }],
  capacities: elements.filter(({ id }) => /feed|back/.test(id)).map(({ id }) => ({ id, ampacityA: 30 })),
  threads: [],
  points: nodesOf(network),
  cranking: null
}
const faults = walkFaults(given).length
const one = timed(() => solveNetwork(network), 101)
const walk = timed(() => walkFaults(given), 31)
console.log(
  `walk of ${faults} faults over 50 runs: ${(walk / (faults * one)).toFixed(2)} × faults × one solution (${walk.toFixed(1)} ms against ${one.toFixed(2)} ms)`
)

/** One netlist for a network: a source of 0 V is a joint without resistance. */
function netlist({ elements }, names) {
  return elements.flatMap((element, i) => {
    const [from, to] = [names.get(element.from), names.get(element.to)]
    if (element.kind === 'draw') return [`I${i} ${from} ${to} ${element.drawA}`]
    if (element.kind === 'resistor') return [`R${i} ${from} ${to} ${element.resistanceOhm}`]
    return element.insideOhm === 0
      ? [`V${i} ${to} ${from} ${element.sourceV}`]
      : [`V${i} ${to} i${i} ${element.sourceV}`, `R${i} i${i} ${from} ${element.insideOhm}`]
  })
}

const circuits = drawnNetworks(200)
if (spawnSync('ngspice', ['--version']).status !== 0) console.log('ngspice is not here: nothing to stand beside')
else {
  let worst = 0
  let theirs = 0
  for (const circuit of circuits) {
    const names = new Map(nodesOf(circuit).map((node, i) => [node, String(i)]))
    const file = join(folder, 'circuit.cir')
    const print = [...names.values()].filter(n => n !== '0').map(n => `print v(${n})`)
    writeFileSync(
      file,
      [
        'check',
        ...netlist(circuit, names),
        '.options reltol=1e-9 gmin=1e-15',
        '.control',
        'set numdgt=12',
        'op',
        ...print,
        '.endc',
        '.end',
        ''
      ].join('\n')
    )
    let out = ''
    theirs += millis(() => {
      out = spawnSync('ngspice', ['-b', file], { encoding: 'utf8' }).stdout
    })
    const volts = new Map([...out.matchAll(/v\((\d+)\) = (\S+)/g)].map(([, n, value]) => [n, Number(value)]))
    const { nodeV } = solveNetwork(circuit)
    const scale = Math.max(...circuit.elements.map(({ sourceV = 0 }) => Math.abs(sourceV)))
    for (const [node, n] of names) if (n !== '0') worst = Math.max(worst, Math.abs(nodeV[node] - volts.get(n)) / scale)
  }
  const ours = timed(() => circuits.map(circuit => solveNetwork(circuit)), 5)
  console.log(
    `${circuits.length} circuits: ${ours.toFixed(0)} ms here, ${theirs.toFixed(0)} ms by ngspice, one process each: ${(theirs / ours).toFixed(0)} × as long`
  )
  console.log(`largest difference of a voltage: ${worst.toExponential(1)} of the largest source`)
}
