import type { Kysely, Transaction } from 'kysely'
import type { Account, Accounts, FirstCodeHash, ReadLine, Session, StoredLeave } from '#actions/people/accounts.ts'
import { accountOf, accountRowOf, leaveOf, leaveRowOf, sessionOf } from './account-rows.ts'
import { inPieces } from './entry-rows.ts'
import type { SessionTable, Tables } from './tables.ts'

/** What the accounts need of the database they live in. */
export type AccountsPlace = {
  readonly db: Kysely<Tables>
  readonly beforeWrite: () => void
  readonly explain: (error: unknown) => Error | undefined
}

/** A day without a try, and the slate is clean: strangers cannot fill the table for ever. */
const forgetTriesAfterMs = 86_400_000

/** The one implementation of Accounts, in the common subset of both databases. */
export class AccountsStore implements Accounts {
  readonly #place: AccountsPlace

  constructor(place: AccountsPlace) {
    this.#place = place
  }

  any(): Promise<boolean> {
    return this.#read(anyAccount)
  }

  firstCode(): Promise<FirstCodeHash | undefined> {
    return this.#read(firstCodeIn)
  }

  offerFirstCode({ hash, madeAt }: FirstCodeHash, replace: boolean): Promise<FirstCodeHash> {
    return this.#write(async (tx) => {
      const code = { hash, made_at: madeAt }
      await tx
        .insertInto('first_code')
        .values({ only: 1, ...code })
        .onConflict((conflict) => (replace ? conflict.column('only').doUpdateSet(code) : conflict.doNothing()))
        .execute()
      return (await firstCodeIn(tx)) ?? { hash, madeAt }
    })
  }

  first(account: Parameters<Accounts['first']>[0]): Promise<boolean> {
    return this.#write(async (tx) => {
      if (await anyAccount(tx)) return false
      const made = await tx
        .insertInto('accounts')
        .values({ ...accountRowOf({ ...account, active: true }), pin: null, opened: 1 })
        .onConflict((conflict) => conflict.doNothing())
        .executeTakeFirst()
      return Number(made.numInsertedOrUpdatedRows) === 1
    })
  }

  put(account: Parameters<Accounts['put']>[0]): Promise<boolean> {
    return this.#write(async (tx) => {
      const row = accountRowOf(account)
      const taken = await tx.selectFrom('accounts').selectAll().where('login', '=', row.login).execute()
      if (taken.some(({ clinic, person }) => clinic !== row.clinic || person !== row.person)) return false
      const { login, password, active } = row
      await tx
        .insertInto('accounts')
        .values({ ...row, pin: null, opened: null })
        .onConflict((conflict) => conflict.columns(['clinic', 'person']).doUpdateSet({ login, password, active }))
        .execute()
      return true
    })
  }

  byLogin(login: string): Promise<Account | undefined> {
    return this.#read(async (db) => {
      const row = await db.selectFrom('accounts').selectAll().where('login', '=', login).executeTakeFirst()
      return row && accountOf(row)
    })
  }

  byPerson(clinic: string, person: string): Promise<Account | undefined> {
    return this.#read(async (db) => {
      const query = db.selectFrom('accounts').selectAll().where('clinic', '=', clinic).where('person', '=', person)
      const row = await query.executeTakeFirst()
      return row && accountOf(row)
    })
  }

  async all(clinic: string): Promise<Account[]> {
    const rows = await this.#read((db) => db.selectFrom('accounts').selectAll().where('clinic', '=', clinic).execute())
    return rows.map(accountOf).sort((a, b) => (a.person < b.person ? -1 : 1))
  }

  setPassword(clinic: string, person: string, password: string): Promise<void> {
    return this.#setAccount(clinic, person, { password })
  }

  setPin(clinic: string, person: string, pin: Account['pin']): Promise<void> {
    return this.#setAccount(clinic, person, { pin: pin && JSON.stringify(pin) })
  }

  async #setAccount(clinic: string, person: string, change: { password: string } | { pin: string | null }) {
    await this.#write((tx) =>
      tx.updateTable('accounts').set(change).where('clinic', '=', clinic).where('person', '=', person).execute(),
    )
  }

  begin(session: Parameters<Accounts['begin']>[0], tokenHash: string): Promise<void> {
    return this.#write(async (tx) => {
      const { id, clinic, device, deviceName, madeAt, expiresAt, active } = session
      const times = { made_at: madeAt, expires_at: expiresAt, ended_at: null }
      await tx
        .insertInto('sessions')
        .values({ id, clinic, token_hash: tokenHash, device, device_name: deviceName, ...times, active })
        .execute()
      await tx
        .insertInto('session_people')
        .values({ session: id, person: active, since: madeAt, until: null })
        .execute()
    })
  }

  enrol(session: string, person: string, now: Parameters<Accounts['enrol']>[2]): Promise<void> {
    return this.#write(async (tx) => {
      const { at, tokenHash, expiresAt, deviceName } = now
      await tx
        .updateTable('sessions')
        .set({ token_hash: tokenHash, expires_at: expiresAt, device_name: deviceName, active: person })
        .where('id', '=', session)
        .execute()
      const here = tx.selectFrom('session_people').select('since').where('session', '=', session)
      const open = await here.where('person', '=', person).where('until', 'is', null).execute()
      if (open.length > 0) return
      await tx
        .insertInto('session_people')
        .values({ session, person, since: at, until: null })
        .onConflict((conflict) => conflict.columns(['session', 'person', 'since']).doUpdateSet({ until: null }))
        .execute()
    })
  }

  async byToken(tokenHash: string): Promise<Session | undefined> {
    const found = await this.#sessions((db) =>
      db.selectFrom('sessions').selectAll().where('token_hash', '=', tokenHash),
    )
    return found[0]
  }

  openSessions(clinic: string, now: string): Promise<Session[]> {
    return this.#sessions((db) =>
      db
        .selectFrom('sessions')
        .selectAll()
        .where('clinic', '=', clinic)
        .where('ended_at', 'is', null)
        .where('expires_at', '>', now),
    )
  }

  ofDevice(clinic: string, device: string): Promise<Session[]> {
    return this.#sessions((db) =>
      db.selectFrom('sessions').selectAll().where('clinic', '=', clinic).where('device', '=', device),
    )
  }

  #sessions(query: (db: Kysely<Tables>) => { execute(): Promise<SessionTable[]> }): Promise<Session[]> {
    return this.#read(async (db) => {
      const rows = await query(db).execute()
      const people: Tables['session_people'][] = []
      for (const some of inPieces(rows.map(({ id }) => id))) {
        const enrolled = db.selectFrom('session_people').selectAll().where('session', 'in', some)
        people.push(...(await enrolled.orderBy('since').orderBy('person').execute()))
      }
      return rows.map((row) => sessionOf(row, people)).sort((a, b) => (a.madeAt < b.madeAt ? -1 : 1))
    })
  }

  async activate(session: string, person: string): Promise<void> {
    await this.#write((tx) => tx.updateTable('sessions').set({ active: person }).where('id', '=', session).execute())
  }

  leave(session: string, person: string, at: string): Promise<void> {
    return this.#write((tx) => leaveSession(tx, session, person, at))
  }

  async end(session: string, at: string): Promise<void> {
    await this.#write((tx) =>
      tx
        .updateTable('sessions')
        .set({ ended_at: at, active: null })
        .where('id', '=', session)
        .where('ended_at', 'is', null)
        .execute(),
    )
  }

  leaveEverywhere(clinic: string, person: string, at: string, except?: string): Promise<void> {
    return this.#write(async (tx) => {
      const rows = await tx
        .selectFrom('session_people')
        .innerJoin('sessions', 'sessions.id', 'session_people.session')
        .select('session')
        .where('sessions.clinic', '=', clinic)
        .where('person', '=', person)
        .where('until', 'is', null)
        .execute()
      for (const { session } of rows) if (session !== except) await leaveSession(tx, session, person, at)
    })
  }

  tryNow(key: string, at: string, delayAfter: (tries: number) => number): Promise<string | null> {
    return this.#write(async (tx) => {
      const old = new Date(Date.parse(at) - forgetTriesAfterMs).toISOString()
      await tx.deleteFrom('sign_in_failures').where('last_at', '<', old).execute()
      await tx
        .insertInto('sign_in_failures')
        .values({ key, tries: 0, last_at: at })
        .onConflict((conflict) => conflict.doNothing())
        .execute()
      // Writing the row, not only reading it, is what locks it: two tries at once are counted as two.
      const { tries, last_at } = await tx
        .updateTable('sign_in_failures')
        .set((row) => ({ tries: row.ref('tries') }))
        .where('key', '=', key)
        .returning(['tries', 'last_at'])
        .executeTakeFirstOrThrow()
      const again = Date.parse(last_at) + delayAfter(tries)
      if (tries > 0 && Date.parse(at) < again) return new Date(again).toISOString()
      const counted = { tries: tries + 1, last_at: at }
      await tx.updateTable('sign_in_failures').set(counted).where('key', '=', key).execute()
      return null
    })
  }

  async forgetTries(key: string): Promise<void> {
    await this.#write((tx) => tx.deleteFrom('sign_in_failures').where('key', '=', key).execute())
  }

  async logRead(clinic: string, { stream, person, device, at }: ReadLine): Promise<void> {
    await this.#write((tx) =>
      tx
        .insertInto('read_log')
        .values({ clinic, stream, person, device, at })
        .onConflict((conflict) => conflict.doNothing())
        .execute(),
    )
  }

  async readLog(clinic: string, stream: string): Promise<ReadLine[]> {
    const rows = await this.#read((db) =>
      db
        .selectFrom('read_log')
        .select(['stream', 'person', 'device', 'at'])
        .where('clinic', '=', clinic)
        .where('stream', '=', stream)
        .execute(),
    )
    return rows.sort((a, b) => (`${a.at} ${a.person}` < `${b.at} ${b.person}` ? -1 : 1))
  }

  setLeave(clinic: string, about: Parameters<Accounts['setLeave']>[1], leave: StoredLeave | null): Promise<void> {
    return this.#write(async (tx) => {
      await tx
        .deleteFrom('leaves')
        .where('clinic', '=', clinic)
        .where('person', '=', about.person)
        .where('from_day', '<=', about.until)
        .where('until_day', '>=', about.from)
        .execute()
      if (leave) await tx.insertInto('leaves').values(leaveRowOf(clinic, leave)).execute()
    })
  }

  async leaves(clinic: string): Promise<StoredLeave[]> {
    const rows = await this.#read((db) => db.selectFrom('leaves').selectAll().where('clinic', '=', clinic).execute())
    return rows.map(leaveOf).sort((a, b) => (`${a.at} ${a.id}` < `${b.at} ${b.id}` ? -1 : 1))
  }

  async #read<Result>(reading: (db: Kysely<Tables>) => Promise<Result>): Promise<Result> {
    try {
      return await reading(this.#place.db)
    } catch (error) {
      throw this.#place.explain(error) ?? error
    }
  }

  async #write<Result>(writing: (tx: Transaction<Tables>) => Promise<Result>): Promise<Result> {
    this.#place.beforeWrite()
    return this.#read((db) => db.transaction().setIsolationLevel('read committed').execute(writing))
  }
}

async function firstCodeIn(db: Kysely<Tables>): Promise<FirstCodeHash | undefined> {
  const row = await db.selectFrom('first_code').select(['hash', 'made_at']).executeTakeFirst()
  return row && { hash: row.hash, madeAt: row.made_at }
}

async function anyAccount(db: Kysely<Tables>): Promise<boolean> {
  return (await db.selectFrom('accounts').select('person').limit(1).execute()).length > 0
}

async function leaveSession(tx: Transaction<Tables>, session: string, person: string, at: string): Promise<void> {
  await tx
    .updateTable('session_people')
    .set({ until: at })
    .where('session', '=', session)
    .where('person', '=', person)
    .where('until', 'is', null)
    .execute()
  await tx
    .updateTable('sessions')
    .set({ active: null })
    .where('id', '=', session)
    .where('active', '=', person)
    .execute()
}
