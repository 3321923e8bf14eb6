import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { InputError } from '#actions/input.ts'
import type { ReadJournal } from '#actions/journal/read-journal.ts'
import type { Store } from '#actions/store.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { openStore } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'
import { readJournalFile } from '../journal-files.ts'

export const importJournal: CommandFile = {
  name: 'import',
  add: (program, world) => {
    program
      .command('import')
      .description('a journal file into an empty clinic')
      .argument('<file>', 'the journal file; attachments are looked for in <file>.files')
      .option('--data <folder>', 'the data folder')
      .action(async (file: string, options: { data?: string }) => {
        // Read and proved whole before the store is opened: an edited or cut file changes nothing.
        const journal = await readJournalFile(file)
        const attachments = readAttachments(journal, `${file}.files`)
        const store = await openStore({ ...options, env: world.env })
        try {
          await store.restore(journal.clinic, each(journal.entries), journal.rows, journal.keptAside)
          for (const one of attachments) await store.putFile(journal.clinic, one.hash, one.mediaType, one.bytes)
          world.err(await said(store, journal))
        } finally {
          await store.close()
        }
      })
  },
}

async function* each(entries: readonly StoredEntry[]): AsyncGenerator<StoredEntry> {
  yield* entries
}

function readAttachments({ files }: ReadJournal, folder: string) {
  return files.map(({ hash, mediaType }) => {
    const path = join(folder, hash)
    if (!existsSync(path))
      throw new InputError(
        'attachment-missing',
        hash,
        `The attachment ${hash} is not in ${folder}; copy the folder beside the journal file.`,
      )
    const bytes = readFileSync(path)
    if (hashBytes(bytes) !== hash)
      throw new InputError(
        'attachment-changed',
        hash,
        `The attachment ${hash} in ${folder} was changed; its bytes do not fit its name.`,
      )
    return { hash, mediaType, bytes }
  })
}

async function said(store: Store, { clinic, entries }: ReadJournal): Promise<string> {
  const cases = await store.cases(clinic)
  return `Imported clinic ${clinic}: ${entries.length} entries, ${cases.length} ${cases.length === 1 ? 'case' : 'cases'}.\n`
}
