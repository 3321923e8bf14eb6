import type { RequestListener } from 'node:http'
import { createServer, type Server } from 'node:https'
import { readClinicTls } from './clinic-certificate.ts'
import { openOwnTls, type Tls } from './open-tls.ts'

/** Where certificate and key come from: the clinic's own authority, kept in a folder, or files the clinic brings. */
export type TlsOptions = { readonly folder: string } | { readonly certificate: string; readonly key: string }

export type SecureServer = {
  readonly server: Server
  /** As it stands now. */
  readonly tls: () => Tls
  /** Ends the looking after; the server itself is closed by whoever opened it. */
  readonly stop: () => void
}

const lookEvery = 6 * 60 * 60 * 1_000

/**
 * The encrypted door. A server runs for months: its certificate is looked at every six hours and changed while it
 * runs, when it nears its end, the machine's address changed, or the clinic put a new one in place.
 */
export async function openSecureServer(
  options: TlsOptions,
  listener: RequestListener,
  { now, log }: { readonly now: () => Date; readonly log: (line: string) => void },
): Promise<SecureServer> {
  const read = async () =>
    'folder' in options ? openOwnTls(options.folder, now()) : readClinicTls(options.certificate, options.key, now())
  let tls = await read()
  const server = createServer({ cert: tls.certificate, key: tls.key }, listener)
  const look = async () => {
    const found = await read()
    if (found.certificate === tls.certificate) return
    tls = found
    server.setSecureContext({ cert: tls.certificate, key: tls.key })
    log('The certificate was renewed.')
  }
  const timer = setInterval(() => look().catch((error) => log(`The certificate stays: ${error.message}`)), lookEvery)
  timer.unref()
  return { server, tls: () => tls, stop: () => clearInterval(timer) }
}
