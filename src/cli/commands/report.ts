import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { InputError } from '#actions/input.ts'
import type { Store } from '#actions/store.ts'
import { type FrozenReport, frozenReports } from '#actions/yearly/frozen-reports.ts'
import { type Remade, remakeReport } from '#actions/yearly/remake-report.ts'
import { type ReportFile, reportFiles, rowFiles, sayBroken } from '#actions/yearly/report-files.ts'
import { yearlyCheckWords, yearlyRefusals } from '#content/wording/yearly-refusals.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import { fold } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type PdfPress, pdfPress } from '#documents/render/pdf.ts'
import { loadFonts } from '#server/fonts.ts'
import { withClinic } from '../clinic-data.ts'
import { type CommandFile, Exit, type World } from '../command.ts'
import { table } from '../table.ts'
import { makeOutputFolder, writeOutput } from '../write-output.ts'

type Options = {
  readonly year?: string
  readonly out?: string
  readonly data?: string
  readonly clinic?: string
  readonly list?: boolean
  readonly check?: boolean
  readonly rows?: boolean
  readonly json?: boolean
}
type Here = { readonly store: Store; readonly clinic: string; readonly reports: readonly FrozenReport[] }
type Fault = { readonly year: number; readonly code: string; readonly message: string }

export const report: CommandFile = {
  name: 'report',
  add: (program, world) => {
    program
      .command('report')
      .description(
        'the yearly report from its frozen data, the same to the byte each time; its check; rows to give away',
      )
      .option('--year <year>', 'the year of the operations')
      .option('--out <folder>', 'where PDF, CSV and JSON go')
      .option('--rows', 'the de-identified rows of the year in place of the report')
      .option('--check', 'make it again from the data and compare; status 3 naming what differs')
      .option('--list', 'the years that are frozen')
      .option('--data <folder>', 'the data folder')
      .option('--clinic <id>', 'which clinic, when there are several')
      .option('--json', 'one JSON document on standard output')
      .action((options: Options) => {
        const year = options.year === undefined ? null : yearOf(options.year)
        return withClinic({ ...options, env: world.env }, async ({ store, clinic }) => {
          const reports = frozenReports(fold(await store.stream(clinic, 'clinic')))
          const here = { store, clinic, reports }
          if (options.list) return listed(here, options, world)
          if (options.check) return checked(year, here, options, world)
          return written(year, here, options, world)
        })
      })
  },
}

function yearOf(text: string): number {
  if (/^20\d\d$/.test(text)) return Number(text)
  throw new InputError('wrong-value', 'year', `year: ${JSON.stringify(text)} is no year; write it like 2025.`)
}

function yearsOf(reports: readonly FrozenReport[]): string {
  return reports.map(({ line }) => line.body.year).join(', ') || yearlyRefusals.nothing
}

/** The report of the year that was named, or why there is none. */
function wanted(year: number | null, { reports }: Here): FrozenReport {
  const about = { year: String(year), years: yearsOf(reports) }
  if (year === null) throw new InputError('missing-field', 'year', fill(yearlyRefusals['no-year'], about))
  const found = reports.find(({ line }) => line.body.year === year)
  if (!found) throw new InputError('not-frozen', 'year', fill(yearlyRefusals['not-frozen'], about))
  return found
}

function listed({ reports }: Here, { json }: Options, world: World): void {
  const rows = reports.map(({ line: { at, body }, errata }) => {
    const { year, lookedAt, rows: ears, dataHash, reportHash, method, by } = body
    return { year, frozenAt: at, lookedAt, ears, dataHash, reportHash, method, by, errata: errata.length }
  })
  if (json) world.out(`${JSON.stringify(rows)}\n`)
  else if (rows.length === 0) world.out(`${yearlyCheckWords.none}\n`)
  else {
    const cells = rows.map(({ year, lookedAt, ears, errata, dataHash, by }) =>
      [year, lookedAt, ears, errata, dataHash.slice(0, 12), by].map(String),
    )
    world.out(table(['year', 'looked at', 'ears', 'errata', 'data', 'frozen by'], cells))
  }
}

