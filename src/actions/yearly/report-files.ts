import { smallBelow } from '#content/evidence/yearly-method.ts'
import { columnsOfEars } from '#content/wording/columns-of-ears.ts'
import { yearlyCheckWords } from '#content/wording/yearly-refusals.ts'
import { yearlyFiles } from '#content/wording/yearly-report.ts'
import { fill } from '#core/outcome/finding.ts'
import { type RowsToGive, rowsToGive } from '#core/yearly/rows-to-give.ts'
import { sheetOfEars } from '#documents/de-identified/sheet-of-ears.ts'
import { dictionaryOf } from '#documents/render/data-dictionary.ts'
import type { Paper } from '#documents/render/model.ts'
import { columnsOfReport, sheetOfYear } from '#documents/yearly-report/sheet-of-year.ts'
import { yearlyReport } from '#documents/yearly-report/yearly-report.ts'
import type { FrozenReport } from './frozen-reports.ts'
import type { Remade } from './remake-report.ts'

type Made = Extract<Remade, { kind: 'remade' }>

/** One file of a yearly report: what it holds, or the paper it is printed from. */
export type ReportFile = {
  readonly file: string
  readonly mediaType: string
  readonly make: () => string | Paper
}

/** The frozen files of a report; where there are errata, the same paper with them in front, and they themselves as JSON. */
export function reportFiles({ line, errata }: FrozenReport, { report, json }: Made): ReportFile[] {
  const { header, at, body } = line
  const name = (file: keyof typeof yearlyFiles) => fill(yearlyFiles[file], { year: String(body.year) })
  const by = { ...body, at, zone: header.happenedAt.zone }
  const dated = errata.map((one) => ({ ...one.body, at: one.at }))
  const files: ReportFile[] = [
    { file: name('pdf'), mediaType: 'application/pdf', make: () => yearlyReport(report, by) },
    { file: name('csv'), mediaType: 'text/csv', make: () => sheetOfYear(report) },
    { file: name('columns'), mediaType: 'text/csv', make: () => dictionaryOf(columnsOfReport(report)) },
    { file: name('json'), mediaType: 'application/json', make: () => json },
  ]
  if (errata.length === 0) return files
  return [
    ...files,
    { file: name('withErrata'), mediaType: 'application/pdf', make: () => yearlyReport(report, by, dated) },
    { file: name('errata'), mediaType: 'application/json', make: () => `${JSON.stringify(dated, null, 2)}\n` },
  ]
}

/** The rows for somebody outside, and which operations are left out of them. */
export function rowFiles({ line }: FrozenReport, { frozen }: Made): { files: ReportFile[]; given: RowsToGive } {
  const given = rowsToGive(frozen, smallBelow.value)
  const name = (file: keyof typeof yearlyFiles) => fill(yearlyFiles[file], { year: String(line.body.year) })
  return {
    given,
    files: [
      { file: name('rows'), mediaType: 'text/csv', make: () => sheetOfEars(given.ears) },
      { file: name('rowsColumns'), mediaType: 'text/csv', make: () => dictionaryOf(columnsOfEars) },
    ],
  }
}

/** What a report that cannot be made again lacks, in one sentence. */
export function sayBroken({ line: { body } }: FrozenReport, broken: Exclude<Remade, Made>): string {
  const about = { year: String(body.year), hash: body.dataHash, method: body.method, said: String(body.rows) }
  switch (broken.kind) {
    case 'data-missing':
    case 'data-changed':
    case 'method-unknown':
      return fill(yearlyCheckWords[broken.kind], about)
    case 'data-unread':
      return fill(yearlyCheckWords['data-unread'], { ...about, because: broken.because })
    case 'rows-differ':
      return fill(yearlyCheckWords['rows-differ'], { ...about, rows: String(broken.rows) })
    case 'report-differs':
      return fill(yearlyCheckWords['report-differs'], { ...about, hash: body.reportHash, made: broken.made })
  }
}
