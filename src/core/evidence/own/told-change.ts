import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OutcomeCode } from '../outcome-code.ts'
import { type AllOddsWording, sayTold } from '../say-told.ts'
import { type CountUnit, countUnits } from '../study.ts'
import { type OwnOf, type Told, toldPerUnit } from '../told.ts'

type Evidence = Parameters<typeof toldPerUnit>[1]

/** What an owner reads of one outcome in one unit now, and would read; null where nothing is said. */
export type ToldChange = {
  readonly outcome: OutcomeCode
  readonly unit: CountUnit
  readonly before: string | null
  readonly after: string | null
}

/**
 * Everything an owner would read otherwise if our own counts were other ones, in the very sentences of the leaflet and
 * the owner's page. `evidence` is what is told from now.
 *
 * @example toldChanges({ species: 'dog', procedure: 'teca-lbo' }, ['deep_recurrence'], evidence, ownOfNow, english)
 */
export function toldChanges(
  of: { readonly species: Species; readonly procedure: ProcedureId },
  outcomes: readonly OutcomeCode[],
  evidence: Evidence,
  after: OwnOf,
  wording: AllOddsWording,
): ToldChange[] {
  const saidBy = (outcome: OutcomeCode, about: Evidence) => {
    const known = toldPerUnit({ ...of, outcome }, about)
    return new Map(known.map((told) => [told.published.question.unit, said(told, wording)]))
  }
  return outcomes.flatMap((outcome) => {
    const [now, then] = [saidBy(outcome, evidence), saidBy(outcome, { ...evidence, ownOf: after })]
    return countUnits.flatMap((unit): ToldChange[] => {
      const [old, fresh] = [now.get(unit) ?? null, then.get(unit) ?? null]
      return old === fresh ? [] : [{ outcome, unit, before: old, after: fresh }]
    })
  })
}

/** Null where neither studies nor we counted it: such an outcome stands among those that nobody counted. */
function said(told: Told, wording: AllOddsWording): string | null {
  if (told.published.kind === 'unknown' && told.own === null) return null
  const { sentence, own } = sayTold(told, wording)
  return [...(told.published.kind === 'unknown' ? [] : [sentence]), ...own].join(' ')
}
