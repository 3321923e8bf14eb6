import type { Sourced } from '#core/evidence/sourced.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { type Leave, standsFor } from '#core/people/leave.ts'
import { owedCodeOf } from './owed-code-of.ts'
import type { OwedCode } from './owed-item.ts'
import { standingOf } from './standing.ts'

/** What is lost while it waits, worst first. */
export const riskClasses = ['harm', 'before-the-cut', 'result', 'follow-up', 'record'] as const
export type RiskClass = (typeof riskClasses)[number]
export type OwedRisks = Readonly<Record<OwedCode, Sourced<RiskClass>>>

/** A row of what is owed, as the lists carry it. */
export type OwedLine = {
  readonly id: string
  /** A person's id or a role. */
  readonly who: string
  readonly dueFrom: string
  readonly dueBy: string
}

/** The class of a row with who says so; a row that no rule made is a matter of the record. */
export function riskOf(
  id: string,
  risks: OwedRisks,
): { readonly class: RiskClass; readonly fact: Sourced<RiskClass> | null } {
  const code = owedCodeOf(id)
  return code === undefined ? { class: 'record', fact: null } : { class: risks[code].value, fact: risks[code] }
}

/**
 * What is owed by risk and lateness: what harms an animal while it waits and may be done now comes first, then what is
 * late, what may be done now, what comes later; in each by class of risk, then by its limit. Pure in the moment given.
 *
 * @example sortOwed(rows, '2026-03-20T09:00:00.000Z', owedRisks)[0].id // 'eye:operation-1:LEFT:…'
 * Reference: a house judgement, named as such in content/follow-up/owed-risks.ts.
 */
export function sortOwed<Row extends OwedLine>(rows: readonly Row[], now: string, risks: OwedRisks): Row[] {
  const ranked = rows.map((row) => {
    const { class: risk } = riskOf(row.id, risks)
    const { kind } = standingOf(row, now)
    const band = risk === 'harm' && kind !== 'later' ? 0 : { late: 1, now: 2, later: 3 }[kind]
    return { row, band, risk: riskClasses.indexOf(risk) }
  })
  return ranked
    .sort(
      (a, b) =>
        a.band - b.band ||
        a.risk - b.risk ||
        compareText(a.row.dueBy, b.row.dueBy) ||
        compareText(a.row.dueFrom, b.row.dueFrom) ||
        compareText(a.row.id, b.row.id),
    )
    .map(({ row }) => row)
}

export type Worker = { readonly id: string; readonly role: string }

/** Whose a row is, and why it is mine. */
export type Mine =
  | { readonly kind: 'mine'; readonly because: 'by-name' | 'by-role' }
  | { readonly kind: 'mine'; readonly because: 'as-deputy'; readonly of: string }
  | { readonly kind: 'others' }

/**
 * Who stands in, on that day, for the person a row names; null where the row names a role, or nobody is away.
 *
 * @example deputyOf({ who: 'person-holm' }, people, leaves, '2026-12-24') // 'person-adeyemi'
 */
export function deputyOf(
  row: Pick<OwedLine, 'who'>,
  people: readonly Worker[],
  leaves: readonly Leave[],
  day: string,
): string | null {
  if (!people.some(({ id }) => id === row.who)) return null
  const doer = standsFor(row.who, day, leaves)
  return doer === row.who ? null : doer
}

/**
 * Whether a row is this person's: by name, by role, or because they stand in for somebody who is away that day. What
 * is owed by a person on leave is no longer theirs; deputies in a ring leave it with them.
 *
 * @example ownership(row, { id: 'person-adeyemi', role: 'anaesthetist' }, people, leaves, '2026-12-24')
 */
export function ownership(
  row: Pick<OwedLine, 'who'>,
  me: Worker,
  people: readonly Worker[],
  leaves: readonly Leave[],
  day: string,
): Mine {
  const named = people.find(({ id }) => id === row.who)
  if (named || row.who === me.id) {
    const doer = standsFor(row.who, day, leaves)
    if (doer !== me.id) return { kind: 'others' }
    return row.who === me.id
      ? { kind: 'mine', because: 'by-name' }
      : { kind: 'mine', because: 'as-deputy', of: row.who }
  }
  if (row.who === me.role) return { kind: 'mine', because: 'by-role' }
  const stoodFor = people.find(
    ({ id, role }) => id !== me.id && role === row.who && standsFor(id, day, leaves) === me.id,
  )
  return stoodFor ? { kind: 'mine', because: 'as-deputy', of: stoodFor.id } : { kind: 'others' }
}
