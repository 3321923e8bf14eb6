import type { ColumnWords } from '#content/wording/columns-of-ears.ts'
import { columnsOfYear, columnsOfYearByReason } from '#content/wording/columns-of-year.ts'
import { countsReasons } from '#core/yearly/method.ts'
import type { YearlyOperation, YearlyReport } from '#core/yearly/report-of.ts'
import type { Ends, YearlyRate } from '#core/yearly/yearly-rate.ts'
import { sheet } from '../render/sheet.ts'

/** What the columns of a report mean: one more where it counts by reason. */
export function columnsOfReport({ method }: Pick<YearlyReport, 'method'>): readonly ColumnWords[] {
  return countsReasons(method) ? columnsOfYearByReason : columnsOfYear
}

/** The counts of a yearly report as CSV; its dictionary is `dictionaryOf(columnsOfReport(report))`. */
export function sheetOfYear(report: YearlyReport): string {
  return sheet(
    columnsOfReport(report).map(({ column }) => column),
    report.operations.flatMap((operation) => [
      ...operation.rates.map((rate) => rowOf(rate, operation, report, operation.byReason ? 'all' : null)),
      ...(operation.byReason ?? []).flatMap(({ reason, rates }) =>
        rates.map((rate) => rowOf(rate, operation, report, reason)),
      ),
    ]),
  )
}

/** @param reason null where the report does not count by it */
function rowOf(
  rate: YearlyRate,
  { species, procedure }: YearlyOperation,
  { year, lookedAt, method, dataHash }: YearlyReport,
  reason: string | null,
): string[] {
  return [
    String(year),
    lookedAt,
    species,
    procedure,
    rate.unit,
    ...(reason === null ? [] : [reason]),
    rate.outcome,
    ...[rate.events, rate.total, rate.lost, rate.died, rate.notYetDue, rate.notYetDueWithEvent].map(String),
    rate.said,
    number(rate.share),
    ...[rate.exact, rate.wilson, rate.acrossAnimals, rate.bestAndWorst].flatMap(both),
    number(rate.upTo),
    method,
    dataHash,
  ]
}

function both(ends: Ends | null): [string, string] {
  return ends === null ? ['', ''] : [number(ends[0]), number(ends[1])]
}

function number(share: number | null): string {
  return share === null ? '' : String(share)
}
