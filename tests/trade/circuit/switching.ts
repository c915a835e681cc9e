import type { Switching } from '../../../src/trade/circuit/switching.ts'

/** Lines as `name from to`; those in capitals can be switched, those in brackets are drawn open. */
export function switching(runs: readonly string[], loads: readonly string[], sources: readonly string[] = ['battery 0 bus']): Switching {
  const lines = (texts: readonly string[]) =>
    texts.map(text => {
      const [name, from, to] = text.replace(/[()]/g, '').split(' ') as [string, string, string]
      return { name, id: name, from, to, protects: 'no' as const }
    })
  return {
    runs: lines(runs),
    loads: lines(loads),
    sources: lines(sources),
    switchable: lines(runs).flatMap(({ id }) => (id === id.toUpperCase() ? [id] : [])),
    open: lines(runs.filter(text => text.startsWith('('))).map(({ id }) => id)
  }
}
