/**
 * What a device must load before the first page is there: the entry of the built web app and everything it imports at
 * once, compressed. Ends with 1 above the limit. Read from the bundler's own manifest.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

const web = fileURLToPath(new URL('../dist/web/', import.meta.url))
export const mostBytes = 250_000

/** `{ script, style, files }`: bytes after gzip of what the first page needs. */
export function webSize(folder = web) {
  const manifest = JSON.parse(readFileSync(join(folder, '.vite/manifest.json'), 'utf8'))
  const entry = Object.keys(manifest).find(
    (name) => manifest[name].isEntry && /\.(html|tsx?)$/.test(manifest[name].src),
  )
  if (!entry) throw new Error('The manifest of the web app names no entry.')
  const wanted = new Set([entry])
  for (const name of wanted) for (const imported of manifest[name].imports ?? []) wanted.add(imported)
  const size = (path) => gzipSync(readFileSync(join(folder, path)), { level: 9 }).length
  const scripts = new Set([...wanted].map((name) => manifest[name].file))
  const styles = new Set([...wanted].flatMap((name) => manifest[name].css ?? []))
  const sum = (paths) => [...paths].reduce((total, path) => total + size(path), 0)
  return { script: sum(scripts), style: sum(styles), files: scripts.size }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { script, style, files } = webSize()
  const kilobytes = (bytes) => `${(bytes / 1000).toFixed(1)} kB`
  console.log(
    `first JavaScript: ${kilobytes(script)} gzipped in ${files} files of ${kilobytes(mostBytes)} allowed; styles ${kilobytes(style)}`,
  )
  if (script > mostBytes) {
    console.error('The first page loads too much JavaScript: load a part of it later, with import().')
    process.exitCode = 1
  }
}
