import type { ClinicRow, PersonRow } from '#core/journal/registers.ts'
import { actAs, call, onSignedOut, Refused, Unreachable } from '../journal/api.ts'
import { forgetSources, startReading } from '../journal/cases.ts'
import { forgetReadings, keep, putKept } from '../journal/database.ts'
import { deviceId } from '../journal/device.ts'
import { connection, hangUp, listen, onChange, onTurnedAway } from '../journal/live.ts'
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
  /**
   * `lapsed`: the session ended on the server while this person worked here. They go on with the cases of this device;
   * what they write is theirs, is kept here, and is sent after signing in.
   */
  | { readonly kind: 'in'; readonly who: Who; readonly door: FrontDoor | null; readonly lapsed: boolean }
  /** Nothing kept here and nobody answers. */
  | { readonly kind: 'nobody-answers' }

export const session = new Signal<Session>({ kind: 'starting' })

/** Looks who is here: the server says it; without the server, what this device kept. */
export async function startSession(): Promise<void> {
  await openOutbox()
  startReading()
  onSignedOut.add(lookAgain)
  onTurnedAway.add(lookAgain)
  // The server is heard again: nothing waits for its turn to be tried.
  onChange.add((streams) => streams === null && void sendNow())
  await lookWho()
}

let looking: Promise<void> | undefined
let later: ReturnType<typeof setTimeout> | undefined

/** The server turned something away: who is here is asked once, unless the answer is known. */
function lookAgain(): void {
  const now = session.get()
  if (!looking && now.kind === 'in' && !now.lapsed) void lookWho()
}

export async function lookWho(): Promise<void> {
  clearTimeout(later)
  looking = look()
  await looking.finally(() => {
    looking = undefined
  })
}

function lookLater(): void {
  clearTimeout(later)
  later = setTimeout(() => void lookWho(), 3_000)
}

async function look(): Promise<void> {
  const kept = await keep<Who>('who')
  const acting = (await keep<string>('acting')) ?? kept?.active ?? null
  actAs(acting)
  // Who worked here last, as this device knows them.
  const before =
    kept && acting !== null && kept.people.some(({ id }) => id === acting) ? { ...kept, active: acting } : null
  try {
    const who = await call<Who>('who-am-i', {})
    const isOut = before !== null && !who.people.some(({ id }) => id === acting)
    // Nobody else's name may come under what is written beside the table.
    if (isOut && isOfCase(location.pathname)) lapse(before)
    else await enter(who, acting ?? who.active)
  } catch (error) {
    if (error instanceof Unreachable) {
      const now = session.get()
      const lapsed = now.kind === 'in' && now.lapsed
      if (before) session.set({ kind: 'in', who: before, door: null, lapsed })
      else session.set({ kind: 'nobody-answers' })
      connection.set('lost')
      lookLater()
    } else if (!(error instanceof Refused && error.status === 401)) throw error
    else if (before) lapse(before)
    else await leave(null)
  }
}

/** The pages of a case, and what this device keeps: beside the table nothing may take their place. */
export function isOfCase(path: string): boolean {
  return /^\/(case\/|kept$)/.test(path)
}

/** The server knows nobody here any more: whoever works goes on, and is told. */
function lapse(who: Who): void {
  const now = session.get()
  hangUp()
  session.set({ kind: 'in', who, door: now.kind === 'in' ? now.door : null, lapsed: true })
  readDoor()
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
    lookLater()
  }
}

async function enter(who: Who, acting: string): Promise<void> {
  const active = who.people.some(({ id }) => id === acting) ? acting : who.active
  await putKept('who', who)
  await putKept('acting', active)
  actAs(active)
  const now = session.get()
  session.set({ kind: 'in', who: { ...who, active }, door: now.kind === 'in' ? now.door : null, lapsed: false })
  listen()
  void sendNow()
  readDoor()
}

function readDoor(): void {
  call<FrontDoor>('read-front-door', {}).then(
    (door) => {
      const here = session.get()
      if (here.kind === 'in') session.set({ ...here, door })
    },
    () => {
      const here = session.get()
      // It is the way back in.
      if (here.kind === 'in' && here.lapsed && here.door === null) setTimeout(readDoor, 3_000)
    },
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
