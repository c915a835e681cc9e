import fc from 'fast-check'

// The same draws in every run, so that a change is judged by what it changed; SEED=7 npx vitest run draws others.
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261_101) })
