import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { InputError } from '#actions/input.ts'
import { databaseElsewhere } from '#server/backups.ts'
import { backUp } from '#storage/backup/back-up.ts'
import { dataFileName } from '#storage/sqlite/open.ts'
import packageFile from '../../../package.json' with { type: 'json' }
import { dataFolder } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'

export const backup: CommandFile = {
  name: 'backup',
  add: (program, world) => {
    program
      .command('backup')
      .description('copy everything of the data folder as it stands now, also while the server runs on it')
      .option('--data <folder>', 'the data folder')
      .option('--to <folder>', 'where the backups stand; best on another disk (in the data folder without it)')
      .option('--json', 'one JSON document on standard output')
      .action(async (options: { data?: string; to?: string; json?: boolean }) => {
        if (world.env.DATABASE_URL && options.data === undefined) {
          throw new InputError('database-elsewhere', 'data', databaseElsewhere)
        }
        const data = dataFolder({ ...options, env: world.env })
        if (!existsSync(join(data, dataFileName))) {
          throw new InputError('clinic-missing', 'data', `There is no clinic in the folder ${data}.`)
        }
        const into = options.to ?? join(data, 'backups')
        const { folder, about } = await backUp({ data, into, at: world.now(), version: packageFile.version })
        if (options.json) world.out(`${JSON.stringify({ folder, ...about })}\n`)
        else {
          const entries = about.clinics.reduce((sum, one) => sum + one.entries, 0)
          world.out(`${folder}: ${entries} entries, ${(about.bytes / 1024 / 1024).toFixed(1)} MiB.\n`)
        }
      })
  },
}
