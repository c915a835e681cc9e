// The scales of all units, worked out while building, so that nothing that runs has to load a library for them.
import { resolve } from 'node:path'
import { build } from 'esbuild'

export const bundled = { bundle: true, format: 'esm', platform: 'node', target: 'node20.19', logLevel: 'warning' }

/** Every scale of every unit, worked out once here by the library, so that no command has to load it. */
export async function scales() {
  const contents = "export { KINDS } from './kinds.ts'; export { scaleOf } from './conversion.ts'"
  const { outputFiles } = await build({ ...bundled, stdin: { contents, resolveDir: resolve('src/quantity'), loader: 'ts' }, write: false })
  const { KINDS, scaleOf } = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`)
  const ratio = ({ top, bottom }) => [String(top), String(bottom)]
  const row = ({ times, plus }) => [...ratio(times), ...ratio(plus)]
  const ofKind = (kind, { units }) => Object.fromEntries(Object.keys(units).map(label => [label, row(scaleOf(kind, label))]))
  return Object.fromEntries(Object.entries(KINDS).map(([kind, rows]) => [kind, ofKind(kind, rows)]))
}

export const scalesByTable = table => ({
  name: 'scales by table',
  setup({ onLoad }) {
    onLoad({ filter: /src\/quantity\/conversion\.ts$/ }, () => ({
      loader: 'ts',
      contents: `import { Exact } from './exact.ts'
        const SCALES = ${JSON.stringify(table)}
        const ONE = [1, 1, 0, 1]
        const known = new Map()
        export function scaleOf(kind, label) {
          const ofKind = known.get(kind) ?? new Map()
          const made = ofKind.get(label)
          if (made !== undefined) return made
          const [a, b, c, d] = (SCALES[kind]?.[label] ?? ONE).map(BigInt)
          const scale = { times: new Exact(a, b), plus: new Exact(c, d) }
          known.set(kind, ofKind.set(label, scale))
          return scale
        }`
    }))
  }
})
