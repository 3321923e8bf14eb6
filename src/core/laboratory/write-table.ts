import type { TableMapping } from './mapping.ts'
import type { LaboratoryReport, ReportedDrug, ReportedIsolate } from './report.ts'

/** The columns that we write, and how we read them again. */
export const ourTable = {
  columns: [
    ['report_id', 'accession'],
    ['laboratory', 'laboratory'],
    ['sample_id', 'label'],
    ['animal', 'animal'],
    ['owner', 'owner'],
    ['chip', 'chip'],
    ['species', 'species'],
    ['born', 'born'],
    ['sample_date', 'collected'],
    ['reported', 'reported'],
    ['site', 'site'],
    ['side', 'side'],
    ['status', 'status'],
    ['standard', 'standard'],
    ['isolate', 'isolate'],
    ['organism', 'organism'],
    ['growth', 'amount'],
    ['drug', 'drug'],
    ['value', 'value'],
    ['unit', 'unit'],
    ['category', 'category'],
    ['disk', 'disk'],
    ['comment', 'comment'],
  ].map(([heading, means]) => ({ heading, means, drug: null, unit: null })) as TableMapping['columns'],
  delimiter: ',',
  dates: null,
  unit: null,
  comma: null,
} as const satisfies TableMapping

/**
 * Reports as a long table: a row for each drug and each remark, with what the report says of itself in every row.
 *
 * @example writeTable([report]).split('\r\n')[0] // 'report_id,laboratory,…'
 * Reference: RFC 4180.
 */
export function writeTable(reports: readonly LaboratoryReport[]): string {
  const heading = ourTable.columns.map((column) => column.heading)
  return [heading, ...reports.flatMap(rowsOf)].map((row) => `${row.map(quoted).join(',')}\r\n`).join('')
}

function rowsOf(report: LaboratoryReport): string[][] {
  const { animal } = report
  const head = [
    report.accession,
    report.laboratory,
    report.label,
    animal.name,
    animal.owner,
    animal.chip,
    animal.speciesPrinted ?? animal.species,
    animal.born,
    report.collected,
    report.reported,
    report.site,
    report.side,
    report.status,
    report.standard,
  ].map((cell) => cell ?? '')
  const row = (isolate: ReportedIsolate | null, drug: readonly string[], comment = '') => [
    ...head,
    isolate?.key ?? '',
    isolate?.organism ?? '',
    isolate?.amount ?? '',
    ...drug,
    comment,
  ]
  const empty = ['', '', '', '', '']
  const none = report.growth === 'none' ? [[...head, '', 'No growth', '', ...empty, '']] : []
  return [
    ...none,
    ...report.isolates.flatMap((isolate) => {
      const rows = [
        ...isolate.drugs.map(drugCells),
        ...isolate.tests.map(({ test, result }) => [test, result, '', '', '']),
      ]
      return (rows.length === 0 ? [empty] : rows).map((cells) => row(isolate, cells))
    }),
    ...report.text.map((text) => row(null, empty, text)),
  ]
}

function drugCells({ drug, value, unit, category, disk }: ReportedDrug): string[] {
  return [drug, value ?? '', unit ?? '', category ?? '', disk ?? '']
}

/** What a spreadsheet would run as a formula gets an apostrophe in front, which reading takes away again. */
function quoted(cell: string): string {
  const safe = /^'*[=+\-@]/.test(cell) ? `'${cell}` : cell
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
