import { withClinic } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'
import { table } from '../table.ts'

type Options = { readonly data?: string; readonly clinic?: string; readonly json?: boolean }

export const owed: CommandFile = {
  name: 'owed',
  add: (program, world) => {
    program
      .command('owed')
      .description('everything that is owed, earliest limit first, and what is late now')
      .option('--data <folder>', 'the data folder')
      .option('--clinic <id>', 'which clinic, when there are several')
      .option('--json', 'one JSON document on standard output')
      .action((options: Options) =>
        withClinic({ ...options, env: world.env }, async ({ store, clinic }) => {
          // What an ended server left behind is made first: nobody reads old lists here.
          while (await store.remakeNext(clinic));
          const names = new Map((await store.cases(clinic)).map((row) => [row.stream, row.name]))
          const items = (await store.owed(clinic))
            .map((row) => ({ ...row, animal: names.get(row.stream) ?? row.stream, late: row.dueBy < world.now() }))
            .sort((a, b) => (a.dueBy < b.dueBy ? -1 : 1))
          if (options.json) world.out(`${JSON.stringify(items)}\n`)
          else if (items.length === 0) world.out('Nothing is owed.\n')
          else {
            const rows = items.map(({ animal, what, who, dueBy, late, why }) => [
              animal,
              what,
              who,
              dueBy.slice(0, 10),
              late ? 'late' : '',
              why,
            ])
            world.out(table(['animal', 'what', 'who', 'due by', '', 'why'], rows))
          }
        }),
      )
  },
}
