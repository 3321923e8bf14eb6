import type { ClinicRow, PersonRow } from '#core/journal/registers.ts'
import { actAs, call, Refused, Unreachable } from '../journal/api.ts'
import { forgetSources, startReading } from '../journal/cases.ts'
import { forgetReadings, keep, putKept } from '../journal/database.ts'
import { deviceId } from '../journal/device.ts'
import { connection, hangUp, listen } from '../journal/live.ts'
import { openOutbox, sendNow } from '../journal/outbox.ts'
import { Signal } from '../journal/signal.ts'

export type PinVerifier = { readonly salt: string; readonly hash: string; readonly cost: number }
export type Enrolled = {
  readonly id: string
  readonly name: string
  readonly role: PersonRow['role']
  /** Managers, and whoever opened the clinic: they look after people and accounts. Not said by an older copy of a device. */
  readonly keeper?: boolean
  readonly pin: PinVerifier | null
}

/** Who is signed in at this device, and in which clinic. */
export type Who = {
  readonly clinic: { readonly id: string; readonly row: ClinicRow }
  readonly invented: boolean
  readonly people: readonly Enrolled[]
  readonly active: string
  readonly serverTime: string
}

export type FrontDoor = {
  readonly state: 'first-run' | 'sign-in'
  readonly clinicName: string | null
  readonly invented: boolean
  readonly connection: 'this-machine' | 'plain' | 'tls'
  readonly version: string
}

export type Session =
  | { readonly kind: 'starting' }
  | { readonly kind: 'out'; readonly door: FrontDoor; readonly because: string | null }
  | { readonly kind: 'in'; readonly who: Who; readonly door: FrontDoor | null }
  /** Nothing kept here and nobody answers. */
  | { readonly kind: 'nobody-answers' }

export const session = new Signal<Session>({ kind: 'starting' })

/** Looks who is here: the server says it; without the server, what this device kept. */
export async function startSession(): Promise<void> {
  await openOutbox()
  startReading()
  await lookWho()
}

export async function lookWho(): Promise<void> {
  const kept = await keep<Who>('who')
  actAs((await keep<string>('acting')) ?? kept?.active ?? null)
  try {
    const who = await call<Who>('who-am-i', {})
    await enter(who, (await keep<string>('acting')) ?? who.active)
  } catch (error) {
    if (error instanceof Unreachable) {
      if (kept) {
        const active = (await keep<string>('acting')) ?? kept.active
        session.set({ kind: 'in', who: { ...kept, active }, door: null })
      } else session.set({ kind: 'nobody-answers' })
      connection.set('lost')
      setTimeout(() => void lookWho(), 3_000)
    } else if (error instanceof Refused && error.status === 401) await leave(null)
    else throw error
  }
}

/** To the front door: nobody is signed in here, or not any more. Unsent entries stay on the device. */
async function leave(because: string | null): Promise<void> {
  hangUp()
  actAs(null)
  try {
    session.set({ kind: 'out', door: await call<FrontDoor>('read-front-door', {}), because })
  } catch (error) {
    if (!(error instanceof Unreachable)) throw error
    session.set({ kind: 'nobody-answers' })
    setTimeout(() => void lookWho(), 3_000)
  }
}

async function enter(who: Who, acting: string): Promise<void> {
  const active = who.people.some(({ id }) => id === acting) ? acting : who.active
  await putKept('who', who)
  await putKept('acting', active)
  actAs(active)
  const now = session.get()
  session.set({ kind: 'in', who: { ...who, active }, door: now.kind === 'in' ? now.door : null })
  listen()
  void sendNow()
  call<FrontDoor>('read-front-door', {}).then(
    (door) => {
      const here = session.get()
      if (here.kind === 'in') session.set({ ...here, door })
    },
    () => undefined,
  )
}

function deviceCalled(): { id: string; name: string } {
  return { id: deviceId, name: localStorage.getItem('device-name') ?? '' }
}

export type Opening = {
  readonly code: string
  /** `this-clinic`: one was imported before anybody had an account, and is opened as it is. */
  readonly choice: 'invented-practice' | 'empty-clinic' | 'this-clinic'
  readonly clinic: ClinicRow | null
  readonly person: PersonRow
  readonly login: string
  readonly password: string
}

/** The first account: opens the clinic and signs its person in. Throws Refused or Unreachable. */
export async function openClinic(opening: Opening): Promise<void> {
  const who = await call<Who>('open-clinic', { ...opening, device: deviceCalled() })
  await enter(who, who.active)
}

export async function signIn(login: string, password: string): Promise<void> {
  const who = await call<Who>('sign-in', { login, password, device: deviceCalled() })
  const before = await keep<Who>('who')
  if (before && before.clinic.id !== who.clinic.id) await forgetReadings()
  await enter(who, who.active)
}

/** Signs out the person who acts now, or everyone at this device. What was not sent yet stays here and is sent later. */
export async function signOut(everyone: boolean): Promise<void> {
  try {
    await call('sign-out', { everyone })
  } catch (error) {
    if (!(error instanceof Refused && error.status === 401)) throw error
  }
  await putKept('acting', null)
  forgetSources()
  await forgetReadings()
  hangUp()
  await lookWho()
}

/** Another person of this device takes over; their PIN was checked before. */
export async function takeOver(person: string): Promise<void> {
  const now = session.get()
  if (now.kind !== 'in') return
  await putKept('acting', person)
  actAs(person)
  session.set({ ...now, who: { ...now.who, active: person } })
}
