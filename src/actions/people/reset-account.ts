import type { World } from '../action.ts'
import { InputError } from '../input.ts'
import { staffOf } from './caller.ts'
import { drawnCode } from './drawn-code.ts'
import { loginKey, passwordAsTyped } from './signing-in.ts'

/** Who wrote it stands in the trail of the register: nobody who had signed in. */
const resetOnTheMachine = 'reset-on-the-machine'

/**
 * Gives an account a new password, for whoever holds the machine when nobody can sign in to do it. A closed account is
 * opened again; its PIN goes, and whoever is signed in with it anywhere is signed out. The trail is written first: cut
 * off in the middle, it says that it was tried, and the same command is run again. The server offers it to nobody.
 */
export async function resetAccount(world: Pick<World, 'store' | 'accounts' | 'secrets' | 'clock'>, login: string) {
  const { store, accounts, secrets, clock } = world
  const account = await accounts.byLogin(loginKey(login))
  if (!account) throw await unknownLogin(world, login)
  const { clinic, person } = account
  const body = (await staffOf(store, clinic)).get(person)
  if (!body) throw new Error(`${person} has an account and stands in no register.`)
  const at = clock.now()
  await store.putRegister(clinic, { register: 'person', id: person, body, by: resetOnTheMachine, at })
  const password = drawnCode(secrets, 4)
  const hash = await secrets.hashPassword(passwordAsTyped(password))
  await accounts.put({ ...account, password: hash, active: true })
  await accounts.setPin(clinic, person, null)
  await accounts.leaveEverywhere(clinic, person, at)
  return { login: account.login, name: body.name, password }
}

async function unknownLogin({ store, accounts }: Pick<World, 'store' | 'accounts'>, login: string) {
  const logins: string[] = []
  for (const clinic of await store.clinics()) logins.push(...(await accounts.all(clinic)).map((one) => one.login))
  const there = logins.length === 0 ? 'nobody has an account yet' : `there are: ${logins.sort().join(', ')}`
  return new InputError('unknown-login', 'login', `Nobody signs in as "${login}" here; ${there}.`)
}
