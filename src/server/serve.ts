import { getRequestListener } from '@hono/node-server'
import { makeFirstCode } from '#actions/people/first-code.ts'
import type { Clock, Projector, Store } from '#actions/store.ts'
import { dayInPractice, demoClinic, practiceFile } from '#demo/index.ts'
import type { OpenStore } from '#storage/journal-store.ts'
import { schemaVersion } from '#storage/migrate.ts'
import { openPostgres } from '#storage/postgres/open.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'
import packageFile from '../../package.json' with { type: 'json' }
import { type Addresses, addressesOf } from './addresses.ts'
import { app } from './app.ts'
import { backupsOf } from './backups.ts'
import { closeDoors, type Doors, openDoors, portOf } from './doors.ts'
import { loadFonts } from './fonts.ts'
import { Live } from './live.ts'
import { Press } from './press.ts'
import { ListRemaking } from './remaking.ts'
import { FirstRunCode, secretsOfThisMachine } from './secrets.ts'
import type { TlsOptions } from './tls/secure-server.ts'
import { readWebFiles } from './web-files.ts'

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
  /** Where backups stand; in the data folder without it. */
  readonly backups?: string
  /** The folder of the built screens. */
  readonly web?: string
  /** Opens a second, encrypted door at the next port (any free one beside port 0). */
  readonly tls?: TlsOptions
  readonly log?: (line: string) => void
}

type Plugged = ServeOptions & { readonly clock: Clock }

export type Serving = {
  readonly url: string
  readonly store: OpenStore
  /** Opens the clinic once, while there is no account; null afterwards. */
  readonly firstCode: string | null
  /** When another process on this database made and printed the code, while it still counts. */
  readonly firstCodeElsewhere: string | null
  readonly addresses: Addresses
  /** Of the clinic's own certificate authority; null without one. */
  readonly fingerprint: string | null
  /** Answers what has begun, then closes the store and frees the folder. */
  readonly close: () => Promise<void>
}

/** Opens the store and serves it. Plug in here, nowhere else. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const { project, clock = machineClock, ...where } = options
  const { store, kind } = await openStore(project, where)
  try {
    return await serveStore(store, kind, { ...options, clock })
  } catch (error) {
    await store.close()
    throw error
  }
}

async function serveStore(store: OpenStore, kind: 'sqlite' | 'postgres', options: Plugged): Promise<Serving> {
  const { port, host, clock, names = [], log = logLine, web } = options
  const { accounts } = store
  const secrets = secretsOfThisMachine()
  const firstCode = new FirstRunCode(accounts)
  // Nobody else is on a data folder: there the code is new at every start. On a database another process may have made it.
  const code = await makeFirstCode({ accounts, secrets, clock }, { replace: kind === 'sqlite' })
  const live = await Live.open(store)
  const remaking = await ListRemaking.open(store, log)
  const press = new Press({ fonts: loadFonts })
  const listener = getRequestListener(
    app({
      world: {
        store,
        accounts,
        ownerLinks: store.ownerLinks,
        vetLinks: store.vetLinks,
        clock,
        secrets,
        firstCode,
        invented,
        version: packageFile.version,
        backUp: backupsOf({
          data: kind === 'sqlite' ? options.dataDir : undefined,
          into: options.backups,
          version: packageFile.version,
          clock,
        }),
      },
      about: { store: kind, schema: schemaVersion },
      names,
      log,
      live,
      press,
      web: web === undefined ? undefined : readWebFiles(web),
      connecting: {
        addresses: () => addresses(),
        tls: () => doors.secure?.tls(),
        here: () => `http://localhost:${portOf(doors.plain)}/connect`,
      },
    }).fetch,
  )
  const doors = await openDoors(listener, { port, host, clock, log, tls: options.tls })
  const addresses = () => addressesOf(host, portOf(doors.plain), secureOf(doors))
  return {
    url: `http://127.0.0.1:${portOf(doors.plain)}`,
    store,
    firstCode: code && 'text' in code ? code.text : null,
    firstCodeElsewhere: code && 'madeElsewhere' in code ? code.madeElsewhere : null,
    addresses: addresses(),
    fingerprint: doors.secure?.tls().authority?.fingerprint ?? null,
    close: once(() => stop({ doors, live, remaking, press, store })),
  }
}

function secureOf({ secure }: Doors) {
  return secure && { port: portOf(secure.server), certificate: secure.tls().certificate }
}

const machineClock = { now: () => new Date().toISOString() }
const invented = { clinic: demoClinic, journal: (now: string) => practiceFile(dayInPractice(now)) }

async function openStore(
  project: Projector,
  { dataDir, databaseUrl, leaveFreeBytes }: Pick<ServeOptions, 'dataDir' | 'databaseUrl' | 'leaveFreeBytes'>,
): Promise<{ store: OpenStore; kind: 'sqlite' | 'postgres' }> {
  if (databaseUrl) return { store: await openPostgres(databaseUrl, { project }), kind: 'postgres' }
  if (!dataDir) throw new Error('The server needs a data folder or a database.')
  const options = leaveFreeBytes === undefined ? { project } : { project, leaveFreeBytes }
  return { store: await openLockedFolder(dataDir, options), kind: 'sqlite' }
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

type Running = {
  readonly doors: Doors
  readonly live: Live
  readonly remaking: ListRemaking
  readonly press: Press
  readonly store: Store
}

async function stop({ doors, live, remaking, press, store }: Running): Promise<void> {
  // A screen that listens would hold the server open for ever; it is sent away and comes again.
  live.close()
  await closeDoors(doors)
  press.close()
  await remaking.close()
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
