import { type Kysely, sql } from 'kysely'
import pg from 'pg'
import type { Change, ChangeListener } from '#actions/store.ts'
import { Listeners } from '../changes.ts'
import { inPieces } from '../entry-rows.ts'
import type { Tables } from '../tables.ts'

const channel = 'quiet_ear_changes'
/** A note may have 8,000 bytes; a stream's name has 200 characters at most. */
const streamsOfANote = 9

/** Part of the write: the database passes it on when, and only when, the write is committed. */
export async function announce(tx: Kysely<Tables>, { clinic, position, streams }: Change): Promise<void> {
  for (const some of inPieces(streams, streamsOfANote)) {
    const note = JSON.stringify({ clinic, position, streams: some })
    await sql`select pg_notify(${channel}, ${note})`.execute(tx)
  }
}

/** A connection of its own on which the database tells what any process has written. Opened by the first who listens. */
export class DatabaseLine {
  readonly #address: string
  readonly #listeners = new Listeners()
  #opening: Promise<void> | undefined
  #client: pg.Client | undefined
  #retry: ReturnType<typeof setTimeout> | undefined
  #closed = false

  constructor(address: string) {
    this.#address = address
  }

  async watch(listener: ChangeListener): Promise<() => void> {
    const stop = this.#listeners.add(listener)
    this.#opening ??= this.#open()
    try {
      await this.#opening
      return stop
    } catch (error) {
      this.#opening = undefined
      stop()
      throw error
    }
  }

  async close(): Promise<void> {
    this.#closed = true
    clearTimeout(this.#retry)
    await this.#opening?.catch(() => undefined)
    const client = this.#client
    this.#client = undefined
    await client?.end()
  }

  async #open(): Promise<void> {
    const client = new pg.Client({
      connectionString: this.#address,
      connectionTimeoutMillis: 10_000,
      application_name: 'quiet-ear',
      // A line that is silent for hours must not be taken for a dead one by the network between.
      keepAlive: true,
    })
    client.on('error', () => undefined)
    client.on('end', () => this.#lost(client))
    client.on('notification', ({ payload }) => {
      this.#listeners.changed(JSON.parse(payload ?? '{}') as Change)
    })
    await client.connect()
    await client.query(`listen ${channel}`)
    this.#client = client
  }

  /** Whatever was written until the line stands again was not heard here. */
  #lost(client: pg.Client): void {
    if (this.#closed || this.#client !== client) return
    this.#client = undefined
    this.#again()
  }

  #again(): void {
    this.#retry = setTimeout(() => {
      this.#opening = this.#open()
      this.#opening.then(
        () => this.#listeners.missed(),
        () => this.#closed || this.#again(),
      )
    }, 500)
    this.#retry.unref()
  }
}
