/** Bundles one TypeScript entry for Node, outside the sources, and gives the path of the file made. For tests and rigs. */
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'

const root = fileURLToPath(new URL('..', import.meta.url))

export async function buildEntry(entry, name) {
  const outDir = join(root, '.cache', name)
  await build({
    root,
    logLevel: 'warn',
    configFile: false,
    build: {
      ssr: entry,
      outDir,
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: 'main.js', chunkFileNames: '[name].js' } },
    },
  })
  return join(outDir, 'main.js')
}
