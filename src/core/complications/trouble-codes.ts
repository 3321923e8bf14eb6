/** What may go wrong in or after an operation of an ear. Content says what is proposed of each, and when it is asked for. */
export const troubleEvents = [
  'wound-gap',
  'seroma',
  'wound-infection',
  'pinna-edge',
  'haemorrhage',
  'nerve-injured',
  'facial-weakness',
  'horner',
  'vestibular',
  'corneal-ulcer',
  'deafness',
  'deep-infection',
  'jaw-pain',
  'tumour-again',
  'airway',
  'anaesthetic-event',
  'death',
  'other',
] as const
export type TroubleEvent = (typeof troubleEvents)[number]

/** What a person says that the trouble needed, from nothing to the worst. */
export const askedNeeds = [
  'not-known',
  'none',
  'wound-care-awake',
  'supportive-medicine',
  'medicine',
  'intervention-awake',
  'intervention-sedation',
  'intervention-general-anaesthesia',
  'intensive-care',
  'death',
] as const

/**
 * The same with what other entries say less finely: a drug without saying which, an operation without saying how the
 * animal was held. In rising order: of two answers the later one in this list counts.
 */
export const troubleNeeds = [
  'not-known',
  'none',
  'wound-care-awake',
  'supportive-medicine',
  'some-drug',
  'medicine',
  'intervention-awake',
  'some-operation',
  'intervention-sedation',
  'intervention-general-anaesthesia',
  'intensive-care',
  'death',
] as const
export type TroubleNeed = (typeof troubleNeeds)[number]

/** The greater of two needs: what a trouble needed in all. */
export function greaterNeed(a: TroubleNeed, b: TroubleNeed): TroubleNeed {
  return troubleNeeds.indexOf(a) >= troubleNeeds.indexOf(b) ? a : b
}

/** How the part works in the end. */
export const lastingFunctions = ['not-known', 'full', 'acceptable', 'unacceptable'] as const
export type LastingFunction = (typeof lastingFunctions)[number]

/** Whether it was there before the operation, and how much of it. `milder`: there, and worse since. */
export const statesBefore = ['absent', 'milder', 'same', 'not-known'] as const
export type StateBefore = (typeof statesBefore)[number]

/** What a trouble is, once somebody has said so. Sequela: expected after this operation, however well it went. */
export const troubleClasses = ['complication', 'sequela', 'failure-to-cure', 'was-there-before'] as const
export type TroubleClass = (typeof troubleClasses)[number]
