import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { speciesList } from '#core/animal/species.ts'
import { countEvery } from '#core/evidence/own/count-own.ts'
import { type OperatedEar, operatedEarsOf } from '#core/evidence/own/operated-ear.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { ownRulesOf } from '#core/evidence/own/own-rules.ts'
import { caseFileOf } from '#core/journal/case-file.ts'
import { fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import type { Chart } from './chart.ts'
import { demoClinic, staff } from './practice.ts'

const because = 'So few ears of our own say nothing yet. Owners go on hearing what the studies counted.'

/**
 * On that day a person of the invented practice looked at its own counts, as they then were, and left what owners hear as
 * it was: of one ear or two nothing is told, and nobody may say that it was never looked at.
 */
export function lookAtFigures(practice: Chart, cases: readonly Chart[], rows: readonly Row[], day: string): void {
  const earsThen = earsOn(cases, practice, rows, day)
  const rules = ownRulesOf(fold(practice.entries), ownCounting)
  for (const species of speciesList) {
    for (const procedure of procedureIds) {
      const counts = countEvery({ species, procedure }, ownOutcomes, earsThen, day, rules)
      const figures = counts.flatMap(({ question: { outcome, unit }, events, total, lost, period }) =>
        total === 0
          ? []
          : [{ outcome, unit, events, total, lost, from: period?.from ?? null, until: period?.until ?? null }],
      )
      if (figures.length === 0) continue
      const writing = { at: `${day} 17:50`, by: staff.holm, subject: { kind: 'clinic' } } as const
      practice.write('figures-left', writing, { species, procedure, asOf: day, figures, because })
    }
  }
}

/** Before the figures were looked at. */
const evening = '17:30'

/** The operated ears of these cases as far as they were written by the evening of that day. */
export function earsOn(cases: readonly Chart[], practice: Chart, rows: readonly Row[], day: string): OperatedEar[] {
  return cases.flatMap(({ stream, entries }) => {
    const written = entries.filter(({ writtenAt }) => writtenAt < `${day}T${evening}`)
    const journal = { clinic: demoClinic, rows, entries: [...practice.entries, ...written] }
    const file = caseFileOf(journal, stream)
    return file ? operatedEarsOf(file, { ...owedRules, counting: ownCounting }) : []
  })
}
