/**
 * Bundles the command line to dist/cli.js and the web app to dist/web when they are missing or older than any source.
 * `--force` builds anyway.
 */
import {
  copyFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { brotliCompressSync, constants, gzipSync } from 'node:zlib'

const root = fileURLToPath(new URL('..', import.meta.url))
const out = join(root, 'dist/cli.js')
const webPage = join(root, 'dist/web/index.html')

function newest(folder) {
  let latest = 0
  for (const item of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, item.name)
    latest = Math.max(latest, item.isDirectory() ? newest(path) : statSync(path).mtimeMs)
  }
  return latest
}

export function isBuilt() {
  if (!existsSync(out) || !existsSync(webPage)) return false
  const built = Math.min(statSync(out).mtimeMs, statSync(webPage).mtimeMs)
  return built > newest(join(root, 'src')) && built > statSync(join(root, 'package.json')).mtimeMs
}

/**
 * Built beside and then put in place, so that a program that starts meanwhile finds the old bundle or the new one. What
 * is built is what clinics run, also when tests build it: a bundle for development keeps no files on the device.
 */
export async function build() {
  const before = process.env.NODE_ENV
  process.env.NODE_ENV = 'production'
  try {
    await buildAll()
  } finally {
    if (before === undefined) delete process.env.NODE_ENV
    else process.env.NODE_ENV = before
  }
}

async function buildAll() {
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
  await buildWeb(bundle, join(beside, 'web'))
  keepFormer(join(root, 'dist/web'), join(beside, 'web'))
  const old = join(root, `.cache/dist-old-${process.pid}`)
  if (existsSync(join(root, 'dist'))) renameSync(join(root, 'dist'), old)
  renameSync(beside, join(root, 'dist'))
  rmSync(old, { recursive: true, force: true })
}

/** The web app, with every text of it in a smaller form beside it, made once here and not at each request. */
async function buildWeb(bundle, outDir) {
  const web = join(root, 'src/web')
  await bundle({
    root: web,
    configFile: join(web, 'vite.config.ts'),
    logLevel: 'warn',
    // What matters is what the first page loads, and scripts/web-size.mjs holds that to its limit.
    build: { outDir, emptyOutDir: true, chunkSizeWarningLimit: 2_000 },
  })
  for (const item of readdirSync(outDir, { recursive: true, withFileTypes: true })) {
    if (!item.isFile() || !/\.(js|css|html|svg|json|webmanifest)$/.test(item.name)) continue
    const path = join(item.parentPath, item.name)
    const plain = readFileSync(path)
    if (plain.length < 1_000) continue
    writeFileSync(`${path}.gz`, gzipSync(plain, { level: 9 }))
    const params = { [constants.BROTLI_PARAM_QUALITY]: 9, [constants.BROTLI_PARAM_SIZE_HINT]: plain.length }
    writeFileSync(`${path}.br`, brotliCompressSync(plain, { params }))
  }
}

/**
 * A page that was opened before loads its later parts by the names of its own build: those of the build before stay,
 * one build back. What a page does not find any more, it says (src/web/shell/fault.tsx).
 */
export function keepFormer(former, next) {
  const manifest = join(former, '.vite/manifest.json')
  if (!existsSync(manifest)) return
  const parts = Object.values(JSON.parse(readFileSync(manifest, 'utf8')))
  const names = new Set(parts.flatMap(({ file, css = [], assets = [] }) => [file, ...css, ...assets]))
  for (const name of names) {
    for (const path of [name, `${name}.gz`, `${name}.br`]) {
      if (existsSync(join(former, path)) && !existsSync(join(next, path))) {
        copyFileSync(join(former, path), join(next, path))
      }
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes('--force') || !isBuilt()) await build()
}
