import type { CaseFile } from '#core/journal/clinic.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { type ResultLine, sideOf, specimenOf } from '#core/owed/specimen-loop.ts'
import { type Moment, wallClock } from '#core/time/moment.ts'
import type { LaboratoryReport, Place, ReportedDrug } from './report.ts'

const nowhere: Place = { line: 1, segment: null, field: null }

/**
 * A result of a case as a report, so that it can be written as a table or a message for another program.
 *
 * @example writeOru(reportOfResult(result, file))
 */
export function reportOfResult(result: ResultLine, file: CaseFile): LaboratoryReport {
  const { theCase } = file
  const { body } = result
  const specimen = specimenOf(theCase, body.specimen)
  const identity = theCase.latest('identity')?.body ?? null
  const owner = theCase
    .live('household')
    .flatMap((line) => line.body.contacts)
    .find(({ roles }) => roles.includes('owner'))
  return {
    laboratory: body.laboratory === null ? null : contactNamed(file, body.laboratory),
    accession: body.accession,
    label: specimen?.body.label ?? null,
    animal: {
      name: identity?.name ?? null,
      owner: owner ? contactNamed(file, owner.contact) : null,
      chip: identity?.chip ?? null,
      species: identity?.species ?? null,
      speciesPrinted: identity?.species ?? null,
      born: identity?.born ? dateOf(identity.born) : null,
    },
    collected: specimen ? timeOf(specimen) : null,
    reported: timeOf(result),
    site: specimen?.body.site ?? null,
    side: sideOf(result),
    status: body.status,
    growth: body.growth,
    standard: body.standard,
    isolates: body.isolates.map(({ key, organism, amount, results, tests }) => {
      return { key, organism, code: null, amount, drugs: results.map(drugOf), tests }
    }),
    text: body.text === null ? [] : body.text.split('\n').filter((line) => line.trim() !== ''),
    doubts: [],
  }
}

/** The printed value apart from its unit, as it was read; a category alone has no value. */
function drugOf(row: BodyOf<'specimen-result'>['isolates'][number]['results'][number]): ReportedDrug {
  const { drug, raw, disk, category, method } = row
  const found = /^(.*\S) (mg\/L|mm)$/.exec(raw)
  const unit = found?.[2] === 'mm' ? 'mm' : found ? 'mg/L' : method === 'DISK' ? 'mm' : method === 'MIC' ? 'mg/L' : null
  const value = raw === category ? null : (found?.[1] ?? raw)
  return { drug, code: null, value, unit: value === null ? null : unit, disk, category, place: nowhere }
}

function timeOf({ header }: Pick<Line, 'header'>): string {
  const { precision } = header.happenedAt
  const local = wallClock(header.happenedAt)
  const day = local.toPlainDate().toString()
  return precision === 'minute' || precision === 'second'
    ? `${day}T${local.toPlainTime().toString({ smallestUnit: 'minute' })}${local.offset}`
    : dateOf(header.happenedAt)
}

/** As finely as it is known: a year stays a year. */
function dateOf(moment: Moment): string {
  const day = wallClock(moment).toPlainDate().toString()
  return moment.precision === 'year' ? day.slice(0, 4) : moment.precision === 'month' ? day.slice(0, 7) : day
}
