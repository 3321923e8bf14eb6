import { z } from 'zod'
import { clinicRow } from '#core/journal/registers.ts'
import { defineAction } from '../action.ts'

export const readFrontDoor = defineAction({
  name: 'read-front-door',
  summary: 'Whether a first account is still to be made, whose clinic this is, and how this device is connected.',
  input: z.strictObject({}),
  output: z.object({
    state: z.enum(['first-run', 'sign-in']),
    clinicName: z.string().nullable(),
    invented: z.boolean(),
    connection: z.enum(['this-machine', 'plain', 'tls']),
    version: z.string(),
  }),
  may: 'anyone',
  run: async (_, { store, accounts, clinic, door, version, invented }) => {
    const row = clinic === null ? undefined : (await store.current(clinic, 'clinic'))[0]
    return {
      state: (await accounts.any()) ? 'sign-in' : 'first-run',
      clinicName: row ? clinicRow.parse(row.body).name : null,
      invented: clinic === invented.clinic,
      connection: door.connection,
      version,
    }
  },
})
