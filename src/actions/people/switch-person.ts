import { z } from 'zod'
import { pinSchema, sameHash } from '#core/people/pin.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import { Refused } from '../refused.ts'
import { idSchema } from './signing-in.ts'
import { countTry, delayOfAccount, forgetTries } from './tries.ts'

/** Another person of this device takes over with their PIN. Wrong tries slow down this device only. */
export const switchPerson = defineAction({
  name: 'switch-person',
  summary: 'Another person signed in at this device takes over with their PIN.',
  input: z.strictObject({ person: idSchema, pin: pinSchema }),
  output: z.object({ active: z.string() }),
  may: 'signed-in',
  ofDevice: true,
  run: async ({ person, pin }, world) => {
    const { caller, clinic } = callerIn(world)
    const { accounts, secrets } = world
    const account = caller.people.includes(person) ? await accounts.byPerson(clinic, person) : undefined
    if (!account) {
      const message = `${person} is not signed in at this device; sign in here with the password first.`
      throw new Refused(403, 'not-enrolled', message, { path: 'person' })
    }
    if (account.pin === null) {
      const message = 'This person has set no PIN yet; sign in with the password.'
      throw new Refused(409, 'no-pin', message, { path: 'person' })
    }
    const key = `pin ${caller.session} ${person}`
    await countTry(world, key, delayOfAccount)
    const { salt, cost, hash } = account.pin
    if (!sameHash(await secrets.pinHash(pin, salt, cost), hash)) {
      throw new Refused(403, 'wrong-pin', 'That is not the PIN; try again, or sign in with the password.', {
        path: 'pin',
      })
    }
    await forgetTries(world, [key])
    await accounts.activate(caller.session, person)
    return { active: person }
  },
})
