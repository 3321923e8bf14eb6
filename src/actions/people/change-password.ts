import { z } from 'zod'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { Refused } from '../refused.ts'
import { passwordAsTyped, passwordSchema, refuseWeakPassword } from './signing-in.ts'
import { countTry, delayOfAccount, forgetTries } from './tries.ts'

/** Changes one's own password; at every other device one is signed out. */
export const changePassword = defineAction({
  name: 'change-password',
  summary: 'Changes the own password, with the old one; signs this person out at every other device.',
  input: z.strictObject({ password: z.string().min(1).max(200), newPassword: passwordSchema }),
  output: z.object({ changed: z.literal(true) }),
  may: 'signed-in',
  run: async ({ password, newPassword }, world) => {
    const { caller, clinic } = callerIn(world)
    const { accounts, secrets, clock } = world
    const account = await accounts.byPerson(clinic, caller.person)
    const key = `password ${caller.session} ${caller.person}`
    await countTry(world, key, delayOfAccount)
    if (!account || !(await secrets.passwordFits(account.password, passwordAsTyped(password)))) {
      throw new Refused(403, 'wrong-password', 'That is not the password you have now.', { path: 'password' })
    }
    refuseWeakPassword(newPassword, account.login, 'newPassword')
    await forgetTries(world, [key])
    await accounts.setPassword(clinic, caller.person, await secrets.hashPassword(passwordAsTyped(newPassword)))
    await accounts.leaveEverywhere(clinic, caller.person, clock.now(), caller.session)
    return { changed: true as const }
  },
})
