import type { Side } from '#core/animal/species.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { KindName } from '#core/journal/fold.ts'
import type { Chapter } from './chapter.ts'

export const missingCodes = [
  'referral-missing',
  'identity-missing',
  'household-missing',
  'nobody-may-consent',
  'chip-unknown',
  'birth-unknown',
  'red-flags-not-asked',
  'allergy-not-asked',
  'records-not-asked',
  'side-unknown',
  'history-missing',
  'medicines-missing',
  'medicine-active-unknown',
  'ear-not-examined',
  'findings-not-assessed',
  'cytology-missing',
  'baseline-missing',
  'baseline-not-assessed',
  'weight-missing',
  'imaging-missing',
  'imaging-side-not-reported',
  'blood-cells-missing',
  'blood-chemistry-missing',
  'clotting-missing',
  'blood-type-unknown',
  'choice-missing',
  'nothing-chosen',
  'no-surgery-not-offered',
  'choice-lacks',
  'session-not-decided',
  'skin-plan-missing',
  'other-ear-plan-missing',
  'agreement-missing',
  'estimate-missing',
  'estimate-not-answered',
  'estimate-at-odds',
  'consent-not-by-who-may',
  'teach-back-open',
  'resuscitation-open',
  'booking-missing',
  'assessment-missing',
  'jaw-not-assessed',
  'planned-lines-missing',
  'pause-missing',
  'checkpoint-missing',
  'count-missing',
  'count-unequal',
  'throat-pack-in',
  'bulla-sample-missing',
  'loss-missing',
  'summary-missing',
  'first-blink-missing',
  'pain-not-scored',
  'discharge-missing',
  'home-teach-back-open',
  'eye-care-not-said',
  'year-status-missing',
] as const
export type MissingCode = (typeof missingCodes)[number]

/** Something that is not on record, where it would stand, and the kind of entry that would settle it. */
export type Missing = {
  readonly code: MissingCode
  readonly chapter: Chapter
  /** `needed`: the chapter is not done without it. `useful`: it helps, and may stay unknown. */
  readonly weight: 'needed' | 'useful'
  readonly kind: KindName
  /** What the settling entry would be about; null while nobody knows who the animal is. */
  readonly subject: Subject | null
  readonly side: Side | null
  readonly operation: string | null
  /** The entry that would be corrected, when one exists already and only says too little. */
  readonly amends: string | null
  readonly about: Readonly<Record<string, string>>
}

/** What a missing thing says beyond its place. */
export type Wanted = Partial<Pick<Missing, 'weight' | 'side' | 'operation' | 'amends' | 'about'>>

/** Makes the missing things of one chapter and one animal. */
export function missingIn(chapter: Chapter, animal: string | null) {
  return (code: MissingCode, kind: KindName, wanted: Wanted = {}, subject?: Subject | null): Missing => ({
    code,
    chapter,
    kind,
    weight: 'needed',
    side: null,
    operation: null,
    amends: null,
    about: {},
    ...wanted,
    subject: subject === undefined ? subjectFor(animal, wanted) : subject,
  })
}

function subjectFor(animal: string | null, { side, operation }: Wanted): Subject | null {
  if (animal === null) return null
  if (operation) return { kind: 'operation', animal, operation }
  return side ? { kind: 'ear', animal, side } : { kind: 'animal', animal }
}
