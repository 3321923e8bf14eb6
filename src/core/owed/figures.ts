import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { OwnCount } from '#core/evidence/own/count-own.ts'
import type { OwnOutcome } from '#core/evidence/own/own-outcome.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { CountUnit } from '#core/evidence/study.ts'
import type { Case } from '#core/journal/fold.ts'
import { instantAfter, type Period, startOfDay } from '#core/time/calendar-day.ts'

/** A count that owners would hear otherwise than now: null where they hear none of ours. */
export type ChangedFigure = {
  readonly outcome: OwnOutcome
  readonly unit: CountUnit
  readonly before: Counted | null
  readonly after: Counted
}
type Counted = { readonly events: number; readonly total: number; readonly lost: number }

/** That somebody looks at what owners read of one operation in one species, since when, until when, and what changed. */
export type FiguresOwed = {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly dueFrom: string
  readonly dueBy: string
  readonly because: 'late-event' | 'counted'
  readonly changed: readonly ChangedFigure[]
  readonly fact: Provenance
}

export type FiguresRules = { readonly lateEvent: Sourced<Period>; readonly counted: Sourced<Period> }

type About = {
  readonly species: Species
  readonly procedure: ProcedureId
  /** Our own counts of it as they are today. */
  readonly counts: readonly OwnCount[]
  /** Whether owners are told of that count at all. */
  readonly isTold: (question: OwnCount['question']) => boolean
  /** When the late events of its ears came in. */
  readonly lateEvents: readonly string[]
  /** Days on which an ear of it came to be counted. */
  readonly dueDays: readonly string[]
  readonly today: string
  readonly zone: string
  readonly house: Case
  readonly rules: FiguresRules
}

/**
 * Owed while our own counts are others than those a person looked at last, whether they approved them or left what
 * owners hear as it was; only for counts that owners are told of. From a late event on it is owed sooner. Null while
 * nothing changed.
 *
 * @example owedFigures({ species: 'dog', procedure: 'teca-lbo', counts, … })?.changed
 */
export function owedFigures(about: About): FiguresOwed | null {
  const { species, procedure, house, rules, zone, today } = about
  const mine = ({ body }: { readonly body: { readonly species: Species; readonly procedure: ProcedureId } }) =>
    body.species === species && body.procedure === procedure
  const approved = house.live('figures-approved').filter(mine)
  const looked = [...approved, ...house.live('figures-left').filter(mine)].sort((a, b) => (a.at < b.at ? -1 : 1))
  const last = looked.at(-1)
  const told = about.counts.filter(({ question }) => about.isTold(question))
  // Two approvals side by side are said to nobody; whoever approves again settles them.
  const heard = approved.length === 1 ? approved[0]?.body.figures : undefined
  if (changesOf(last?.body.figures, told).length === 0 && approved.length < 2) return null
  const changed = changesOf(heard, told)
  if (changed.length === 0) return null
  const late = about.lateEvents.filter((at) => last === undefined || at > last.at).sort()[0]
  const of = { species, procedure, changed }
  if (late !== undefined && changed.some(({ outcome }) => byLateEvent.includes(outcome))) {
    return { ...of, because: 'late-event', ...within(late, rules.lateEvent, zone), fact: rules.lateEvent }
  }
  const asOf = last?.body.asOf ?? ''
  const due = about.dueDays.filter((day) => day > asOf && day <= today).sort()[0]
  const since = due ?? (asOf === '' ? today : asOf)
  return { ...of, because: 'counted', ...within(startOfDay(since, zone), rules.counted, zone), fact: rules.counted }
}

/** What a late event decides. */
const byLateEvent: readonly OwnOutcome[] = ['deep_recurrence', 'revision_surgery']

function within(from: string, { value }: Sourced<Period>, zone: string) {
  return { dueFrom: from, dueBy: instantAfter({ at: from, zone }, value) }
}

type Figures = readonly (Counted & { readonly outcome: OwnOutcome; readonly unit: CountUnit })[]

/** Counts that are others than before; of what nobody is known for nothing is said, so it is no change while none was. */
function changesOf(before: Figures | undefined, now: readonly OwnCount[]): ChangedFigure[] {
  return now.flatMap(({ question: { outcome, unit }, events, total, lost }): ChangedFigure[] => {
    const old = before?.find((figure) => figure.outcome === outcome && figure.unit === unit) ?? null
    const same = old !== null && old.events === events && old.total === total && old.lost === lost
    if (same || (old === null && total === 0)) return []
    const counted = old && { events: old.events, total: old.total, lost: old.lost }
    return [{ outcome, unit, before: counted, after: { events, total, lost } }]
  })
}
