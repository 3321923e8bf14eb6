import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { PainScale } from '#core/journal/kinds/ward-score.ts'

export type ScaleFacts = {
  /** Null: made for no species. */
  readonly species: Species | null
  readonly outOf: number
  /** From this score on more pain relief is given; null where no publication says. */
  readonly actAt: number | null
  /** Which form of the scale, by the name its authors gave it and the year. */
  readonly edition: string
  /** What of the animal its items look at that an operated ear may change; the text of no item stands here. */
  readonly looksAt: readonly ScaleItem[]
}
/** Parts of a scale that mislead after ear surgery: of the face, of the walk, of a touch beside the wound. */
export const scaleItems = ['ears', 'lids', 'muzzle', 'whiskers', 'head-carriage', 'walk', 'touch'] as const
export type ScaleItem = (typeof scaleItems)[number]
export type PainScales = Readonly<Record<PainScale, Sourced<ScaleFacts>>>

export type PainReading =
  | { readonly kind: 'act'; readonly actAt: number }
  | { readonly kind: 'below'; readonly actAt: number }
  /** `no-limit`: nobody published one. `other-species`: the scale was made for another species. */
  | { readonly kind: 'unknown'; readonly because: 'no-limit' | 'other-species' }

/**
 * Whether a score asks for more pain relief. A scale of another species or without a published limit answers nothing.
 *
 * @example readPain({ scale: 'glasgow-dog-short', score: 7 }, 'dog', painScales) // { kind: 'act', actAt: 6 }
 * Reference: Reid 2007 and 2017, Calvo 2014, Evangelista 2019 (content/scores/pain-scales.ts).
 */
export function readPain(
  { scale, score }: { readonly scale: PainScale; readonly score: number },
  species: Species | null,
  scales: PainScales,
): PainReading {
  const { species: madeFor, actAt } = scales[scale].value
  if (madeFor !== null && species !== null && madeFor !== species) return { kind: 'unknown', because: 'other-species' }
  if (actAt === null) return { kind: 'unknown', because: 'no-limit' }
  return { kind: score >= actAt ? 'act' : 'below', actAt }
}
