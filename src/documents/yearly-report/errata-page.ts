import { procedureWords } from '#content/wording/app-form-words.ts'
import { countUnitNames, ownOutcomeNames } from '#content/wording/own-figures.ts'
import { yearlyReportWords } from '#content/wording/yearly-report.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { type Block, facts, heading, paragraph } from '../render/model.ts'

export type DatedErratum = BodyOf<'report-erratum'> & { readonly at: string }
type Number = DatedErratum['numbers'][number]

const words = yearlyReportWords.errata

/** The errata of a frozen report, each dated, on pages in front of it. */
export function errataBlocks(errata: readonly DatedErratum[], zone: string): Block[] {
  if (errata.length === 0) return []
  return [
    paragraph(words.front),
    ...errata.flatMap((erratum): Block[] => [
      heading(1, fill(words.title, { day: sayCalendarDay(dayOf({ at: erratum.at, zone })) })),
      paragraph(erratum.text),
      facts(
        [words.because, erratum.because],
        [words.by, erratum.by],
        [words.entries, erratum.entries.join(', ') || '–'],
      ),
      erratum.numbers.length === 0 ? paragraph(words.noNumbers) : numbersTable(erratum.numbers),
    ]),
    { kind: 'page-break' },
  ]
}

function numbersTable(numbers: readonly Number[]): Block {
  const { columns, table } = words
  return {
    kind: 'table',
    caption: table,
    rowHeader: true,
    columns: [
      { head: columns.what, align: 'left', share: 2 },
      { head: columns.before, align: 'left', share: 1.4 },
      { head: columns.after, align: 'left', share: 1.4 },
    ],
    rows: numbers.map((one) => [sayNumber(one), sayCounted(one.before), sayCounted(one.after)]),
  }
}

/** Which count it is, in words. */
export function sayNumber({
  species,
  procedure,
  outcome,
  unit,
}: Pick<Number, 'species' | 'procedure' | 'outcome' | 'unit'>): string {
  return fill(words.count, {
    animals: yearlyReportWords.animals[species],
    procedure: procedureWords[procedure] ?? procedure,
    outcome: ownOutcomeNames[outcome],
    unit: countUnitNames[unit],
  })
}

export function sayCounted(counted: Number['before']): string {
  return fill(words.counted, {
    events: String(counted.events),
    total: String(counted.total),
    lost: String(counted.lost),
    notYetDue: String(counted.notYetDue),
  })
}
