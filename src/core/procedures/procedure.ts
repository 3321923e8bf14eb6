import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { FollowUp, Perhaps } from './follow-up.ts'

/**
 * What may be said at a checkpoint, and the sentence the operation report drafts from it.
 * `coded`: one of the listed answers. `number` and `words`: the sentence holds the place {answer}.
 */
export type CheckpointDetail =
  | {
      readonly id: string
      readonly asks: string
      readonly kind: 'coded'
      readonly answers: Readonly<Record<string, string>>
    }
  | { readonly id: string; readonly asks: string; readonly kind: 'number' | 'words'; readonly sentence: string }

/** One point of the operation that is stamped with a tap: what to do, what to answer, why it matters. */
export type Checkpoint = {
  readonly id: string
  readonly title: string
  /** One line for the wall of the theatre. */
  readonly mind: string
  readonly details: readonly CheckpointDetail[]
  /** Said when it was stamped as done without any detail. */
  readonly done: string
  /** Said when it was not done; holds the place {because}. */
  readonly notDone: string
  readonly because: readonly Sourced<string>[]
}

/** A risk by the name it is counted under, and when it shows. How often it happens stands in the studies, never here. */
export type NamedRisk = {
  readonly outcome: OutcomeCode
  readonly shows: 'in-theatre' | 'first-days' | 'first-weeks' | 'late'
}

export const consentItems = [
  'which-ear',
  'what-is-removed',
  'alternatives-offered',
  'no-treatment-offered',
  'risks-with-numbers',
  'hearing',
  'face-and-eye',
  'late-tract',
  'skin-disease-goes-on',
  'who-operates',
  'may-extend',
  'resuscitation',
  'ceiling-of-costs',
  'tissue-to-laboratory',
  'photographs',
  'swallowing-and-breathing',
  'regrowth',
  'fallback-to-full-removal',
] as const
export type ConsentItem = (typeof consentItems)[number]

/** One operation as content: why, how, what can go wrong, what is agreed, what falls due afterwards. */
export type Procedure = {
  readonly id: ProcedureId
  readonly name: string
  readonly species: readonly Species[]
  readonly indications: readonly Sourced<string>[]
  readonly against: readonly Sourced<string>[]
  readonly checkpoints: readonly Checkpoint[]
  /** Why the list of checkpoints is short, when it is. */
  readonly checkpointsComplete: Perhaps<'from-the-references'>
  readonly risks: readonly NamedRisk[]
  readonly consentItems: readonly ConsentItem[]
  readonly followUp: FollowUp
}

/** Writes down one procedure; only gives the compiler the shape. */
export function procedure<const P extends Procedure>(definition: P): P {
  return definition
}

/** The procedure of an id; a missing one is a bug of content. */
export function procedureNamed(id: ProcedureId, procedures: readonly Procedure[]): Procedure {
  const found = procedures.find((one) => one.id === id)
  if (!found) throw new Error(`There is no procedure "${id}".`)
  return found
}
