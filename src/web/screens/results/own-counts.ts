import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import type { RateRow } from './rate-chart.tsx'

/** The counts of one operation in one species, as the server worked them out. */
export type OwnCounts = OwnFiguresAnswer['counts']

/** The same as rows of a chart, by the names of the outcomes. */
export function rowsOfCounts(counts: OwnCounts): RateRow[] {
  return counts.map((count) => ({ ...count, name: ownOutcomeNames[count.question.outcome] }))
}
