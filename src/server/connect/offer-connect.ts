import { X509Certificate } from 'node:crypto'
import type { Context, Hono } from 'hono'
import type { Addresses } from '../addresses.ts'
import type { Tls } from '../tls/open-tls.ts'
import type { WebFile } from '../web-files.ts'
import { type ConnectPage, connectPage, type Mode } from './page.ts'

export type Connecting = {
  readonly addresses: () => Addresses
  /** Undefined when the server was started without encryption. */
  readonly tls: () => Tls | undefined
  readonly here: () => string
  readonly modeOf: (c: Context) => Mode
  readonly files: ReadonlyMap<string, WebFile> | undefined
}

/** Offers /connect and, beside it, the authority's certificate for installing on a device. For anybody: it is public. */
export function offerConnect(app: Hono, { addresses, tls, here, modeOf, files }: Connecting): void {
  const styles = [...stylesIn(files), '/connect.css']
  app.get('/connect', (c) => {
    c.header('cache-control', 'no-store')
    const authority = authorityIn(tls())
    return c.html(connectPage({ mode: modeOf(c), addresses: addresses(), authority, here: here(), styles }))
  })
  app.get('/connect/quiet-ear.crt', (c, next) => {
    const certificate = tls()?.authority?.certificate
    if (certificate === undefined) return next()
    return c.body(new Uint8Array(new X509Certificate(certificate).raw), 200, {
      'content-type': 'application/x-x509-ca-cert',
      'content-disposition': 'attachment; filename="quiet-ear.crt"',
      'cache-control': 'no-store',
    })
  })
}

function authorityIn(tls: Tls | undefined): ConnectPage['authority'] {
  if (!tls) return undefined
  if (!tls.authority) return null
  const { certificate, fingerprint } = tls.authority
  const name = /CN=(.+)/.exec(new X509Certificate(certificate).subject)?.[1] ?? ''
  return { name, fingerprint }
}

/** The style sheets of the built app: this page has the same paper and ink. */
function stylesIn(files: ReadonlyMap<string, WebFile> | undefined): string[] {
  const page = new TextDecoder().decode(files?.get('/index.html')?.plain)
  return [...page.matchAll(/<link[^>]+rel="stylesheet"[^>]+href="([^"]+)"/g)].map(([, path = '']) => path)
}
