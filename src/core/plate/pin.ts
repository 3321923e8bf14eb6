import type { ProcedureId } from '../animal/procedure.ts'
import type { OutcomeCode } from '../evidence/outcome-code.ts'
import type { Sourced } from '../evidence/sourced.ts'
import type { BodyOf, KindName } from '../journal/fold.ts'
import type { Checkpoint, NamedRisk } from '../procedures/procedure.ts'
import type { Moment } from '../time/moment.ts'
import type { StructureId } from './scene.ts'

type Look = BodyOf<'ear-findings'>
type Scan = NonNullable<BodyOf<'imaging'>['LEFT']>
type Face = BodyOf<'baseline'>['LEFT']

/** Every sign that is pinned to the plate, with the answers it may have; wording holds one sentence for each. */
export type PinAnswers = {
  readonly flapCarriage: Look['flapCarriage']
  readonly canalFeel: Look['canalFeel']
  readonly discharge: Look['discharge']
  readonly stenosis: Look['stenosis']
  readonly drum: Look['drum']
  readonly mass: Look['mass']
  readonly painOnPressing: Look['painOnPressing']
  readonly painOnJawOpening: Look['painOnJawOpening']
  readonly swelling: Look['swelling']
  readonly drainingTract: Look['drainingTract']
  readonly bulla: Scan['bulla']
  readonly bullaWall: Scan['bullaWall']
  readonly canalMineral: Scan['canalMineral']
  readonly scannedMass: Scan['mass']
  readonly blink: Face['blink']
  readonly lipOrEarDroop: Face['lipOrEarDroop']
  readonly wound: BodyOf<'check'>['wound']
}
export type PinSign = keyof PinAnswers

/** The entry that says it. */
export type PinEntry = { readonly entry: string; readonly kind: KindName; readonly moment: Moment }

/** One thing that belongs to a part of the ear, and where it comes from. */
export type Pin =
  | { readonly kind: 'sign'; readonly sign: PinSign; readonly answer: string; readonly from: PinEntry }
  /** What was stamped in theatre, in the sentences of the report. */
  | { readonly kind: 'stamp'; readonly sentences: readonly string[]; readonly from: PinEntry }
  | {
      readonly kind: 'plan'
      readonly plan: 'chosen' | 'agreed' | 'booked'
      readonly procedure: ProcedureId
      readonly from: PinEntry
    }
  /** What the surgeon minds at this part, from the procedure. */
  | {
      readonly kind: 'step'
      readonly procedure: ProcedureId
      readonly checkpoint: Pick<Checkpoint, 'id' | 'title' | 'mind'>
    }
  /** Why it is dangerous here, with its source. */
  | { readonly kind: 'reason'; readonly procedure: ProcedureId; readonly because: Sourced<string> }
  /** A risk counted under this name; that it shows at this part is anatomy. */
  | {
      readonly kind: 'risk'
      readonly procedure: ProcedureId
      readonly outcome: OutcomeCode
      readonly shows: NamedRisk['shows']
    }

export type Pinned = {
  readonly known: readonly Pin[]
  readonly planned: readonly Pin[]
  readonly atRisk: readonly Pin[]
}

/** Which parts a sign, an operation, a step and a risk belong to. content/plate holds it. */
export type PinPlaces = {
  readonly signs: Readonly<Record<PinSign, readonly StructureId[]>>
  readonly procedures: Readonly<Record<ProcedureId, readonly StructureId[]>>
  readonly checkpoints: Readonly<Record<string, readonly StructureId[]>>
  readonly outcomes: Sourced<Readonly<Partial<Record<OutcomeCode, readonly StructureId[]>>>>
}
