import { type Carriage, carriagesOf, namesOfCarriages } from '#core/culture/carriage.ts'
import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Draft, OwedItem } from './owed-item.ts'

export type HygieneRules = { readonly facts: SusceptibilityFacts; readonly practice: Sourced<string> }

/**
 * Where an animal carries an organism that passes to others, everything for which it is touched says so before it
 * comes, and the call that tells the result tells the hygiene too.
 */
export function withHygiene(drafts: readonly Draft[], file: CaseFile, rules: HygieneRules): readonly Draft[] {
  const carriages = carriagesOf(file, rules.facts)
  if (carriages.length === 0) return drafts
  return drafts.map((draft) => {
    if (isTouched(draft.item))
      return { ...draft, item: saying('carries-resistant', draft.item, carriages, file, rules) }
    const told = carriages.filter(({ result }) => draft.item.id === `owner-to-tell:${result}`)
    return told.length === 0 ? draft : { ...draft, item: saying('hygiene-belongs', draft.item, told, file, rules) }
  })
}

function isTouched({ way, who, what }: OwedItem): boolean {
  return who !== 'owner' && (way === 'visit' || way === 'here' || what === 'admission')
}

function saying(
  code: 'carries-resistant' | 'hygiene-belongs',
  item: OwedItem,
  carriages: readonly Carriage[],
  { clinic }: CaseFile,
  { practice }: HygieneRules,
): OwedItem {
  const since = carriages[0]?.at ?? item.dueFrom
  const on = sayMoment({ at: since, zone: clinic.zone, precision: 'day', by: 'clock' })
  const about = { names: namesOfCarriages(carriages), on }
  return { ...item, why: [...item.why, { code, about }], facts: [...item.facts, practice] }
}
