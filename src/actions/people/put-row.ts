import { z } from 'zod'
import { registerRows } from '#core/journal/registers.ts'
import { type Action, defineAction, type Role } from '../action.ts'
import { callerIn } from '../caller.ts'
import { InputError, readInput } from '../input.ts'
import { Refused } from '../refused.ts'

/** Who writes which register; people are written by `put-person`. */
const mayPut = {
  contact: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  clinic: ['manager', 'desk'],
  price: ['manager', 'desk'],
  'closed-day': ['manager', 'desk'],
} as const satisfies Record<string, readonly Role[]>

const input = z.strictObject({
  register: z.enum(['contact', 'clinic', 'price', 'closed-day']),
  id: z.string().min(1).max(80),
  /** Read by the register's own schema below. Null takes the row away, in all its revisions. */
  body: z.record(z.string(), z.unknown()).nullable(),
})

/** Writes one row of a register: a contact, the clinic's own page, a price, a closed day. */
export const putRow: Action<z.infer<typeof input>, { revision: number }> = defineAction({
  name: 'put-row',
  summary: 'Writes a contact, the clinic itself, a price or a closed day; the rows of before stay readable.',
  input,
  output: z.object({ revision: z.int() }),
  may: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  run: async ({ register, id, body }, world) => {
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

async function isTheClinic(id: string, clinic: string, { store }: { store: { registers: RegistersOf } }) {
  return (await store.registers(clinic)).every((row) => row.register !== 'clinic' || row.id === id)
}
type RegistersOf = (clinic: string) => Promise<readonly { readonly register: string; readonly id: string }[]>

function readBody(register: keyof typeof mayPut, body: unknown): Readonly<Record<string, unknown>> {
  const schema: z.ZodType<Record<string, unknown>> = z.strictObject({ body: registerRows[register] })
  return readInput(schema, { body }).body as Record<string, unknown>
}
