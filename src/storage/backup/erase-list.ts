import { existsSync, readFileSync } from 'node:fs'
import type Database from 'libsql'
import { z } from 'zod'
import { registers, type Store, StoreError } from '#actions/store.ts'
import { readEntry } from '#core/journal/accept.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry } from '#core/journal/entry.ts'

/** Kept beside the backups, not in one: an older backup must not bring back what was erased after it. */
export const eraseListName = 'erasures.jsonl'

const erasedRow = z.strictObject({
  clinic: z.string(),
  register: z.enum(registers),
  id: z.string(),
  by: z.string(),
  at: z.string(),
})

/** An order to erase an entry, as it stands in the journal; or a row of a register that was taken away. */
export type Erasure =
  | { readonly kind: 'entry'; readonly clinic: string; readonly order: Entry }
  | { readonly kind: 'row'; readonly clinic: string; readonly row: z.infer<typeof erasedRow> }

/** One erasure on each line. A file that is not there is an empty list. */
export function readErasures(path: string): Erasure[] {
  if (!existsSync(path)) return []
  const lines = readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
  return lines.map((line, at) => {
    const value = jsonOf(line)
    const row = erasedRow.safeParse(value)
    if (row.success) return { kind: 'row', clinic: row.data.clinic, row: row.data }
    const read = readEntry(value)
    if (read.kind === 'answer' && read.answer.kind === 'erasure') {
      return { kind: 'entry', clinic: read.answer.clinic, order: read.answer }
    }
    throw new StoreError('broken', `Line ${at + 1} of ${path} is no erasure; nothing was restored.`)
  })
}

/** Two lists as one, each erasure once. */
export function together(...lists: readonly (readonly Erasure[])[]): Erasure[] {
  return [...new Map(lists.flat().map((one) => [textOf(one), one])).values()]
}

export function textOf(erasure: Erasure): string {
  return canonical((erasure.kind === 'row' ? erasure.row : erasure.order) as unknown as Json)
}

/** Every erasure that a data file knows of. */
export function erasuresIn(database: Database.Database): Erasure[] {
  const orders = database
    .prepare("select clinic, header, body from entries where kind = 'erasure' order by clinic, position")
    .all() as { clinic: string; header: string; body: string | null }[]
  const rows = database
    .prepare(
      `select clinic, register, id, written_by as "by", written_at as "at" from register_rows as row
       where body is null and revision = (select max(revision) from register_rows as other
         where other.clinic = row.clinic and other.register = row.register and other.id = row.id)
       order by clinic, register, id`,
    )
    .all() as z.infer<typeof erasedRow>[]
  return [
    ...orders.map(({ clinic, header, body }): Erasure => {
      return { kind: 'entry', clinic, order: { ...JSON.parse(header), body: JSON.parse(body ?? 'null') } as Entry }
    }),
    // Picked by name: a driver may add fields of its own to a row.
    ...rows.map(({ clinic, register, id, by, at }): Erasure => {
      return { kind: 'row', clinic, row: { clinic, register, id, by, at } }
    }),
  ]
}

/**
 * Erases in a restored clinic what was erased after its backup; a row that was written again since stays. Returns what
 * was erased now.
 */
export async function eraseAgain(
  store: Store,
  clinic: string,
  erasures: readonly Erasure[],
  at: string,
): Promise<string[]> {
  const own = erasures.filter((one) => one.clinic === clinic)
  const orders = own.flatMap((one) => (one.kind === 'entry' ? [one.order] : []))
  const erased = orders.length === 0 ? [] : await store.applyErasures(clinic, orders, at)
  const rows = await store.registers(clinic)
  for (const one of own) {
    if (one.kind !== 'row') continue
    const { register, id, by, at: when } = one.row
    const newest = rows.findLast((row) => row.register === register && row.id === id)
    if (!newest || newest.body === null || newest.at > when) continue
    await store.putRegister(clinic, { register, id, body: null, by, at: when })
    erased.push(`${register} ${id}`)
  }
  return erased
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return null
  }
}
