import { type ReadJournal, readJournal } from '#actions/journal/read-journal.ts'
import { readText } from './read-input.ts'

/** Reads a journal or case file, or standard input for `-`, and proves it unbroken. */
export async function readJournalFile(path: string): Promise<ReadJournal> {
  return readJournal(await readText(path))
}
