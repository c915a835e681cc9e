// Packs the program as it is given away, says what is in there, installs it into an empty folder and runs every command
// of the README there, on each Node that is asked for: node tests/scripts/pack.js 20 22 24 26
import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, delimiter, join } from 'node:path'

const NODES = process.argv.length > 2 ? process.argv.slice(2) : ['20', '22', '24', '26']
/** What a package of this program needs: to run, to be read, to be allowed. */
const NEEDED = [
  /^(package\.json|README\.md|LICENSE|CHANGELOG\.md|bin\/(fettle\.js|load\.js|thread\.js|package\.json))$/,
  /^dist\/(THIRD-PARTY\.txt|[a-z-]+(\.run)?\.cjs)$/,
  /^dist\/lib\/.*\.(js|d\.ts)$/,
  /^docs\/.*\.md$/,
  /^examples\/.*\.(yaml|txt)$/
]
const LICENCES = ['LICENSE', 'dist/THIRD-PARTY.txt']

const folder = mkdtempSync(join(tmpdir(), 'fettle-pack-'))
const npm = (words, cwd = folder) =>
  execFileSync('npm', [...words, '--no-audit', '--no-fund', '--loglevel', 'error'], { cwd, encoding: 'utf8' })
try {
  const [packed] = JSON.parse(npm(['pack', '--json', '--ignore-scripts', '--pack-destination', folder], process.cwd()))
  const wrong = [...content(packed), ...onEveryNode(join(folder, basename(packed.filename)))]
  for (const flaw of wrong) console.log(`FLAW  ${flaw}`)
  process.exitCode = wrong.length > 0 ? 1 : 0
} finally {
  rmSync(folder, { recursive: true, force: true })
}

/** Prints what is in the package, and gives what is too much or missing in it. */
function content({ files, size, unpackedSize }) {
  const parts = grouped(files)
  console.log(`${files.length} files, ${kb(size)} packed, ${kb(unpackedSize)} unpacked`)
  for (const [part, ones] of [...parts].sort())
    console.log(`  ${part.padEnd(14)} ${String(ones.length).padStart(4)}  ${kb(ones.reduce((sum, one) => sum + one.size, 0))}`)
  const paths = files.map(({ path }) => path)
  return [
    ...paths.filter(path => !NEEDED.some(needed => needed.test(path))).map(path => `${path} is in the package and not needed`),
    ...LICENCES.filter(path => !paths.includes(path)).map(path => `${path} is not in the package`)
  ]
}

function partOf({ path }) {
  return /^(dist\/lib|[^/]+\/|[^/]+)/.exec(path)[0]
}

function grouped(files) {
  const parts = new Map()
  for (const file of files) parts.set(partOf(file), [...(parts.get(partOf(file)) ?? []), file])
  return parts
}

function kb(bytes) {
  return `${Math.round(bytes / 1000)} kB`
}

/** Runs the commands with each Node; what they print must not hang on which it is. */
function onEveryNode(tarball) {
  const printed = new Map()
  const wrong = NODES.flatMap(version => {
    const node = nodeOf(version)
    if (node === null) {
      console.log(`Node ${version}: not to be had here, not tried`)
      return []
    }
    const { flaws, digest, count } = readmeOn(node, tarball)
    printed.set(digest, [...(printed.get(digest) ?? []), node.version])
    console.log(`Node ${node.version}: ${count} commands of the README, ${flaws.length} flaws`)
    return flaws.map(flaw => `Node ${node.version}: ${flaw}`)
  })
  return printed.size > 1
    ? [...wrong, `prints other things on other versions: ${[...printed.values()].map(ones => ones.join(' ')).join(' | ')}`]
    : wrong
}

/** The binary that the registry of npm has for this machine. */
function nodeOf(version) {
  const into = join(folder, `node-${version}`)
  const os = process.platform === 'win32' ? 'win' : process.platform
  mkdirSync(into)
  try {
    npm(['install', '--prefix', into, '--ignore-scripts', `node-${os}-${process.arch}@${version}`], into)
    const binary = join(into, 'node_modules', `node-${os}-${process.arch}`, 'bin', 'node')
    return { binary, version: execFileSync(binary, ['--version'], { encoding: 'utf8' }).trim() }
  } catch {
    return null
  }
}

/** In an empty folder with the package installed and its examples beside it, as somebody has them who reads on. */
function readmeOn({ binary, version }, tarball) {
  const home = join(folder, `home-${version}`)
  mkdirSync(join(home, 'bin'), { recursive: true })
  writeFileSync(join(home, 'package.json'), '{}')
  npm(['install', '--offline', tarball], home)
  const shim = join(home, 'bin', 'fettle')
  writeFileSync(shim, `#!/bin/sh\nexec "${binary}" "${join(home, 'node_modules', 'fettle', 'bin', 'fettle.js')}" "$@"\n`)
  chmodSync(shim, 0o755)
  const shell = line =>
    spawnSync('bash', ['-c', line], { cwd: home, encoding: 'utf8', env: { PATH: `${join(home, 'bin')}${delimiter}${process.env.PATH}` } })
  shell('cp -r node_modules/fettle/examples .')
  const hash = createHash('sha256')
  const flaws = commands().flatMap(line => {
    const { status, stdout, stderr } = shell(line)
    hash.update(`${line}\n${stdout}\n${stderr}\n${status}\n`)
    return (status === 0 || status === 1) && !/NaN|undefined|Infinity|\bat \S+:\d+:\d+/.test(stdout + stderr)
      ? []
      : [`${line}: exit ${status}: ${stderr.slice(0, 300)}`]
  })
  const others = execFileSync('npm', ['ls', '--all', '--parseable'], { cwd: home, encoding: 'utf8' }).trim().split('\n').length
  if (others !== 2) flaws.push(`${others - 1} packages came along`)
  return { flaws, digest: hash.digest('hex'), count: commands().length }
}

/** The lines of the README's shell blocks that call the program. */
function commands() {
  const blocks = [...readFileSync('README.md', 'utf8').matchAll(/^```sh\n([\s\S]*?)^```/gm)].flatMap(([, block]) => block.split('\n'))
  return blocks.map(line => line.replace(/^.*node bin\/fettle\.js/, 'fettle')).filter(line => /\bfettle\b/.test(line))
}
