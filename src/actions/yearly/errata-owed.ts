import { erratumWithin } from '#content/evidence/yearly-method.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { erratumOwed } from '#core/owed/reports.ts'
import type { Projected } from '../store.ts'
import { changedSince } from './changed-since.ts'
import { frozenReports } from './frozen-reports.ts'

/** The errata that frozen reports are owed because of one case. */
export function errataOwed(file: CaseFile, about: Projected): OwedItem[] {
  return frozenReports(file.house).flatMap(({ line: { body }, readUntil }) => {
    const { changes, causes } = changedSince({ year: body.year, lookedAt: body.lookedAt, readUntil }, about)
    const since = causes[0]?.envelope.receivedAt
    if (since === undefined) return []
    const item = erratumOwed(file, { year: body.year, changes, since, within: erratumWithin })
    return item ? [item] : []
  })
}
