import type { z } from 'zod'
import type { Role } from '#core/people/may-write.ts'
import type { OwnerLinks } from './owner/owner-links.ts'
import type { Accounts } from './people/accounts.ts'
import type { Clock, Store } from './store.ts'
import type { VetLinks } from './vet/vet-links.ts'

export type { Role }

/** Who asks: a person enrolled at the device whose session came with the request. */
export type Caller = {
  readonly session: string
  readonly device: string
  readonly person: string
  readonly role: Role
  /** Everybody enrolled at this device. */
  readonly people: readonly string[]
  /** Managers, and whoever opened the clinic: they look after people and accounts. */
  readonly keeper: boolean
  /** True when this person was the last to prove who they are here, by password or PIN. */
  readonly proved: boolean
}

/** Chance and memory-hard hashing, plugged in by the server. */
export type Secrets = {
  readonly bytes: (count: number) => Uint8Array
  readonly hashPassword: (password: string) => Promise<string>
  /** Without a hash it takes as long and says no: the time tells nobody which logins there are. */
  readonly passwordFits: (hash: string | null, password: string) => Promise<boolean>
  /** scrypt with r 8, p 1, in hexadecimal, as a tablet makes it too. */
  readonly pinHash: (pin: string, salt: string, cost: number) => Promise<string>
}

/** The door a request came through: what is known of the other side before anybody signed in. */
export type Door = {
  readonly connection: 'this-machine' | 'plain' | 'tls'
  /** The network address, for slowing down strangers; never logged. */
  readonly address: string
  /** The session token as it came, good or not. */
  readonly token: string | null
  /** Hands the device its token, to be sent with every later request. */
  readonly handOut: (token: string, expiresAt: string) => void
  readonly takeBack: () => void
}

/** The one-time code of the first run, printed where the server was started. */
export type FirstCode = {
  /** Runs `opening` when the code is right, one at a time; false when it is wrong. */
  readonly use: <Result>(code: string, opening: () => Promise<Result>) => Promise<Result | false>
}

/** What became of a backup. */
export type BackupDone = {
  readonly folder: string
  readonly at: string
  readonly bytes: number
  readonly entries: number
}

/** Everything an action may touch. It comes with the request; actions never reach around it. */
export type World = {
  readonly store: Store
  readonly accounts: Accounts
  readonly ownerLinks: OwnerLinks
  readonly vetLinks: VetLinks
  readonly clock: Clock
  readonly secrets: Secrets
  readonly door: Door
  readonly firstCode: FirstCode
  readonly version: string
  /** The invented practice: the id of its clinic, and its journal file as it stands at a moment. */
  readonly invented: { readonly clinic: string; readonly journal: (now: string) => string }
  /** The caller's clinic; for a stranger the only clinic there is. */
  readonly clinic: string | null
  readonly caller: Caller | null
  /** Copies everything to the backup folder; refuses where the data is not this server's to copy. */
  readonly backUp: () => Promise<BackupDone>
}

/** One thing a person can do, by name. The server offers every one at `POST /api/actions/<name>`. */
export type Action<Input = unknown, Output = unknown> = {
  readonly name: string
  readonly summary: string
  readonly input: z.ZodType<Input>
  readonly output: z.ZodType<Output>
  readonly may: 'anyone' | 'signed-in' | readonly Role[]
  /** Asked by the device and not by a person: answered also when the person it names is not signed in there any more. */
  readonly ofDevice?: true
  /** Bytes a request may have, where the usual 256 KiB are not enough. */
  readonly largest?: number
  run(input: Input, world: World): Promise<Output>
  /** The same answer as JSON text, where the store keeps it ready: megabytes are then not read and written again. */
  text?(input: Input, world: World): Promise<string>
  /** True when the answer tells of a conflict: it is then given with 409. */
  conflict?(output: Output): boolean
}

/** Says the types of an action, so that `run` is checked against its schemas. */
export function defineAction<Input, Output>(action: Action<Input, Output>): Action<Input, Output> {
  return action
}
