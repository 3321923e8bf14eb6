/** Bundles the command line to dist/cli.js when it is missing or older than any source. `--force` builds anyway. */
import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
const out = join(root, 'dist/cli.js')

function newest(folder) {
  let latest = 0
  for (const item of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, item.name)
    latest = Math.max(latest, item.isDirectory() ? newest(path) : statSync(path).mtimeMs)
  }
  return latest
}

export function isBuilt() {
  if (!existsSync(out)) return false
  const built = statSync(out).mtimeMs
  return built > newest(join(root, 'src')) && built > statSync(join(root, 'package.json')).mtimeMs
}

/** Built beside and then put in place, so that a program that starts meanwhile finds the old bundle or the new one. */
export async function build() {
  const { build: bundle } = await import('vite')
  const beside = join(root, `.cache/dist-${process.pid}`)
  await bundle({
    root,
    logLevel: 'warn',
    configFile: false,
    build: {
      ssr: 'src/cli/main.ts',
      outDir: beside,
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      sourcemap: true,
      rolldownOptions: { output: { entryFileNames: 'cli.js', chunkFileNames: 'cli-[name].js' } },
    },
  })
  rmSync(join(root, 'dist'), { recursive: true, force: true })
  renameSync(beside, join(root, 'dist'))
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes('--force') || !isBuilt()) await build()
}
