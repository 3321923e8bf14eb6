import type { Sourced } from '../evidence/sourced.ts'
import type { CaseFile } from '../journal/clinic.ts'
import type { Period } from '../time/calendar-day.ts'
import type { EarChange } from '../yearly/ear-changes.ts'
import { surgeonOfEar } from './answerable.ts'
import { operationsOf } from './operations.ts'
import type { OwedItem } from './owed-item.ts'
import { dueWithin } from './results.ts'

export type WrongReport = {
  readonly year: number
  readonly changes: readonly EarChange[]
  /** When the first entry came that makes the frozen report wrong. */
  readonly since: string
  readonly within: Sourced<Period>
}

/**
 * The erratum that a frozen report is owed because of one case, with what the report says of the ear and what is known
 * now; null while nothing contradicts it. The report itself stays as it was.
 *
 * @example erratumOwed(file, { year: 2025, changes, since, within: erratumWithin })?.what // 'report-erratum'
 */
export function erratumOwed(file: CaseFile, { year, changes, since, within }: WrongReport): OwedItem | null {
  const [first] = changes
  if (!first) return null
  const about = { year: String(year) }
  return {
    ...dueWithin(since, within, file.clinic.zone),
    id: `report-erratum:${year}`,
    what: 'report-erratum',
    about,
    who: 'surgeon',
    person: surgeonOfEar(first.side, first.operation, { operations: operationsOf(file), file }),
    way: 'task',
    side: new Set(changes.map(({ side }) => side)).size === 1 ? first.side : null,
    operation: first.operation,
    why: changes.map(({ what, before, after }) => ({
      code: 'report-otherwise',
      about: { ...about, what, before, after },
    })),
    facts: [within],
    withOwner: false,
    revision: changes.length,
  }
}
