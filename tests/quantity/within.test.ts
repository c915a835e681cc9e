// example: quantities of which there is no less than nought, in their house units
import { describe, expect, it } from 'vitest'
import { KIND_NAMES, rowOf } from '../../src/quantity/kinds.ts'
import { parseWithin } from '../../src/quantity/within.ts'

const NEVER_LESS = [
  ...['area', 'surface', 'force', 'stress', 'resistance', 'power', 'capacity', 'time'],
  ...['speed', 'specific-heat', 'conductance', 'film', 'count']
] as const

describe('no field needs to say of a time that there is none below nought', () => {
  it.each(NEVER_LESS)('%s', kind => {
    const { house } = rowOf(kind)
    expect(parseWithin(kind, `0 ${house}`.trim())).toMatchObject({ ok: true, value: { value: 0 } })
    expect(parseWithin(kind, `-2 ${house}`.trim())).toMatchObject({
      ok: false,
      fault: { accepted: `0${house && ` ${house}`} and more, bounds and all` }
    })
  })

  it('bounds and all', () => {
    expect(parseWithin('time', '2 s ± 3 s').ok).toBe(false)
    expect(parseWithin('time', '3 s ± 3 s').ok).toBe(true)
  })
})

it.each(KIND_NAMES.filter(kind => !(NEVER_LESS as readonly string[]).includes(kind)))(
  '%s may be below nought, where its field lets it',
  kind => {
    const { house } = rowOf(kind)
    expect(parseWithin(kind, `-2 ${house}`.trim()).ok).toBe(true)
  }
)

it('a field may ask for more', () => {
  expect(parseWithin('time', '1 s', { least: 2 })).toMatchObject({ ok: false, fault: { accepted: '2 s and more, bounds and all' } })
})
