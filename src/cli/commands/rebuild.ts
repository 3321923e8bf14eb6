import { withClinic } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'

export const rebuild: CommandFile = {
  name: 'rebuild',
  add: (program, world) => {
    program
      .command('rebuild')
      .description('make every list (owed, cases) anew from the journal')
      .option('--data <folder>', 'the data folder')
      .option('--clinic <id>', 'which clinic, when there are several')
      .action((options: { data?: string; clinic?: string }) =>
        withClinic({ ...options, env: world.env }, async ({ store, clinic }) => {
          const streams = await store.rebuild(clinic)
          const [owed, cases] = [await store.owed(clinic), await store.cases(clinic)]
          world.out(`Read ${streams} streams: ${cases.length} cases, ${owed.length} things owed.\n`)
        }),
      )
  },
}
