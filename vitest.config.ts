import { defineConfig } from 'vitest/config'
import { OutsideReporter } from './tests/outside-reporter.ts'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/draws.ts'],
    reporters: [['default', { summary: false }], new OutsideReporter()],
    // One for each core: left to itself it keeps one core free.
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 120_000,
    silent: 'passed-only',
    coverage: { include: ['src/**'] }
  },
  define: { FETTLE_VERSION: JSON.stringify('test') }
})
