import { build } from 'esbuild'
import { leftOut } from '../../esbuild.left-out.js'

/** Typed modules in one file that plain Node loads: what is exported, and the folder its paths start from. */
export async function bundled(contents, resolveDir, outfile) {
  await build({
    stdin: { contents, resolveDir, loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile,
    plugins: [leftOut],
    banner: { js: "import { createRequire as benchRequire } from 'node:module'; const require = benchRequire(import.meta.url);" },
    logLevel: 'error'
  })
}
