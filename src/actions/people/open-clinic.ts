import { z } from 'zod'
import { clinicRow, personRow } from '#core/journal/registers.ts'
import { defineAction, type World } from '../action.ts'
import { InputError } from '../input.ts'
import { readJournal } from '../journal/read-journal.ts'
import { Refused } from '../refused.ts'
import {
  deviceSchema,
  loginKey,
  loginSchema,
  newId,
  passwordAsTyped,
  passwordSchema,
  refuseWeakPassword,
  signInAt,
  whoSchema,
} from './signing-in.ts'

const input = z.strictObject({
  code: z.string().min(1).max(40),
  /** `this-clinic`: a journal was imported before anybody had an account; its clinic is opened as it is. */
  choice: z.enum(['invented-practice', 'empty-clinic', 'this-clinic']),
  /** The page of the new clinic; null for the other choices. */
  clinic: clinicRow.nullable(),
  person: personRow,
  login: loginSchema,
  password: passwordSchema,
  device: deviceSchema,
})
type Opening = z.infer<typeof input>

/** The first run: makes the clinic and its first account with the one-time code, and signs that person in. */
export const openClinic = defineAction({
  name: 'open-clinic',
  summary: 'Opens the clinic with the one-time code printed at the first start, and signs its first person in.',
  input,
  output: whoSchema,
  may: 'anyone',
  run: async (opening, world) => {
    await refuseOpened(world)
    refuseWeakPassword(opening.password, opening.login)
    const who = await world.firstCode.use(opening.code, () => open(opening, world))
    if (who !== false) return who
    const message =
      'That is not the code. It stands where Quiet Ear was started; quiet-ear account first-code prints a new one there.'
    throw new Refused(403, 'wrong-code', message, { path: 'code' })
  },
})

async function refuseOpened({ accounts }: World): Promise<void> {
  if (!(await accounts.any())) return
  throw new Refused(409, 'already-open', 'The clinic is open already: sign in, or ask its manager for an account.')
}

async function open(opening: Opening, world: World) {
  await refuseOpened(world)
  const { store, accounts, clock, secrets } = world
  const clinic = await makeClinic(opening, world)
  const person = newId(secrets, 'person')
  const password = await secrets.hashPassword(passwordAsTyped(opening.password))
  await store.putRegister(clinic, { register: 'person', id: person, body: opening.person, by: person, at: clock.now() })
  const account = { clinic, person, login: loginKey(opening.login), password, madeAt: clock.now() }
  if (!(await accounts.first(account))) await refuseOpened(world)
  return signInAt(world, { clinic, person, device: opening.device }, undefined)
}

/** The clinic's id. Cut off in the middle, the next try goes on with what is there. */
async function makeClinic({ choice, clinic: row }: Opening, world: World): Promise<string> {
  const { store, clock, secrets, invented } = world
  const there = await store.clinics()
  if (choice === 'this-clinic') return theOnly(there, world)
  if (choice === 'invented-practice') {
    if (there.some((clinic) => clinic !== invented.clinic)) throw otherThere()
    if (there.length === 0) await restoreInvented(world)
    return invented.clinic
  }
  if (!row) throw new InputError('missing-field', 'clinic', 'clinic is missing; write the page of the new clinic.')
  // Nothing was written into a clinic that was begun and cut off: it is opened with what is said now.
  const begun = there.length === 1 ? await begunBefore(there[0] ?? '', world) : undefined
  if (there.length > 0 && begun === undefined) throw otherThere()
  const id = begun ?? newId(secrets, 'clinic')
  await store.putRegister(id, { register: 'clinic', id, body: row, by: 'first-run', at: clock.now() })
  return id
}

async function theOnly(there: readonly string[], { store }: World): Promise<string> {
  const [only, ...others] = there
  const row = only === undefined ? undefined : (await store.current(only, 'clinic'))[0]
  if (only !== undefined && others.length === 0 && row) return only
  throw new Refused(409, 'no-such-clinic', 'There is no single clinic here to be opened as it is.', { path: 'choice' })
}

async function restoreInvented({ store, clock, invented }: World): Promise<void> {
  const { entries, rows, keptAside } = readJournal(invented.journal(clock.now()))
  await store.restore(invented.clinic, each(entries), rows, keptAside)
}

async function* each<Item>(items: readonly Item[]): AsyncGenerator<Item> {
  yield* items
}

async function begunBefore(clinic: string, { store }: World): Promise<string | undefined> {
  for await (const _ of store.entries(clinic)) return undefined
  const rows = await store.registers(clinic)
  return rows.every(({ register }) => register === 'clinic' || register === 'person') ? clinic : undefined
}

function otherThere(): Refused {
  const message = 'There is a clinic here already, and the invented practice is never mixed with one: open it as it is.'
  return new Refused(409, 'clinic-there', message, { path: 'choice' })
}
