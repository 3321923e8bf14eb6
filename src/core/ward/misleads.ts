import type { Side } from '#core/animal/species.ts'
import type { PainScale } from '#core/journal/kinds/ward-score.ts'
import type { PainScales, ScaleItem } from './pain-scale.ts'

/** What may keep a part of a pain scale from meaning pain. */
export type Doubt =
  | { readonly because: 'blink-absent' | 'blink-weak' | 'block' | 'droop'; readonly side: Side }
  | { readonly because: 'bandage' | 'head-tilt'; readonly side: null }

export type Misleading = { readonly items: readonly ScaleItem[]; readonly because: readonly Doubt[] }

const ofFace: ReadonlySet<ScaleItem> = new Set(['ears', 'lids', 'muzzle', 'whiskers', 'head-carriage'])

/**
 * Which parts of a scale mislead in this animal now, and why: the face of a weak, numb or bandaged side, a touch beside
 * the wound through a bandage, the walk and the carriage of the head of a dizzy one. Empty: nothing on record speaks
 * against the scale.
 *
 * @example misleading('grimace-cat', [{ because: 'blink-absent', side: 'LEFT' }], painScales) // ears, lids, muzzle …
 */
export function misleading(scale: PainScale, doubts: readonly Doubt[], scales: PainScales): Misleading[] {
  const { looksAt } = scales[scale].value
  const pick = (isOne: (item: ScaleItem) => boolean, matters: readonly Doubt['because'][]): Misleading => ({
    items: looksAt.filter(isOne),
    because: doubts.filter(({ because }) => matters.includes(because)),
  })
  return [
    pick(
      (item) => ofFace.has(item) && item !== 'head-carriage',
      ['blink-absent', 'blink-weak', 'block', 'droop', 'bandage'],
    ),
    pick((item) => item === 'head-carriage' || item === 'walk', ['head-tilt']),
    pick((item) => item === 'touch', ['bandage']),
  ].filter(({ items, because }) => items.length > 0 && because.length > 0)
}
