import { z } from 'zod'
import { personRow } from '#core/journal/registers.ts'
import { defineAction } from '../action.ts'
import { Refused } from '../refused.ts'
import { provedOf, staffOf } from './caller.ts'
import { idSchema, newId } from './signing-in.ts'

/** Writes a person of the clinic: name, role, letters. Nobody changes their own role. */
export const putPerson = defineAction({
  name: 'put-person',
  summary: 'Writes a person of the clinic: name, role and letters. A new one when id is null.',
  input: z.strictObject({ id: idSchema.nullable(), body: personRow }),
  output: z.object({ id: z.string(), revision: z.int() }),
  may: ['manager'],
  run: async ({ id: given, body }, world) => {
    const { caller, clinic } = provedOf(world)
    const { store, secrets, clock } = world
    const before = given === null ? undefined : (await staffOf(store, clinic)).get(given)
    if (given !== null && !before) throw new Refused(404, 'no-such-person', `Nobody here is ${given}.`, { path: 'id' })
    if (given === caller.person && before?.role !== body.role) {
      throw new Refused(409, 'own-role', 'Nobody changes their own role: ask somebody else.', { path: 'body.role' })
    }
    const id = given ?? newId(secrets, 'person')
    const row = { register: 'person', id, body, by: caller.person, at: clock.now() } as const
    const { revision } = await store.putRegister(clinic, row)
    return { id, revision }
  },
})
