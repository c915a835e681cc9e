// example: what the unit class brings with it, and that it reckons in whole numbers
import { build } from 'esbuild'
import { describe, expect, it } from 'vitest'
import { Exact } from '../../src/quantity/exact.ts'
import { converted } from '../../src/quantity/unit-class.ts'

describe('the unit class', () => {
  it('converts without a rest', () => {
    const inch = converted(new Exact(1n), 'inch', 'mm')
    expect(inch.top * 10n).toBe(inch.bottom * 254n)
    expect(converted(new Exact(23n), 'degF', 'degC').valueOf()).toBe(-5)
  })

  it('refuses units of another dimension', () => {
    expect(() => converted(new Exact(1n), 'inch', 'kg')).toThrow()
  })

  it('brings its own file of mathjs and no evaluator', async () => {
    const { metafile } = await build({
      entryPoints: ['src/quantity/parse-quantity.ts'],
      bundle: true,
      format: 'esm',
      platform: 'node',
      write: false,
      outdir: 'nowhere',
      metafile: true
    })
    const [output] = Object.values(metafile.outputs)
    const brought = Object.entries(output!.inputs).filter(
      ([path, { bytesInOutput }]) => path.includes('node_modules/mathjs') && bytesInOutput > 0
    )
    const elsewhere = brought.map(([path]) => path).filter(path => !/mathjs\/lib\/esm\/(type\/unit\/Unit|utils\/[\w/]+)\.js$/.test(path))
    expect(elsewhere).toEqual([])
    expect(brought.reduce((sum, [, { bytesInOutput }]) => sum + bytesInOutput, 0)).toBeLessThan(100_000)
  })
})
