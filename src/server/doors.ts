import { createServer, type RequestListener, type Server } from 'node:http'
import type { Server as TlsServer } from 'node:https'
import type { Socket } from 'node:net'
import type { Clock } from '#actions/store.ts'
import { openSecureServer, type SecureServer, type TlsOptions } from './tls/secure-server.ts'

/** Where requests come in: plain for this machine and a trusted network, encrypted beside it. */
export type Doors = {
  readonly plain: Server
  readonly secure: SecureServer | undefined
  readonly unused: readonly Unused[]
}

export type DoorOptions = {
  readonly port: number
  readonly host: string | undefined
  readonly clock: Clock
  readonly log: (line: string) => void
  readonly tls: TlsOptions | undefined
}

/** Opens both doors, or none. */
export async function openDoors(
  listener: RequestListener,
  { port, host, clock, log, tls }: DoorOptions,
): Promise<Doors> {
  const now = () => new Date(clock.now())
  const secure = tls && (await openSecureServer(tls, listener, { now, log }))
  const plain = createServer(listener)
  const unused = (secure ? [plain, secure.server] : [plain]).map((server) => new Unused(server))
  await listen(plain, port, host)
  try {
    if (secure) await listen(secure.server, port === 0 ? 0 : port + 1, host)
  } catch (error) {
    secure?.stop()
    plain.close()
    throw error
  }
  return { plain, secure, unused }
}

/** Connections that were opened ahead of any request: browsers keep one ready, and Node does not count it as idle. */
class Unused {
  readonly #sockets = new Set<Socket>()

  constructor(server: Server | TlsServer) {
    server.on('connection', (socket: Socket) => {
      this.#sockets.add(socket)
      socket.once('close', () => this.#sockets.delete(socket))
    })
    server.on('request', ({ socket }) => this.#sockets.delete(socket))
    // Of an encrypted connection the requests come from the socket within.
    server.on('secureConnection', (socket: Socket) => {
      for (const outer of this.#sockets) if (outer.remotePort === socket.remotePort) this.#sockets.delete(outer)
      this.#sockets.add(socket)
      socket.once('close', () => this.#sockets.delete(socket))
    })
  }

  close(): void {
    for (const socket of this.#sockets) socket.destroy()
  }
}

/** Answers what has begun, for five seconds at most. */
export async function closeDoors({ plain, secure, unused }: Doors): Promise<void> {
  secure?.stop()
  const servers = secure ? [plain, secure.server] : [plain]
  const ended = servers.map((server) => new Promise((resolve) => server.close(resolve)))
  // A browser keeps its connection for the next request; once the last answer is given there will be none.
  const idle = setInterval(() => {
    for (const server of servers) server.closeIdleConnections()
    for (const one of unused) one.close()
  }, 50)
  // Whoever keeps a request open for longer sends it again: what was acknowledged is on disk.
  const patience = setTimeout(() => {
    for (const server of servers) server.closeAllConnections()
  }, 5_000)
  await Promise.all(ended)
  clearInterval(idle)
  clearTimeout(patience)
}

export function portOf(server: Server | TlsServer): number {
  const address = server.address()
  return typeof address === 'object' && address ? address.port : 0
}

function listen(server: Server | TlsServer, port: number, host: string | undefined): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(host === undefined ? { port } : { port, host }, resolve)
  })
}
