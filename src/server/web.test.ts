import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { brotliCompressSync, gzipSync } from 'node:zlib'
import { getRequestListener } from '@hono/node-server'
import { Hono } from 'hono'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { offerWeb } from './offer-web.ts'
import { readWebFiles } from './web-files.ts'

const script = 'console.log("an ear")\n'.repeat(200)
const page = '<!doctype html><title>Quiet Ear</title>'

describe('the web app', () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-web-'))
  const servers: ReturnType<typeof createServer>[] = []
  let url = ''
  beforeAll(async () => {
    mkdirSync(join(folder, 'assets'))
    mkdirSync(join(folder, '.vite'))
    writeFileSync(join(folder, 'index.html'), page)
    writeFileSync(join(folder, 'service-worker.js'), script)
    writeFileSync(join(folder, 'assets/main-Ab3_-x9Z.js'), script)
    writeFileSync(join(folder, 'assets/main-Ab3_-x9Z.js.gz'), gzipSync(script))
    writeFileSync(join(folder, 'assets/main-Ab3_-x9Z.js.br'), brotliCompressSync(script))
    writeFileSync(join(folder, 'assets/main-Ab3_-x9Z.js.map'), '{}')
    writeFileSync(join(folder, '.vite/manifest.json'), '{}')
    url = await serving(folder)
  })
  afterAll(() => {
    for (const server of servers) server.close()
    rmSync(folder, { recursive: true })
  })

  const serving = async (from: string) => {
    const app = new Hono()
    app.get('/api/health', (c) => c.json({ ok: true }))
    offerWeb(app, readWebFiles(from))
    const server = createServer(getRequestListener(app.fetch))
    servers.push(server)
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    return `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  }
  const get = (path: string, headers: Record<string, string> = {}) => fetch(`${url}${path}`, { headers })

  it('is its page for every path of the app, never kept, and never for the API or a file that is gone', async () => {
    for (const path of ['/', '/index.html', '/case/tansy', '/owed', '/settings/people']) {
      const answer = await get(path)
      expect([path, answer.status, await answer.text()]).toEqual([path, 200, page])
      expect(answer.headers.get('cache-control')).toBe('no-store')
      expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8')
    }
    expect(await (await get('/api/health')).json()).toEqual({ ok: true })
    for (const path of ['/api/none', '/api', '/assets/main-gone1234.js', '/favicon.ico']) {
      expect([path, (await get(path)).status]).toEqual([path, 404])
    }
  })

  it('sends a file whose name says its contents to be kept for ever, as small as the browser takes it', async () => {
    const path = '/assets/main-Ab3_-x9Z.js'
    for (const [accepted, encoding] of [
      ['gzip, deflate, br', 'br'],
      ['gzip', 'gzip'],
      ['br;q=0, gzip;q=0.5', 'gzip'],
      ['identity', null],
    ] as const) {
      const answer = await get(path, { 'accept-encoding': accepted })
      expect([accepted, answer.headers.get('content-encoding')]).toEqual([accepted, encoding])
      expect(answer.headers.get('cache-control')).toBe('public, max-age=31536000, immutable')
      expect(answer.headers.get('vary')).toBe('accept-encoding')
      expect(answer.headers.get('content-type')).toBe('text/javascript; charset=utf-8')
      expect(await answer.text()).toBe(script)
    }
  })

  it('has every other file asked for again, and says when it is the same', async () => {
    const first = await get('/service-worker.js')
    expect(first.headers.get('cache-control')).toBe('no-cache')
    const again = await get('/service-worker.js', { 'if-none-match': first.headers.get('etag') ?? '' })
    expect([again.status, await again.text()]).toEqual([304, ''])
  })

  it('gives nothing but what it is made of', async () => {
    for (const path of [
      '/.vite/manifest.json',
      '/assets/main-Ab3_-x9Z.js.map',
      '/assets/../../package.json',
      '/..%2f..%2fpackage.json',
    ]) {
      const answer = await get(path)
      expect([path, answer.status]).toEqual([path, 404])
    }
  })

  it('that was not built says how to build it', async () => {
    const elsewhere = await serving(join(folder, 'assets'))
    const answer = await fetch(`${elsewhere}/owed`)
    expect(answer.status).toBe(503)
    expect(await answer.text()).toContain('npm run build')
  })
})
