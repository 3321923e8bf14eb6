import { createServer, type Server } from 'node:http'
import { getRequestListener } from '@hono/node-server'
import type { Projector, Store } from '#actions/store.ts'
import { schemaVersion } from '#storage/migrate.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'
import packageFile from '../../package.json' with { type: 'json' }
import { app } from './app.ts'

export type ServeOptions = {
  /** The data folder of the embedded store; ignored when a database is given. */
  readonly dataDir?: string
  readonly databaseUrl?: string
  /** 0 takes any free port. */
  readonly port: number
  readonly project: Projector
  readonly leaveFreeBytes?: number
  readonly log?: (line: string) => void
}

export type Serving = {
  readonly url: string
  readonly store: Store
  /** Answers what has begun, then closes the store and frees the folder. */
  readonly close: () => Promise<void>
}

/**
 * Opens the store and serves it on the loopback address only: there are no accounts yet. Plug in here, nowhere else.
 */
export async function serve({ port, project, log = logLine, ...where }: ServeOptions): Promise<Serving> {
  const { store, kind } = await openStore(project, where)
  const about = { version: packageFile.version, store: kind, schema: schemaVersion }
  const clock = { now: () => new Date().toISOString() }
  const server = createServer(getRequestListener(app({ store, clock, about, log }).fetch))
  try {
    await listen(server, port)
  } catch (error) {
    await store.close()
    throw error
  }
  const address = server.address()
  const at = typeof address === 'object' && address ? address.port : port
  return { url: `http://127.0.0.1:${at}`, store, close: once(() => stop(server, store)) }
}

async function openStore(
  project: Projector,
  { dataDir, databaseUrl, leaveFreeBytes }: Pick<ServeOptions, 'dataDir' | 'databaseUrl' | 'leaveFreeBytes'>,
): Promise<{ store: Store; kind: 'sqlite' | 'postgres' }> {
  if (databaseUrl) return { store: await openPostgres(databaseUrl, { project }), kind: 'postgres' }
  if (!dataDir) throw new Error('The server needs a data folder or a database.')
  const options = leaveFreeBytes === undefined ? { project } : { project, leaveFreeBytes }
  return { store: await openLockedFolder(dataDir, options), kind: 'sqlite' }
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', resolve)
  })
}

/** Ends the process cleanly when it is asked to end; a second signal while it is closing ends it at once. */
export function endOnSignals(serving: Serving): void {
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.once(signal, () => {
      serving.close().then(
        () => process.exit(0),
        (error) => {
          logLine(String(error))
          process.exit(1)
        },
      )
    })
  }
}

async function stop(server: Server, store: Store): Promise<void> {
  const ended = new Promise((resolve) => server.close(resolve))
  server.closeIdleConnections()
  // Whoever keeps a request open for longer sends it again: what was acknowledged is on disk.
  const patience = setTimeout(() => server.closeAllConnections(), 5_000)
  await ended
  clearTimeout(patience)
  await store.close()
}

function once(doing: () => Promise<void>): () => Promise<void> {
  let done: Promise<void> | undefined
  return () => {
    done ??= doing()
    return done
  }
}

function logLine(line: string): void {
  process.stderr.write(`${line}\n`)
}
