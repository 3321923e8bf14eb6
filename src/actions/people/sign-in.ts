import { z } from 'zod'
import { defineAction } from '../action.ts'
import { Refused } from '../refused.ts'
import { deviceSchema, loginKey, loginSchema, passwordAsTyped, signInAt, whoSchema } from './signing-in.ts'
import { countSignInTry, forgetTries } from './tries.ts'

/** Signs one person in at this device, beside those who are signed in there already. */
export const signIn = defineAction({
  name: 'sign-in',
  summary: 'Signs a person in at this device, beside those already signed in there.',
  input: z.strictObject({ login: loginSchema, password: z.string().min(1).max(200), device: deviceSchema }),
  output: whoSchema,
  may: 'anyone',
  run: async ({ login, password, device }, world) => {
    const { session, account, keys } = await countSignInTry(world, loginKey(login))
    const hash = account?.active ? account.password : null
    if (!(await world.secrets.passwordFits(hash, passwordAsTyped(password))) || !account) {
      throw new Refused(401, 'wrong-login', 'The name and the password do not fit together; try again.')
    }
    await forgetTries(world, keys)
    const { clinic, person } = account
    return signInAt(world, { clinic, person, device }, session)
  },
})
