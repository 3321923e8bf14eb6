import type { Species } from '#core/animal/species.ts'
import type { Sourced } from './sourced.ts'

/** A row of the formulary that stands beside another one, named by its key so that no number is written twice. */
export type RowSide = { readonly drug: string; readonly species: Species; readonly row: string }

/** Sources that say different things, and what is done with it. Nothing is averaged, nothing is dropped. */
export type Disagreement = {
  readonly about: string
  /** What each source says, in words, where it has no row of the formulary. */
  readonly says: readonly Sourced<string>[]
  readonly rows?: readonly RowSide[]
  /** What the tool does with it. */
  readonly does: string
}
