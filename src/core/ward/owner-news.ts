import type { Case } from '#core/journal/fold.ts'
import type { WardEye } from './eye-view.ts'
import { type PainReading, type PainScales, readPain } from './pain-scale.ts'
import type { Stay } from './stay.ts'

/** What an owner is told of an animal in the ward, each from an entry; what no entry says is said to be unknown. */
export type OwnerNews = {
  readonly awake: 'walked' | 'on-its-chest' | 'unknown'
  readonly pain: {
    readonly score: number
    readonly outOf: number
    readonly at: string
    readonly read: PainReading
  } | null
  readonly eats: { readonly said: 'yes' | 'a-little' | 'no'; readonly at: string } | null
  /** Operated sides whose lids do not close, and whether that may be the block. */
  readonly eyes: readonly Pick<WardEye, 'side' | 'block'>[]
}

/**
 * What there is to tell the owner today.
 *
 * @example newsForOwner(theCase, stay, eyes, painScales).eats?.said // 'a-little'
 */
export function newsForOwner(theCase: Case, stay: Stay, eyes: readonly WardEye[], scales: PainScales): OwnerNews {
  const rounds = theCase.live('ward-score').filter(({ at }) => at >= stay.since)
  const looks = theCase.live('observation').filter(({ at }) => at >= stay.since)
  const first = (what: string) => looks.some(({ body }) => body.first === what)
  const scored = rounds.findLast(({ body }) => body.pain !== null)
  const pain = scored?.body.pain
  const fed = rounds.findLast(({ body }) => ['yes', 'a-little', 'no'].includes(body.eats))
  const species = theCase.latest('identity')?.body.species ?? null
  return {
    awake: first('walked') ? 'walked' : first('sternal') ? 'on-its-chest' : 'unknown',
    pain:
      scored && pain
        ? {
            score: pain.score,
            outOf: scales[pain.scale].value.outOf,
            at: scored.at,
            read: readPain(pain, species, scales),
          }
        : null,
    eats: fed ? { said: fed.body.eats as 'yes' | 'a-little' | 'no', at: fed.at } : null,
    eyes: eyes.filter(({ operated, blink }) => operated && blink !== null && blink.said !== 'normal'),
  }
}
