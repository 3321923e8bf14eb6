import { columnsOfYear } from '#content/wording/columns-of-year.ts'
import type { Ends, YearlyReport } from '#core/yearly/report-of.ts'
import { sheet } from '../render/sheet.ts'

/** The counts of a yearly report as CSV; its dictionary is `dictionaryOf(columnsOfYear)`. */
export function sheetOfYear({ year, lookedAt, operations, method, dataHash }: YearlyReport): string {
  return sheet(
    columnsOfYear.map(({ column }) => column),
    operations.flatMap(({ species, procedure, rates }) =>
      rates.map((rate) => [
        String(year),
        lookedAt,
        species,
        procedure,
        rate.unit,
        rate.outcome,
        ...[rate.events, rate.total, rate.lost, rate.died, rate.notYetDue, rate.notYetDueWithEvent].map(String),
        rate.said,
        number(rate.share),
        ...[rate.exact, rate.wilson, rate.acrossAnimals, rate.bestAndWorst].flatMap(both),
        number(rate.upTo),
        method,
        dataHash,
      ]),
    ),
  )
}

function both(ends: Ends | null): [string, string] {
  return ends === null ? ['', ''] : [number(ends[0]), number(ends[1])]
}

function number(share: number | null): string {
  return share === null ? '' : String(share)
}
