import { createServer, type Server } from 'node:http'
import { getRequestListener } from '@hono/node-server'
import type { Clock, Projector, Store } from '#actions/store.ts'
import { demoCases, demoClinic, demoFile } from '#demo/index.ts'
import type { OpenStore } from '#storage/journal-store.ts'
import { schemaVersion } from '#storage/migrate.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'
import packageFile from '../../package.json' with { type: 'json' }
import { app } from './app.ts'
import { FirstRunCode, secretsOfThisMachine } from './secrets.ts'

export type ServeOptions = {
  /** The data folder of the embedded store; ignored when a database is given. */
  readonly dataDir?: string
  readonly databaseUrl?: string
  /** 0 takes any free port. */
  readonly port: number
  readonly project: Projector
  /** The clock of this machine when none is given. */
  readonly clock?: Clock
  readonly leaveFreeBytes?: number
  /** The address to listen on; every address of this machine when none is named. */
  readonly host?: string
  /** Names of this server beside addresses and names of the house, such as ears.clinic.example. */
  readonly names?: readonly string[]
  readonly log?: (line: string) => void
}

export type Serving = {
  readonly url: string
  readonly store: OpenStore
  /** Opens the clinic once, while there is no account; null afterwards. */
  readonly firstCode: string | null
  /** Answers what has begun, then closes the store and frees the folder. */
  readonly close: () => Promise<void>
}

/** Opens the store and serves it. Plug in here, nowhere else. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const { port, project, host, names = [], log = logLine, clock = machineClock, ...where } = options
  const { store, kind } = await openStore(project, where)
  const about = { version: packageFile.version, store: kind, schema: schemaVersion }
  const firstCode = new FirstRunCode()
  const plugged = {
    store,
    accounts: store.accounts,
    clock,
    secrets: secretsOfThisMachine(),
    firstCode,
    invented,
  }
  const server = createServer(getRequestListener(app({ ...plugged, about, names, log }).fetch))
  try {
    await listen(server, port, host)
    const address = server.address()
    const at = typeof address === 'object' && address ? address.port : port
    const code = (await store.accounts.any()) ? null : firstCode.text
    return { url: `http://127.0.0.1:${at}`, store, firstCode: code, close: once(() => stop(server, store)) }
  } catch (error) {
    await store.close()
    throw error
  }
}

const machineClock = { now: () => new Date().toISOString() }
const invented = { clinic: demoClinic, journal: () => demoFile(demoCases.map(({ name }) => name)) }

async function openStore(
  project: Projector,
  { dataDir, databaseUrl, leaveFreeBytes }: Pick<ServeOptions, 'dataDir' | 'databaseUrl' | 'leaveFreeBytes'>,
): Promise<{ store: OpenStore; kind: 'sqlite' | 'postgres' }> {
  if (databaseUrl) return { store: await openPostgres(databaseUrl, { project }), kind: 'postgres' }
  if (!dataDir) throw new Error('The server needs a data folder or a database.')
  const options = leaveFreeBytes === undefined ? { project } : { project, leaveFreeBytes }
  return { store: await openLockedFolder(dataDir, options), kind: 'sqlite' }
}

function listen(server: Server, port: number, host: string | undefined): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(host === undefined ? { port } : { port, host }, resolve)
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
