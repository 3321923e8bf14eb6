/**
 * What a study counted. "Any" and "lasting" are outcomes of their own and never share a column.
 * content/outcomes says what each means, to the trade and to the owner.
 */
export const outcomeCodes = [
  'facial_nerve_deficit_any',
  'facial_nerve_deficit_temporary',
  'facial_nerve_deficit_permanent',
  'facial_nerve_deficit_persisting_2mo',
  'horner_any',
  'horner_permanent',
  'horner_persisting_2mo',
  'vestibular_any',
  'vestibular_permanent',
  'hypoglossal',
  'neuro_complication_any',
  'ocular_surface_any',
  'corneal_ulcer',
  'ocular_or_neuro_ophthalmic_any',
  'haemorrhage_intraop_any',
  'haemorrhage_intraop_major',
  'intraop_complication_any',
  'periop_complication_any',
  'postop_complication_any',
  'longterm_complication_any',
  'wound_infection_or_dehiscence',
  'wound_minor_any',
  'wound_any',
  'deep_recurrence',
  'revision_surgery',
  'disease_recurrence_local',
  'cholesteatoma_persist_or_recur',
  'tumour_local_recurrence',
  'pinna_necrosis',
  'pinna_or_canal_dermatitis',
  'ear_carriage_normal',
  'hearing_loss_perceived',
  'hearing_air_baer_absent',
  'hearing_worsened_baer',
  'respiratory_complication',
  'perioperative_death',
  'owner_satisfied',
  'resolution_or_improved',
  'disease_free_6mo',
  'culture_positive_bulla',
] as const

export type OutcomeCode = (typeof outcomeCodes)[number]

/** How one outcome is told: to the trade, and to the owner in plain words. */
export type OutcomeWords = {
  /** For the surgeon: what was counted. */
  readonly meaning: string
  /** Said of animals: "had a weak face after surgery". In the past tense, so that it fits one and many. */
  readonly animals: string
  /** Said of ears and operations, after "was followed by": "a weak face on that side". */
  readonly operated: string
  /** Happens during or around the operation, so that "followed by" would be wrong. */
  readonly during?: true
}

/** What the owner hears of it; the meaning for the trade stands once. */
export type OwnerOutcomeWords = Omit<OutcomeWords, 'meaning'>
