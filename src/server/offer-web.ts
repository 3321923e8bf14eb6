import type { Context, Hono } from 'hono'
import { accepts } from './accepts.ts'
import { problem } from './problem.ts'
import type { WebFile } from './web-files.ts'

const forEver = 'public, max-age=31536000, immutable'

/**
 * Offers the web app: its files, and its one page for every path that is neither a file nor of the API. Without a
 * built app it says how to build it.
 */
export function offerWeb(app: Hono, files: ReadonlyMap<string, WebFile> | undefined): void {
  app.get('*', (c, next) => {
    const { path } = c.req
    if (path === '/api' || path.startsWith('/api/')) return next()
    if (!files) return c.json(problem('web-not-built', '', 'The screens are not built here; run npm run build.'), 503)
    const file = files.get(path)
    if (file && path !== '/index.html') return send(c, file, file.immutable ? forEver : 'no-cache')
    // A file that is gone must not be answered with a page: a browser would keep it as a script.
    if (/\.\w+$/.test(path) && path !== '/index.html') return next()
    const page = files.get('/index.html')
    return page ? send(c, page, 'no-store') : next()
  })
}

function send(c: Context, { type, plain, smaller, tag }: WebFile, cache: string) {
  const encoding = (['br', 'gzip'] as const).find((one) => smaller.has(one) && accepts(c, one))
  const headers: Record<string, string> = {
    'content-type': type,
    'cache-control': cache,
    etag: tag,
    vary: 'accept-encoding',
    ...(encoding && { 'content-encoding': encoding }),
  }
  if (cache !== 'no-store' && c.req.header('if-none-match') === tag) return c.body(null, 304, headers)
  return c.body((encoding && smaller.get(encoding)) ?? plain, 200, headers)
}
