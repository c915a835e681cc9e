import { choice, describe } from './describe.ts'

export const completion = describe({
  name: 'completion',
  summary: 'completion of commands, options and choices for a shell, as a script to load',
  rows: { shell: choice(['bash', 'zsh', 'fish'], 'the shell it is for', { argument: true, required: true }) },
  examples: ['completion bash', 'completion fish'],
  load: () => import('./completion.run.ts')
})
