import type { Leave } from '#core/people/leave.ts'
import type { PinVerifier } from '#core/people/pin.ts'

/** Who may sign in: a person of the clinic's register with a login. The role stands in the register, not here. */
export type Account = {
  readonly clinic: string
  readonly person: string
  /** As `loginKey` writes it; no two accounts share one. */
  readonly login: string
  /** The memory-hard hash of the password, with its parameters inside. */
  readonly password: string
  readonly pin: PinVerifier | null
  /** The account that opened the clinic: it may do what a manager may. */
  readonly opened: boolean
  readonly active: boolean
  readonly madeAt: string
}

/** One person at one device, from signing in there until signing out (null: still). */
export type Enrolment = { readonly person: string; readonly since: string; readonly until: string | null }

/** One device that somebody signed in at. Whether it still counts is for `isOpen` to say. */
export type Session = {
  readonly id: string
  readonly clinic: string
  readonly device: string
  readonly deviceName: string
  readonly madeAt: string
  readonly expiresAt: string
  readonly endedAt: string | null
  /** Who signed in or switched here last, proved by password or PIN. */
  readonly active: string | null
  readonly people: readonly Enrolment[]
}

export type FirstCodeHash = { readonly hash: string; readonly madeAt: string }

/** Who opened a case, when, on which device; at most one line per person, case and minute. */
export type ReadLine = {
  readonly stream: string
  readonly person: string
  readonly device: string
  /** UTC, to the minute. */
  readonly at: string
}

export type StoredLeave = Leave & { readonly id: string; readonly by: string; readonly at: string }

/**
 * Accounts, sessions, tries, leaves and the read log. Both stores pass one contract test. Tokens come as hashes only;
 * times come as arguments. Every write is on disk when it returns.
 */
export interface Accounts {
  /** False until the first account exists. */
  any(): Promise<boolean>
  /** The code for the first account that counts, as its hash. */
  firstCode(): Promise<FirstCodeHash | undefined>
  /** Keeps a code unless one is there already, or in its place; answers with the one that counts now. */
  offerFirstCode(code: FirstCodeHash, replace: boolean): Promise<FirstCodeHash>
  /** Makes the account that opens a clinic. False, with nothing written, when there is an account already. */
  first(account: Omit<Account, 'opened' | 'active' | 'pin'>): Promise<boolean>
  /** Makes a person's account or gives it another login, password and state. False when the login is somebody else's. */
  put(account: Omit<Account, 'opened' | 'pin'>): Promise<boolean>
  byLogin(login: string): Promise<Account | undefined>
  byPerson(clinic: string, person: string): Promise<Account | undefined>
  all(clinic: string): Promise<Account[]>
  setPassword(clinic: string, person: string, password: string): Promise<void>
  setPin(clinic: string, person: string, pin: PinVerifier | null): Promise<void>

  /** Begins a session with its first person. */
  begin(session: Omit<Session, 'people' | 'endedAt'> & { readonly active: string }, tokenHash: string): Promise<void>
  /** Enrols a person at an open session: from now on it has this token and lasts until then. */
  enrol(
    session: string,
    person: string,
    now: { readonly at: string; readonly tokenHash: string; readonly expiresAt: string; readonly deviceName: string },
  ): Promise<void>
  /** The session with this token, whatever its state. */
  byToken(tokenHash: string): Promise<Session | undefined>
  /** The sessions of a clinic that have neither ended nor run out. */
  openSessions(clinic: string, now: string): Promise<Session[]>
  /** Every session this device ever had: what was written there is judged by them. */
  ofDevice(clinic: string, device: string): Promise<Session[]>
  activate(session: string, person: string): Promise<void>
  /** Takes one person off a session; the others stay. */
  leave(session: string, person: string, at: string): Promise<void>
  end(session: string, at: string): Promise<void>
  /** Takes a person off every device, except perhaps one. */
  leaveEverywhere(clinic: string, person: string, at: string, except?: string): Promise<void>

  /**
   * Counts a try before it is made. Null: go on. Otherwise nothing was counted and the instant says when to try again.
   * `delayAfter` says how many milliseconds must lie between the n-th try and the next.
   */
  tryNow(key: string, at: string, delayAfter: (tries: number) => number): Promise<string | null>
  /** A try that succeeded wipes the slate of its key. */
  forgetTries(key: string): Promise<void>

  logRead(clinic: string, line: ReadLine): Promise<void>
  readLog(clinic: string, stream: string): Promise<ReadLine[]>

  /** Puts a person's leave in the place of every leave that overlaps those days; null only takes those away. */
  setLeave(clinic: string, about: Pick<Leave, 'person' | 'from' | 'until'>, leave: StoredLeave | null): Promise<void>
  leaves(clinic: string): Promise<StoredLeave[]>
}
