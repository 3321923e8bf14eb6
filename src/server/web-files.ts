import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { extname, join, relative } from 'node:path'

/** One file of the built web app, as it is sent. */
export type WebFile = {
  readonly type: string
  readonly plain: Uint8Array<ArrayBuffer>
  /** Made smaller when the app was built, by the name of the encoding. */
  readonly smaller: ReadonlyMap<'br' | 'gzip', Uint8Array<ArrayBuffer>>
  readonly tag: string
  /** Its name says its contents, so it may be kept for ever. */
  readonly immutable: boolean
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain; charset=utf-8',
}

/**
 * Reads the built web app into memory, by path: small, and of one piece even when it is built anew meanwhile. Nothing
 * outside it can be asked for. Undefined when it is not built.
 */
export function readWebFiles(folder: string): ReadonlyMap<string, WebFile> | undefined {
  if (!existsSync(join(folder, 'index.html'))) return undefined
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => relative(folder, join(item.parentPath, item.name)).replaceAll('\\', '/'))
  const found = new Map<string, WebFile>()
  for (const path of paths) {
    const type = types[extname(path)]
    if (type === undefined || path.startsWith('.')) continue
    const read = (ending: string) => new Uint8Array(readFileSync(join(folder, `${path}${ending}`)))
    const smaller = new Map<'br' | 'gzip', Uint8Array<ArrayBuffer>>()
    if (paths.includes(`${path}.br`)) smaller.set('br', read('.br'))
    if (paths.includes(`${path}.gz`)) smaller.set('gzip', read('.gz'))
    const plain = read('')
    const tag = `"${createHash('sha256').update(plain).digest('hex').slice(0, 32)}"`
    found.set(`/${path}`, { type, plain, smaller, tag, immutable: /^assets\/.+-[\w-]{8}\.\w+$/.test(path) })
  }
  return found
}
