import { type YearlyMethod, yearlyMethods } from '#content/evidence/yearly-method.ts'
import { procedureWords } from '#content/wording/app-form-words.ts'
import { caution } from '#content/wording/caution.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { yearlyReportWords as words } from '#content/wording/yearly-report.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { looksUpToADay } from '#core/yearly/method.ts'
import type { YearlyOperation, YearlyReport } from '#core/yearly/report-of.ts'
import { type Block, checked, facts, heading, list, type Paper, paragraph } from '../render/model.ts'
import { drawRates } from './draw-rates.ts'
import { type DatedErratum, errataBlocks } from './errata-page.ts'
import { blinkBlocks, tractBlocks, watchBlocks } from './say-over-time.ts'
import { sayAcross, sayRate, tableOfRates } from './say-rates.ts'
import { reasonBlocks } from './say-reasons.ts'

export type FrozenBy = Omit<BodyOf<'report-frozen'>, 'readUntil'> & {
  /** When it was frozen, in UTC; the PDF carries it as its date. */
  readonly at: string
  readonly zone: string
}

/**
 * The report of a year on paper: sentences first, then the chart and the table of the same numbers. Errata stand on a
 * page of their own in front; without any the paper is that of the day it was frozen, for ever.
 */
export function yearlyReport(report: YearlyReport, frozen: FrozenBy, errata: readonly DatedErratum[] = []): Paper {
  const about = { year: String(report.year), ears: String(report.ears), animals: String(report.animals) }
  const day = dayOf({ at: frozen.at, zone: frozen.zone })
  return checked({
    id: `results-${report.year}`,
    title: fill(words.title, about),
    language: papersInEnglish.language,
    about: fill(words.about, about),
    date: fill(looksUpToADay(report.method) ? words.datedUpTo : words.dated, {
      day: sayCalendarDay(report.lookedAt),
      frozen: sayCalendarDay(day),
    }),
    at: frozen.at,
    from: frozen.clinic,
    blocks: [
      ...errataBlocks(errata, frozen.zone),
      ...(errata.length > 0 ? [heading(1, words.errata.report)] : []),
      paragraph(words.lead),
      heading(1, words.decided),
      frozen.decided.length === 0 ? paragraph(words.undecided) : list(frozen.decided),
      ...report.operations.flatMap((operation) => operationBlocks(operation, report)),
      ...methodBlocks(report, frozen, day),
    ],
    caution,
    provenance: fill(words.provenance, {
      clinic: frozen.clinic,
      data: frozen.dataHash.slice(0, 12),
      report: frozen.reportHash.slice(0, 12),
    }),
    print: 'ordinary',
  })
}

function operationBlocks(operation: YearlyOperation, { year, rules, watch }: YearlyReport): Block[] {
  const { species, procedure, rates, byReason, tracts, blink, watched } = operation
  const byEars = rates.filter(({ unit }) => unit === 'ear')
  const sentences = byEars.map((rate) => sayRate(rate, rules.shownFrom))
  const chart = drawRates(byEars, sentences.join(' '))
  const across = sayAcross(byEars)
  return [
    heading(
      1,
      fill(words.operation, { animals: words.animals[species], procedure: procedureWords[procedure] ?? procedure }),
    ),
    heading(2, words.known.title),
    ...sayKnown(operation, year).map(paragraph),
    heading(2, words.rates.title),
    list(sentences),
    ...(across ? [paragraph(across)] : []),
    ...(chart ? [chart] : []),
    tableOfRates(rates, 'ear'),
    heading(2, words.rates.others),
    paragraph(words.rates.othersLead),
    tableOfRates(rates, 'animal'),
    tableOfRates(rates, 'procedure'),
    ...(byReason ? reasonBlocks(byReason, rules.shownFrom) : []),
    ...tractBlocks(tracts),
    ...blinkBlocks(blink, rules.followedEnough),
    ...watchBlocks(watched, watch),
  ]
}

/** How much is known, in sentences. */
function sayKnown({ completeness }: YearlyOperation, year: number): string[] {
  const { ears, heardOf, knownAfterYear, lostAfterYear } = completeness
  const numbers = Object.fromEntries(Object.entries(completeness).map(([name, count]) => [name, String(count)]))
  const due = knownAfterYear + lostAfterYear
  const about = {
    ...numbers,
    year: String(year),
    heard: String(heardOf),
    silent: String(ears - heardOf),
    due: String(due),
    known: String(knownAfterYear),
    lost: String(lostAfterYear),
    notYet: String(completeness.notYetDue),
  }
  const { known } = words
  return [fill(known.ears, about), fill(known.heard, about), due === 0 ? known.yearNone : fill(known.year, about)]
}

function methodBlocks(report: YearlyReport, frozen: FrozenBy, day: string): Block[] {
  const own = words.method
  const rules = (Object.keys(own.rule) as (keyof typeof own.rule)[]).flatMap((rule) =>
    report.rules[rule] === undefined ? [] : fill(own.rule[rule], { value: String(report.rules[rule]) }),
  )
  return [
    heading(1, own.title),
    paragraph(fill(own.version, { version: report.method })),
    list(yearlyMethods[report.method as YearlyMethod]),
    paragraph(fill(own.rules, { rules: rules.join('; ') })),
    facts(
      [own.frozen, `${sayCalendarDay(day)}, ${own.by} ${frozen.by}`],
      [own.program, frozen.program ?? own.noProgram],
      [own.data, frozen.dataHash],
      [own.report, frozen.reportHash],
    ),
    paragraph(fill(own.again, { year: String(report.year) })),
  ]
}