async function written(year: number | null, here: Here, options: Options, world: World): Promise<void> {
  const frozen = wanted(year, here)
  const { out } = options
  if (out === undefined) throw new InputError('missing-field', 'out', yearlyRefusals['no-out'])
  const made = await remakeReport(here.store, here.clinic, frozen)
  if (made.kind !== 'remade') return broken([faultOf(frozen, made)], options, world)
  const rows = options.rows ? rowFiles(frozen, made) : null
  const print = lazyPress()
  makeOutputFolder(out)
  const files = (rows?.files ?? reportFiles(frozen, made)).map((one) => {
    world.err(`${one.file}\n`)
    const bytes = bytesOf(one, print)
    writeOutput(join(out, one.file), bytes)
    return { file: one.file, mediaType: one.mediaType, bytes: bytes.length, sha256: hashBytes(bytes) }
  })
  const { dataHash, reportHash, method, lookedAt } = frozen.line.body
  const answer = {
    year: frozen.line.body.year,
    lookedAt,
    method,
    dataHash,
    reportHash,
    files,
    ...(rows && { leftOut: rows.given.leftOut, smallBelow: rows.given.smallBelow }),
  }
  if (options.json) world.out(`${JSON.stringify(answer)}\n`)
  else
    world.out(
      table(
        ['file', 'bytes', 'SHA-256'],
        files.map((one) => [one.file, String(one.bytes), one.sha256]),
      ),
    )
}

async function checked(year: number | null, here: Here, options: Options, world: World): Promise<void> {
  const reports = year === null ? here.reports : [wanted(year, here)]
  const print = lazyPress()
  const faults: Fault[] = []
  const same: string[] = []
  for (const frozen of reports) {
    const { body } = frozen.line
    const made = await remakeReport(here.store, here.clinic, frozen)
    if (made.kind !== 'remade') {
      faults.push(faultOf(frozen, made))
      continue
    }
    faults.push(
      ...(options.out === undefined ? [] : filesDiffer(frozen, reportFiles(frozen, made), options.out, print)),
    )
    const about = { year: String(body.year), rows: String(body.rows), data: body.dataHash, report: body.reportHash }
    same.push(fill(yearlyCheckWords.same, about))
  }
  if (faults.length > 0) return broken(faults, options, world)
  if (options.json) world.out(`${JSON.stringify({ ok: true, checked: reports.map(({ line }) => line.body.year) })}\n`)
  else world.out(same.length === 0 ? `${yearlyCheckWords.none}\n` : same.map((line) => `${line}\n`).join(''))
}

/** Files of an earlier call beside those that are made now. */
function filesDiffer(
  frozen: FrozenReport,
  files: readonly ReportFile[],
  folder: string,
  print: () => PdfPress,
): Fault[] {
  const { year } = frozen.line.body
  return files.flatMap((one) => {
    const path = join(folder, one.file)
    const there = existsSync(path)
    if (there && hashBytes(readFileSync(path)) === hashBytes(bytesOf(one, print))) return []
    const code = there ? 'file-differs' : 'file-missing'
    return [{ year, code, message: fill(yearlyCheckWords[code], { year: String(year), file: one.file }) }]
  })
}

function faultOf(frozen: FrozenReport, made: Exclude<Remade, { kind: 'remade' }>): Fault {
  return { year: frozen.line.body.year, code: made.kind, message: sayBroken(frozen, made) }
}

function broken(faults: readonly Fault[], { json }: Options, world: World): never {
  if (json) world.out(`${JSON.stringify({ ok: false, faults })}\n`)
  for (const { message } of faults) world.err(`${message}\n`)
  throw new Exit(3)
}

function bytesOf({ make }: ReportFile, print: () => PdfPress): Uint8Array {
  const made = make()
  return typeof made === 'string' ? new TextEncoder().encode(made) : print()(made)
}

/** Fonts are read only when a paper is set. */
function lazyPress(): () => PdfPress {
  let press: PdfPress | undefined
  return () => {
    press ??= pdfPress(loadFonts())
    return press
  }
}
