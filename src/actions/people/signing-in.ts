import { bytesToHex } from '@noble/hashes/utils.js'
import { z } from 'zod'
import { clinicRow, personRow } from '#core/journal/registers.ts'
import { pinVerifierSchema } from '#core/people/pin.ts'
import type { World } from '../action.ts'
import { InputError } from '../input.ts'
import { Refused } from '../refused.ts'
import type { Session } from './accounts.ts'
import { hashOf, isOpen, peopleOf, staffOf } from './caller.ts'

export const idSchema = z
  .string()
  .min(1)
  .max(80)
  .regex(/^\P{Cc}+$/u, 'must hold no control characters')

/** The device somebody signs in at, by the id it gave itself; its name is for people and may be empty. */
export const deviceSchema = z.strictObject({ id: idSchema, name: z.string().max(80) })
export const loginSchema = z.string().min(1).max(80)
export const passwordSchema = z
  .string()
  .min(12, 'must have 12 characters or more; three or four plain words are easy to keep in mind')
  .max(200)

/** Who is here, at this device: the answer to signing in and to `who-am-i`. */
export const whoSchema = z.object({
  clinic: z.object({ id: z.string(), row: clinicRow }),
  invented: z.boolean(),
  session: z.string(),
  device: z.object({ id: z.string(), name: z.string() }),
  people: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      role: personRow.shape.role,
      keeper: z.boolean(),
      pin: pinVerifierSchema.nullable(),
    }),
  ),
  active: z.string(),
  serverTime: z.string(),
})
export type Who = z.infer<typeof whoSchema>

/** As it is compared: the same login typed on another keyboard, or with a capital, is the same. */
export function loginKey(login: string): string {
  const key = login.normalize('NFKC').trim().toLowerCase()
  if (/^\P{Cc}+$/u.test(key)) return key
  throw new InputError('wrong-value', 'login', 'login must be a word without control characters, like imke.holm.')
}

export function passwordAsTyped(password: string): string {
  return password.normalize('NFKC')
}

export function refuseWeakPassword(password: string, login: string, path = 'password'): void {
  if (passwordAsTyped(password).toLowerCase() !== loginKey(login)) return
  throw new InputError('weak-password', path, 'The password must not be the login.')
}

const daysOfSession = 90

function newToken(world: Pick<World, 'secrets' | 'clock'>) {
  const token = bytesToHex(world.secrets.bytes(32))
  const at = world.clock.now()
  const expiresAt = new Date(Date.parse(at) + daysOfSession * 86_400_000).toISOString()
  return { token, tokenHash: hashOf(token), at, expiresAt }
}

export function newId(secrets: World['secrets'], what: string): string {
  return `${what}-${bytesToHex(secrets.bytes(10))}`
}

type At = { readonly clinic: string; readonly person: string; readonly device: z.infer<typeof deviceSchema> }

/**
 * Signs a person in at a device: beside the others when its session is open, otherwise in a new session. The token is
 * new each time, so that one that was planted or seen before is worth nothing.
 */
export async function signInAt(world: World, { clinic, person, device }: At, here: Session | undefined): Promise<Who> {
  const { accounts, secrets, door } = world
  const { token, tokenHash, at, expiresAt } = newToken(world)
  const open = here !== undefined && isOpen(here, at)
  if (open && here.clinic === clinic && here.device === device.id) {
    await accounts.enrol(here.id, person, { at, tokenHash, expiresAt, deviceName: device.name })
  } else {
    // The cookie takes the place of the other session's; nobody would hold its token any more.
    if (open) await accounts.end(here.id, at)
    const id = newId(secrets, 'session')
    const begun = { id, clinic, device: device.id, deviceName: device.name, madeAt: at, expiresAt, active: person }
    await accounts.begin(begun, tokenHash)
  }
  door.handOut(token, expiresAt)
  return whoIsAt(world, token)
}

/** Who is enrolled at the session of this token. Refused when nobody is. */
export async function whoIsAt(world: World, token: string | null): Promise<Who> {
  const { store, accounts, clock, invented } = world
  const session = token === null ? undefined : await accounts.byToken(hashOf(token))
  const row = session && (await store.current(session.clinic, 'clinic'))[0]
  if (!session || !row || !isOpen(session, clock.now())) throw nobodyHere()
  const staff = await staffOf(store, session.clinic)
  const all = new Map((await accounts.all(session.clinic)).map((account) => [account.person, account]))
  const people = peopleOf(session).flatMap((id) => {
    const of = staff.get(id)
    const account = all.get(id)
    if (!of || !account) return []
    return [{ id, name: of.name, role: of.role, keeper: of.role === 'manager' || account.opened, pin: account.pin }]
  })
  const active = session.active ?? people.at(-1)?.id
  if (active === undefined) throw nobodyHere()
  return {
    clinic: { id: session.clinic, row: clinicRow.parse(row.body) },
    invented: session.clinic === invented.clinic,
    session: session.id,
    device: { id: session.device, name: session.deviceName },
    people,
    active,
    serverTime: clock.now(),
  }
}

function nobodyHere(): Refused {
  return new Refused(401, 'not-signed-in', 'Sign in first: nobody is signed in at this device.')
}
