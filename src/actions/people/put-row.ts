import { z } from 'zod'
import { canonical, type Json } from '#core/journal/canonical.ts'
import { registerRows } from '#core/journal/registers.ts'
import { mayPut } from '#core/people/may-put.ts'
import { type Action, defineAction, type Role } from '../action.ts'
import { callerIn } from '../caller.ts'
import { InputError, readInput } from '../input.ts'
import { Refused } from '../refused.ts'

const input = z.strictObject({
  register: z.enum(['contact', 'clinic', 'price', 'closed-day']),
  id: z.string().min(1).max(80),
  /** Read by the register's own schema below. Null takes the row away, in all its revisions. */
  body: z.record(z.string(), z.unknown()).nullable(),
  /**
   * The revision that this one was written upon, null for a new row: refused when another stands there by now, so that
   * what a device sends late takes nobody's newer number away. Left out, it is written whatever stands.
   */
  after: z.int().min(1).nullable().optional(),
})

/** Writes one row of a register: a contact, the clinic's own page, a price, a closed day. */
export const putRow: Action<z.infer<typeof input>, { revision: number }> = defineAction({
  name: 'put-row',
  summary: 'Writes a contact, the clinic itself, a price or a closed day; the rows of before stay readable.',
  input,
  output: z.object({ revision: z.int() }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async ({ register, id, body, after }, world) => {
    const { caller, clinic } = callerIn(world)
    const roles: readonly Role[] = body === null && register === 'contact' ? ['manager'] : mayPut[register]
    if (!roles.includes(caller.role) && !(caller.keeper && roles.includes('manager'))) {
      const what = body === null ? `take a ${register} away` : `write a ${register}`
      throw new Refused(
        403,
        'not-allowed',
        `${caller.person} is ${caller.role}; to ${what} is for ${roles.join(', ')}.`,
      )
    }
    if (register === 'clinic' && (body === null || !(await isTheClinic(id, clinic, world)))) {
      throw new InputError('wrong-value', 'id', 'A clinic has one page of its own: write it under the id it has.')
    }
    const read = body === null ? null : readBody(register, body)
    if (register === 'closed-day' && read && read.day !== id) {
      throw new InputError('wrong-value', 'id', 'A closed day is written under its day, like 2026-12-25.')
    }
    if (after !== undefined) {
      const standing = (await world.store.current(clinic, register)).find((row) => row.id === id)
      if ((standing?.revision ?? null) !== after) {
        // The answer to the first try may have been lost on its way.
        const sent = standing !== undefined && standing.by === caller.person && isSame(standing.body, read)
        if (sent) return { revision: standing.revision }
        const message =
          'It was changed or taken away by somebody else after you read it. Read it again, then change it.'
        throw new Refused(409, 'changed-meanwhile', message, { path: 'after' })
      }
    }
    const { revision } = await world.store.putRegister(clinic, {
      register,
      id,
      body: read,
      by: caller.person,
      at: world.clock.now(),
    })
    return { revision }
  },
})

function isSame(one: unknown, other: unknown): boolean {
  return canonical(one as Json) === canonical(other as Json)
}

async function isTheClinic(id: string, clinic: string, { store }: { store: { registers: RegistersOf } }) {
  return (await store.registers(clinic)).every((row) => row.register !== 'clinic' || row.id === id)
}
type RegistersOf = (clinic: string) => Promise<readonly { readonly register: string; readonly id: string }[]>

function readBody(register: keyof typeof mayPut, body: unknown): Readonly<Record<string, unknown>> {
  const schema: z.ZodType<Record<string, unknown>> = z.strictObject({ body: registerRows[register] })
  return readInput(schema, { body }).body as Record<string, unknown>
}
