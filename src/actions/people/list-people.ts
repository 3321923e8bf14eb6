import { z } from 'zod'
import { clinicRow, personRow } from '#core/journal/registers.ts'
import { leaveSchema, standsFor } from '#core/people/leave.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { defineAction, type World } from '../action.ts'
import { callerIn } from '../caller.ts'
import { staffOf } from './caller.ts'

/** Everybody of the clinic, who may sign in, who is away, and who does today what they owe. */
export const listPeople = defineAction({
  name: 'list-people',
  summary: 'Everybody of the clinic: role, account, leave, and who stands in for whom today.',
  input: z.strictObject({}),
  output: z.object({
    today: z.string(),
    people: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        role: personRow.shape.role,
        letters: z.string().nullable(),
        /** Null where there is no account, and for everybody but the keepers of the house and the person themselves. */
        login: z.string().nullable(),
        account: z.enum(['none', 'active', 'closed']),
        keeper: z.boolean(),
        /** Who does today what this person owes; the person, unless away. */
        today: z.string(),
      }),
    ),
    leaves: z.array(leaveSchema.extend({ id: z.string(), by: z.string(), at: z.string() })),
  }),
  may: 'signed-in',
  run: async (_, world) => {
    const { caller, clinic } = callerIn(world)
    const { store, accounts } = world
    const accountOf = new Map((await accounts.all(clinic)).map((account) => [account.person, account]))
    const leaves = await accounts.leaves(clinic)
    const today = await todayAt(clinic, world)
    const people = [...(await staffOf(store, clinic))].map(([id, row]) => {
      const account = accountOf.get(id)
      const seen = caller.keeper || caller.person === id
      return {
        id,
        ...row,
        login: seen ? (account?.login ?? null) : null,
        account: account === undefined ? ('none' as const) : account.active ? ('active' as const) : ('closed' as const),
        keeper: row.role === 'manager' || account?.opened === true,
        today: standsFor(id, today, leaves),
      }
    })
    return { today, people, leaves }
  },
})

/** The day it is in the clinic's zone. */
async function todayAt(clinic: string, { store, clock }: World): Promise<string> {
  const row = (await store.current(clinic, 'clinic'))[0]
  const zone = row ? clinicRow.parse(row.body).zone : 'UTC'
  return dayOf({ at: clock.now(), zone })
}
