import { bytesToHex } from '@noble/hashes/utils.js'
import { z } from 'zod'
import { pinCost, pinSchema } from '#core/people/pin.ts'
import { defineAction } from '../action.ts'
import { provedOf } from './caller.ts'

/** Sets one's own PIN, or takes it away with null. */
export const setPin = defineAction({
  name: 'set-pin',
  summary: 'Sets the PIN with which one takes over at a device where one is signed in; null takes it away.',
  input: z.strictObject({ pin: pinSchema.nullable() }),
  output: z.object({ set: z.boolean() }),
  may: 'signed-in',
  run: async ({ pin }, world) => {
    const { caller, clinic } = provedOf(world)
    const { accounts, secrets } = world
    const salt = bytesToHex(secrets.bytes(16))
    const verifier = pin === null ? null : { salt, hash: await secrets.pinHash(pin, salt, pinCost), cost: pinCost }
    await accounts.setPin(clinic, caller.person, verifier)
    return { set: pin !== null }
  },
})
