/** What libraries would load or ask for at every turn and we never use: starting other programs, colouring table heads. */
export const leftOut = {
  name: 'left out',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^(node:child_process|@colors\/colors.*)$/ }, ({ path }) => ({ path, namespace: 'left-out' }))
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({ contents: 'export {}' }))
    // The YAML library asks the environment at every token whether to log it: a fifth of its whole work.
    onResolve({ filter: /^process$/ }, ({ path }) => ({ path, namespace: 'no-environment' }))
    onLoad({ filter: /.*/, namespace: 'no-environment' }, () => ({ contents: 'export const env = {}, { emitWarning } = process' }))
  }
}
