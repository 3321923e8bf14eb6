import type { StoredEntry } from '#core/journal/entry.ts'
import { type JournalLine, JournalReader, type Row } from '#core/journal/journal-file.ts'

/** A journal file, read whole and found unbroken. */
export type ReadJournal = {
  readonly clinic: string
  readonly rows: readonly Row[]
  readonly entries: readonly StoredEntry[]
  readonly keptAside: readonly { readonly id: string; readonly receivedAt: string; readonly text: string }[]
  readonly files: readonly { readonly hash: string; readonly mediaType: string }[]
}

/** Reads a journal file line by line. Throws JournalFileBroken, naming the line, before anything is used of it. */
export function readJournal(text: string): ReadJournal {
  const reader = new JournalReader()
  const lines: JournalLine[] = []
  const texts = text.split('\n')
  // The last line ends with a line break; what follows it is no line.
  if (texts.at(-1) === '') texts.pop()
  for (const one of texts) {
    const line = reader.line(one)
    if (line) lines.push(line)
  }
  reader.finish()
  const of = <Type extends JournalLine['type']>(type: Type) =>
    lines.filter((line): line is Extract<JournalLine, { type: Type }> => line.type === type)
  return {
    clinic: of('quiet-ear')[0]?.clinic ?? '',
    rows: of('row').map(({ type: _, ...row }) => row),
    entries: of('entry').map(({ type: _, ...entry }) => entry),
    keptAside: of('kept-aside').map(({ type: _, ...aside }) => aside),
    files: of('file').map(({ type: _, ...file }) => file),
  }
}
