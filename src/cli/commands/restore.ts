import { dirname, join } from 'node:path'
import { InputError } from '#actions/input.ts'
import { project } from '#actions/journal/project.ts'
import { StoreError } from '#actions/store.ts'
import { type Erasure, eraseListName, readErasures } from '#storage/backup/erase-list.ts'
import { checkBackup, restoreBackup } from '#storage/backup/restore-backup.ts'
import { dataFolder } from '../clinic-data.ts'
import { type CommandFile, Exit, type World } from '../command.ts'

type Options = { readonly data?: string; readonly erasures?: string[]; readonly check?: boolean }

export const restore: CommandFile = {
  name: 'restore',
  add: (program, world) => {
    program
      .command('restore')
      .description(
        'a backup into a new data folder; what was erased since is erased again, and everybody signs in anew',
      )
      .argument('<backup>', 'the folder of one backup')
      .option('--data <folder>', 'the data folder to be made')
      .option('--erasures <file...>', `further erase lists; the ${eraseListName} beside the backup is always read`)
      .option('--check', 'only read the backup through; status 3 when it is broken')
      .action((backup: string, options: Options) =>
        options.check ? check(backup, world) : put(backup, options, world),
      )
  },
}

async function check(backup: string, world: World): Promise<void> {
  try {
    const { at, clinics } = await checkBackup({ backup, project })
    const entries = clinics.reduce((sum, one) => sum + one.entries, 0)
    world.out(`The backup of ${at} is whole: ${entries} entries, every chain verifies.\n`)
  } catch (error) {
    if (!(error instanceof StoreError) || error.code !== 'broken') throw error
    world.err(`${error.message}\n`)
    throw new Exit(3)
  }
}

async function put(backup: string, options: Options, world: World): Promise<void> {
  if (world.env.DATABASE_URL && options.data === undefined) {
    throw new InputError('database-elsewhere', 'data', 'A backup goes into a data folder: name one with --data.')
  }
  const data = dataFolder({ ...options, env: world.env })
  const lists = [join(dirname(backup), eraseListName), ...(options.erasures ?? [])]
  const erasures: Erasure[] = lists.flatMap(readErasures)
  const { about, erased } = await restoreBackup(data, erasures, { backup, project, at: world.now() })
  const entries = about.clinics.reduce((sum, one) => sum + one.entries, 0)
  world.err(`Restored the backup of ${about.at} into ${data}: ${entries} entries, every chain verifies.\n`)
  if (erased.length > 0) world.err(`Erased again, as ordered after the backup: ${erased.length}.\n`)
}
