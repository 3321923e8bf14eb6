import { renameSync, rmSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { join } from 'node:path'
import { exportJournal as linesOf } from '#actions/journal/export-journal.ts'
import type { Store } from '#actions/store.ts'
import { withClinic } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'
import { beside, cannotWrite, makeOutputFolder, writeOutput } from '../write-output.ts'

type Options = { readonly data?: string; readonly clinic?: string; readonly out?: string }

export const exportJournal: CommandFile = {
  name: 'export',
  add: (program, world) => {
    program
      .command('export')
      .description('the whole clinic as a journal file, lossless; attachments beside it')
      .option('--data <folder>', 'the data folder')
      .option('--clinic <id>', 'which clinic, when there are several')
      .option('--out <file>', 'where to write it; standard output without attachments when none is named')
      .action((options: Options) =>
        withClinic({ ...options, env: world.env }, async ({ store, clinic }) => {
          if (options.out === undefined) {
            for await (const line of linesOf(store, clinic)) world.out(line)
            return
          }
          const lines = await writeWhole(options.out, linesOf(store, clinic))
          const files = await writeFiles(store, clinic, `${options.out}.files`)
          world.err(`Wrote ${options.out}, ${lines} lines, ${files} ${files === 1 ? 'attachment' : 'attachments'}.\n`)
        }),
      )
  },
}

/** Written beside and then renamed: a file of that name is either whole or not there. */
async function writeWhole(path: string, lines: AsyncIterable<string>): Promise<number> {
  const part = beside(path)
  const file = await open(part, 'w').catch((error) => {
    throw cannotWrite(path, error)
  })
  let count = 0
  try {
    for await (const line of lines) {
      await file.write(line)
      count += 1
    }
    if (part !== path) await file.sync()
  } catch (error) {
    await file.close()
    if (part !== path) rmSync(part, { force: true })
    throw error
  }
  await file.close()
  if (part !== path) renameSync(part, path)
  return count
}

async function writeFiles(store: Store, clinic: string, folder: string): Promise<number> {
  const hashes = await store.fileHashes(clinic)
  if (hashes.length > 0) makeOutputFolder(folder)
  for (const hash of hashes) {
    const file = await store.file(clinic, hash)
    if (file) writeOutput(join(folder, hash), file.bytes)
  }
  return hashes.length
}
