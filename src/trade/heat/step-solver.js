// Plain JavaScript, declared beside it: the library ships TypeScript source that does not pass our compiler's settings.
export { Solver } from 'odex'
