import type { Species } from '#core/animal/species.ts'
import type { Case } from '#core/journal/fold.ts'

export type BloodType =
  | { readonly kind: 'known'; readonly type: string; readonly entry: string }
  /** `none`: nobody wrote one. `not-typed`: it was said to be unknown. `differ`: two entries disagree. */
  | { readonly kind: 'unknown'; readonly because: 'none' | 'not-typed' | 'differ' | 'other-species' }

const systems: Readonly<Record<Species, 'dea-1' | 'ab'>> = { dog: 'dea-1', cat: 'ab' }

/**
 * The blood group that stands for this animal. Groups of another species' system do not count, an untyped animal stays
 * unknown, and two answers that differ are unknown until a person takes one back.
 *
 * @example bloodTypeOf(theCase) // { kind: 'known', type: 'negative', entry: '0190…' }
 * Reference: typing before any transfusion, cats always: transfusion texts (content/formulary).
 */
export function bloodTypeOf(theCase: Case): BloodType {
  const species = theCase.latest('identity')?.body.species
  const written = theCase.live('blood-type')
  const fitting = written.filter(({ body }) => species !== undefined && body.system === systems[species])
  const typed = fitting.flatMap(({ header, body }) => {
    const type = body.system === 'ab' ? body.ab : body.dea1
    return type === 'unknown' || type === 'not-typed' ? [] : [{ type, entry: header.id }]
  })
  const last = typed.at(-1)
  if (last && typed.every(({ type }) => type === last.type)) return { kind: 'known', ...last }
  if (last) return { kind: 'unknown', because: 'differ' }
  if (fitting.length > 0) return { kind: 'unknown', because: 'not-typed' }
  return { kind: 'unknown', because: written.length > 0 ? 'other-species' : 'none' }
}
