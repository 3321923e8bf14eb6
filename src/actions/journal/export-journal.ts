import { type JournalLine, JournalWriter, type Row, rowsInOrder } from '#core/journal/journal-file.ts'
import type { Store } from '../store.ts'

/**
 * The whole clinic as the lines of a journal file, one at a time: what is imported into an empty clinic and exported
 * again is identical to the byte.
 */
export async function* exportJournal(store: Store, clinic: string): AsyncGenerator<string> {
  const writer = new JournalWriter()
  const head: JournalLine = { type: 'quiet-ear', format: 1, clinic }
  yield writer.line(head)
  const rows = (await store.registers(clinic)) as readonly Row[]
  for (const row of rowsInOrder(rows)) yield writer.line({ type: 'row', ...row })
  for await (const stored of store.entries(clinic)) yield writer.line({ type: 'entry', ...stored })
  for (const aside of await store.keptAside(clinic)) yield writer.line({ type: 'kept-aside', ...aside })
  for (const hash of await store.fileHashes(clinic)) {
    const file = await store.file(clinic, hash)
    if (file) yield writer.line({ type: 'file', hash, mediaType: file.mediaType })
  }
  yield writer.end()
}
