import { exportJournal } from '#actions/journal/export-journal.ts'
import { StoreError } from '#actions/store.ts'
import { JournalFileBroken, JournalReader } from '#core/journal/journal-file.ts'
import { withClinic } from '../clinic-data.ts'
import { type CommandFile, Exit, type World } from '../command.ts'
import { readText } from '../read-input.ts'

type Options = { readonly data?: string; readonly clinic?: string; readonly json?: boolean }
type Found =
  | { readonly ok: true; readonly entries: number }
  | { readonly ok: false; readonly line: number | null; readonly entry: string | undefined; readonly message: string }

export const verify: CommandFile = {
  name: 'verify',
  add: (program, world) => {
    program
      .command('verify')
      .description('walk the hash chains; status 3 at the first break, naming the entry')
      .argument('[file]', 'a journal or case file; the data folder when none is named')
      .option('--data <folder>', 'the data folder')
      .option('--clinic <id>', 'which clinic, when there are several')
      .option('--json', 'one JSON document on standard output')
      .action(async (file: string | undefined, options: Options) => {
        const found = file === undefined ? await ofData(options, world) : await walk(linesOf(await readText(file)))
        say(found, options.json ?? false, world)
        if (!found.ok) throw new Exit(3)
      })
  },
}

/** The data folder is verified through the very lines it would export: registers, entries, what was kept aside. */
function ofData(options: Options, world: World): Promise<Found> {
  return withClinic({ ...options, env: world.env }, ({ store, clinic }) =>
    walk(
      (async function* () {
        for await (const line of exportJournal(store, clinic)) yield line.slice(0, -1)
      })(),
    ),
  )
}

async function* linesOf(text: string): AsyncGenerator<string> {
  const lines = text.split('\n')
  if (lines.at(-1) === '') lines.pop()
  yield* lines
}

async function walk(lines: AsyncIterable<string>): Promise<Found> {
  const reader = new JournalReader()
  let entries = 0
  try {
    for await (const line of lines) if (reader.line(line)?.type === 'entry') entries += 1
    reader.finish()
  } catch (error) {
    // What the store itself cannot read is found broken too; its sentence names the entry.
    if (error instanceof StoreError && error.code === 'broken') {
      return { ok: false, line: null, entry: undefined, message: error.message }
    }
    if (!(error instanceof JournalFileBroken)) throw error
    return { ok: false, line: error.line, entry: error.entry, message: error.message }
  }
  return { ok: true, entries }
}

function say(found: Found, json: boolean, world: World): void {
  if (json) world.out(`${JSON.stringify(found)}\n`)
  else if (found.ok) world.out(`Every chain verifies: ${found.entries} entries.\n`)
  if (found.ok) return
  const entry = found.entry === undefined ? '' : ` Entry ${found.entry}.`
  world.err(
    `${found.message}.${entry} Nothing before it is in doubt; restore a copy from before the change and import what came after.\n`,
  )
}
