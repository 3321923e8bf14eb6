import { z } from 'zod'
import { defineAction } from '../action.ts'
import { InputError } from '../input.ts'
import { Refused } from '../refused.ts'
import { provedOf, staffOf } from './caller.ts'
import { idSchema, loginKey, loginSchema, passwordAsTyped, passwordSchema, refuseWeakPassword } from './signing-in.ts'

/** Gives a person an account, or changes its login, password or state. A new password or a closed account signs out. */
export const putAccount = defineAction({
  name: 'put-account',
  summary: 'Gives a person an account with a first password, or changes, closes or reopens it.',
  input: z.strictObject({
    person: idSchema,
    login: loginSchema,
    /** Null keeps the password there is. */
    password: passwordSchema.nullable(),
    active: z.boolean().default(true),
  }),
  output: z.object({ person: z.string(), login: z.string(), active: z.boolean() }),
  may: ['manager'],
  run: async ({ person, login: given, password, active }, world) => {
    const { caller, clinic } = provedOf(world)
    const { store, accounts, secrets, clock } = world
    if (!(await staffOf(store, clinic)).has(person)) {
      throw new Refused(404, 'no-such-person', `Nobody here is ${person}: write the person first.`, { path: 'person' })
    }
    if (person === caller.person && !active) {
      throw new Refused(409, 'own-account', 'Nobody closes their own account: ask somebody else.', { path: 'active' })
    }
    const login = loginKey(given)
    if (password !== null) refuseWeakPassword(password, login)
    const before = await accounts.byPerson(clinic, person)
    const hash = password === null ? before?.password : await secrets.hashPassword(passwordAsTyped(password))
    if (hash === undefined) throw new InputError('missing-field', 'password', 'A new account needs a first password.')
    const madeAt = before?.madeAt ?? clock.now()
    if (!(await accounts.put({ clinic, person, login, password: hash, active, madeAt }))) {
      throw new Refused(409, 'login-taken', `Somebody else signs in as ${login}; choose another login.`, {
        path: 'login',
      })
    }
    const stays = person === caller.person ? caller.session : undefined
    if (password !== null || !active) await accounts.leaveEverywhere(clinic, person, clock.now(), stays)
    return { person, login, active }
  },
})
