import { createContext, type ReactNode, useContext } from 'react'
import type { Register } from '#core/forms/arrangement.ts'
import type { Draft } from '#core/forms/draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import type { FormWords } from '#core/forms/words.ts'
import type { KindName } from '#core/journal/fold.ts'
import type { Checkpoint } from '#core/procedures/procedure.ts'

/** One thing that can be chosen: an id of the journal and what people call it. */
export type Choosable = { readonly id: string; readonly label: string }

/** What the ids of a form may point to. A register that is not given is typed as text. */
export type FormChoices = {
  readonly registers: Partial<Record<Register, readonly Choosable[]>>
  /** Entries of the case of these kinds, newest first, each said in one line. */
  entries(kinds: readonly KindName[]): readonly Choosable[]
  /** The checkpoints of the operation that is stamped. */
  readonly checkpoints: readonly Checkpoint[]
}

/** What every part of one form shares. */
export type FormScope = {
  readonly words: FormWords
  /** In front of every id on the page, so that two forms can stand on it. */
  readonly prefix: string
  readonly draft: Draft
  readonly refusals: readonly FieldRefusal[]
  readonly place: Place
  readonly choices: FormChoices
  /** The moment now, as text a person would type; without it there is no button "Now". */
  readonly now: (() => string) | null
  /** What stands under one field of the form itself; without it nothing does. */
  readonly under?: ((path: string) => ReactNode) | null
  /** `empties` names the details of the same group that belonged to the answer before. */
  set(path: string, part: Draft, empties?: string | null): void
}

export const ScopeContext = createContext<FormScope | null>(null)

export function useScope(): FormScope {
  const scope = useContext(ScopeContext)
  if (!scope) throw new Error('A part of a form stands outside of a form.')
  return scope
}

/** The id of the control at a path. Example: `idOf(scope, 'medicines.0.times')`. */
export function idOf({ prefix }: Pick<FormScope, 'prefix'>, path: string): string {
  return `${prefix}-${path.replaceAll('.', '-')}`
}
