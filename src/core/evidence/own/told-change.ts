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
  /**
   * An owner would hear of a higher share although ours had it no more often than they hear now: with our own results the
   * figure is that of a clinic like ours, and a single study says little of another clinic.
   */
  readonly higherWithoutMore: boolean
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
    return new Map(known.map((told) => [told.published.question.unit, { told, ...said(told, wording) }]))
  }
  return outcomes.flatMap((outcome) => {
    const [now, then] = [saidBy(outcome, evidence), saidBy(outcome, { ...evidence, ownOf: after })]
    return countUnits.flatMap((unit): ToldChange[] => {
      const [old, fresh] = [now.get(unit), then.get(unit)]
      const [before, after] = [old?.text ?? null, fresh?.text ?? null]
      const higherWithoutMore = isHigherWithoutMore(old?.middle ?? null, fresh)
      return before === after ? [] : [{ outcome, unit, before, after, higherWithoutMore }]
    })
  })
}

type Said = { readonly told: Told; readonly text: string | null; readonly middle: number | null }

function isHigherWithoutMore(before: number | null, fresh: Said | undefined): boolean {
  const own = fresh?.told.own
  if (before === null || fresh?.middle == null || !own || own.total === 0) return false
  return fresh.middle > before && (100 * own.events) / own.total <= before
}

/** No text where neither studies nor we counted it: such an outcome stands among those that nobody counted. */
function said(told: Told, wording: AllOddsWording): Omit<Said, 'told'> {
  if (told.published.kind === 'unknown' && told.own === null) return { text: null, middle: null }
  const { sentence, own, middle } = sayTold(told, wording)
  const text = [...(told.published.kind === 'unknown' ? [] : [sentence]), ...own].join(' ')
  return { text, middle }
}
