/** The name of one publication, label, handout or house decision; content/sources says what it is. */
export type SourceId = string

export type Known = 'read' | 'remembered' | 'common-practice' | 'house'
export type Strength = 'label' | 'guideline' | 'study' | 'textbook' | 'handout' | 'web' | 'practice'
export type Confidence = 'high' | 'medium' | 'low'
export type Day = `${number}-${number}-${number}`

/** How a fact is known: where it came from, and how surely we copied it. */
export type Provenance = {
  /** One or more publications; those that disagree stand as facts of their own. */
  readonly sources: readonly SourceId[]
  /** Page, table or figure, so that a reader can check in a minute. */
  readonly where?: string
  readonly known: Known
  /** How good the evidence itself is, apart from how surely we copied it. */
  readonly strength: Strength
  readonly confidence: Confidence
  /** The last day someone compared this value with its source. */
  readonly checked: Day
}

/** A fact together with where it came from and how we know it. */
export type Sourced<Value> = Provenance & { readonly value: Value }

/** One publication, label, page or house decision. */
export type Source = {
  readonly id: SourceId
  readonly citation: string
  /** Where it was read, when the text itself was not: an abstract page, a copy, a hand-out. */
  readonly seenAt?: string
  readonly strength: Strength
}
