import type { Json } from '#core/journal/canonical.ts'
import { type JournalLine, JournalWriter, type Row } from '#core/journal/journal-file.ts'
import type { RegisterRow, Store } from '../store.ts'

const order = ['clinic', 'closed-day', 'contact', 'person', 'price'] as const

/** Registers in one fixed order, so that the same clinic always gives the same bytes. */
function sorted(rows: readonly RegisterRow[]): Row[] {
  const key = (row: RegisterRow) => `${order.indexOf(row.register)} ${row.id} ${String(row.revision).padStart(9, '0')}`
  return [...rows]
    .sort((a, b) => (key(a) < key(b) ? -1 : 1))
    .map((row) => ({ ...row, body: row.body as { readonly [key: string]: Json } | null }))
}

/**
 * The whole clinic as the lines of a journal file, one at a time: what is imported into an empty clinic and exported
 * again is identical to the byte.
 */
export async function* exportJournal(store: Store, clinic: string): AsyncGenerator<string> {
  const writer = new JournalWriter()
  const head: JournalLine = { type: 'quiet-ear', format: 1, clinic }
  yield writer.line(head)
  for (const row of sorted(await store.registers(clinic))) yield writer.line({ type: 'row', ...row })
  for await (const stored of store.entries(clinic)) yield writer.line({ type: 'entry', ...stored })
  for (const aside of await store.keptAside(clinic)) yield writer.line({ type: 'kept-aside', ...aside })
  for (const hash of await store.fileHashes(clinic)) {
    const file = await store.file(clinic, hash)
    if (file) yield writer.line({ type: 'file', hash, mediaType: file.mediaType })
  }
  yield writer.end()
}
