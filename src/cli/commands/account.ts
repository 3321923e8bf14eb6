import { InputError } from '#actions/input.ts'
import { replaceFirstCode } from '#actions/people/first-code.ts'
import { resetAccount } from '#actions/people/reset-account.ts'
import { Refused } from '#actions/refused.ts'
import { secretsOfThisMachine } from '#server/secrets.ts'
import { type Where, withStore } from '../clinic-data.ts'
import type { CommandFile, World } from '../command.ts'

type Options = { readonly data?: string; readonly login: string }

/** For whoever holds the machine, when nobody can sign in to do it. */
export const account: CommandFile = {
  name: 'account',
  add: (program, world) => {
    const commands = program.command('account').description('accounts, for whoever holds this machine')
    commands
      .command('reset')
      .description('give an account a new password, printed once; signs it out everywhere, and the trail says so')
      .requiredOption('--login <name>', 'the name it signs in with')
      .option('--data <folder>', 'the data folder; the server on it must be stopped')
      .action((options: Options) => reset(options, world))
    commands
      .command('first-code')
      .description('print a new code for the first account, in place of the one before')
      .option('--data <folder>', 'the data folder; the server on it must be stopped')
      .action((options: Omit<Options, 'login'>) => newFirstCode(options, world))
  },
}

function reset({ login, ...options }: Options, world: World): Promise<void> {
  return withStore(where(options, world), async (store) => {
    const { name, password, login: found } = await resetAccount({ store, ...parts(store, world) }, login)
    world.out(`${password}\n`)
    world.err(
      `This is the new password of ${name}, who signs in as ${found}. It is shown once, and every device is signed out.\nSign in with it, then choose another under Settings, You.\n`,
    )
  })
}

function newFirstCode(options: Omit<Options, 'login'>, world: World): Promise<void> {
  return withStore(where(options, world), async (store) => {
    try {
      world.out(`${await replaceFirstCode(parts(store, world))}\n`)
    } catch (error) {
      if (error instanceof Refused) throw new InputError(error.code, 'data', error.message)
      throw error
    }
  })
}

function parts<Accounts>({ accounts }: { readonly accounts: Accounts }, world: World) {
  return { accounts, secrets: secretsOfThisMachine(), clock: { now: world.now } }
}

function where(options: Omit<Options, 'login'>, { env }: World): Where {
  return { ...options, env }
}
