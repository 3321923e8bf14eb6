import { readFileSync } from 'node:fs'
import { InputError } from '#actions/input.ts'
import { type ReadJournal, readJournal } from '#actions/journal/read-journal.ts'

/** Reads a journal or case file from the disk and proves it unbroken. */
export function readJournalFile(path: string): ReadJournal {
  return readJournal(readTextFile(path))
}

function readTextFile(path: string): string {
  try {
    return readFileSync(path === '-' ? 0 : path, 'utf8')
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'there is no such file' : (error as Error).message
    throw new InputError('cannot-read', path, `Cannot read ${path}: ${why}.`)
  }
}
