import type { Species } from '#core/animal/species.ts'

/** One isolate as it counts: whose, of which organism, taken when and where, and what was tested. */
export type Isolated = {
  readonly animal: string
  readonly host: Species
  /** What the isolates of one animal are told apart by: the organism's id, or its printed name where nobody knows it. */
  readonly organism: string
  /** Day of sampling, `2026-03-01`. */
  readonly day: string
  /** Where it was taken; null where nobody said. */
  readonly site: string | null
  /** What tells two isolates of one day and place apart; null where nobody said. */
  readonly key: string | null
}

export type GrownIsolate<Tested> = Isolated & { readonly tested: readonly Tested[] }
