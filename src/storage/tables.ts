import type { ColumnType, Generated } from 'kysely'
import type { RegisterName } from '#actions/store.ts'

/** The tables of both stores. Every key leads with the clinic. Texts that were hashed stand exactly as they were hashed. */
export type Tables = {
  readonly clinics: {
    readonly clinic: string
    readonly position: number
    /** Grows with every change of the house that all lists read. */
    readonly lists_wanted: Generated<number>
  }
  readonly entries: EntryTable
  readonly targets: {
    readonly clinic: string
    readonly entry: string
    readonly role: TargetRole
    readonly target: string
  }
  /** Live merges as they stand: a projection, written together with the stream that holds the merge. */
  readonly links: { readonly clinic: string; readonly stream: string; readonly other: string }
  readonly kept_aside: {
    readonly clinic: string
    readonly id: string
    readonly hash: string
    readonly received_at: string
    readonly text: string
  }
  readonly register_rows: {
    readonly clinic: string
    readonly register: RegisterName
    readonly id: string
    readonly revision: number
    readonly body: string | null
    readonly written_by: string
    readonly written_at: string
  }
  readonly files: {
    readonly clinic: string
    readonly hash: string
    readonly media_type: string
    readonly bytes: ColumnType<Uint8Array, Uint8Array, never>
  }
  readonly owed: {
    readonly clinic: string
    readonly stream: string
    readonly id: string
    readonly what: string
    readonly who: string
    readonly due_from: string
    readonly due_by: string
    readonly why: string
    readonly sources: string
  }
  readonly cases: {
    readonly clinic: string
    readonly stream: string
    readonly animal: string
    readonly name: string
    readonly species: string
    readonly chip: string | null
    readonly contact: string | null
    readonly household: string | null
    readonly chapter: string
    readonly conflicts: number
    /** What the case adds to the clinic's own figures, in JSON. */
    readonly operated: Generated<string>
  }
  /** The lists as they are sent: what a stream adds to each, in JSON, and the version that last changed it. */
  readonly list_texts: {
    readonly clinic: string
    readonly stream: string
    readonly version: number
    readonly case_text: string
    readonly owed_text: string
    /** The `lists_wanted` that these texts were made for; behind it they are made again. */
    readonly made_for: Generated<number>
  }
  readonly accounts: AccountTable
  readonly sessions: SessionTable
  readonly session_people: {
    readonly session: string
    readonly person: string
    readonly since: string
    readonly until: string | null
  }
  readonly sign_in_failures: { readonly key: string; readonly tries: number; readonly last_at: string }
  readonly first_code: { readonly only: number; readonly hash: string; readonly made_at: string }
  readonly read_log: {
    readonly clinic: string
    readonly stream: string
    readonly at: string
    readonly person: string
    readonly device: string
  }
  readonly leaves: {
    readonly clinic: string
    readonly id: string
    readonly person: string
    readonly from_day: string
    readonly until_day: string
    readonly deputy: string
    readonly written_by: string
    readonly written_at: string
  }
  readonly owner_links: LinkTable & { readonly used_as: string }
  readonly vet_links: LinkTable & {
    readonly asked: string
    readonly side: string | null
    readonly due_from: string | null
    readonly due_by: string | null
  }
  readonly migrations: { readonly number: number; readonly name: string }
}

export type TargetRole = 'supersedes' | 'withdraws' | 'erases'

export type EntryTable = {
  readonly clinic: string
  readonly position: number
  readonly stream: string
  readonly sequence: number
  readonly id: string
  readonly kind: string
  readonly header: string
  readonly body: string | null
  readonly body_hash: string
  readonly received_at: string
  readonly corrected_at: string
  readonly order_certain: number
  readonly late: string | null
  readonly previous: string | null
  readonly hash: string
  readonly erased_on: string | null
  readonly erased_by: string | null
}

export type AccountTable = {
  readonly clinic: string
  readonly person: string
  readonly login: string
  readonly password: string
  readonly pin: string | null
  readonly opened: number | null
  readonly active: number
  readonly made_at: string
}

export type SessionTable = {
  readonly id: string
  readonly clinic: string
  readonly token_hash: string
  readonly device: string
  readonly device_name: string
  readonly made_at: string
  readonly expires_at: string
  readonly ended_at: string | null
  readonly active: string | null
}

/** The columns that the private links of every kind have. */
export type LinkTable = {
  readonly id: string
  readonly clinic: string
  readonly token_hash: string
  readonly stream: string
  readonly contact: string
  readonly made_at: string
  readonly made_by: string
  readonly expires_at: string
  readonly last_opened_at: string | null
  readonly revoked_at: string | null
  readonly revoked_by: string | null
}
