import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type Fault, Unreadable } from '../fault.ts'
import type { Doubt, LaboratoryReport, Place, ReportedAnimal, ReportedIsolate, ReportStatus } from '../report.ts'
import { standardIn } from '../standard-in.ts'
import { type LaboratoryTerms, saysNoGrowth, sideCoded, sideIn, termOf } from '../terms.ts'
import { readObservation } from './read-observation.ts'
import { isPart, type Part, partOf, partsOf, Resources, textOf, wordsOf } from './resources.ts'

/**
 * Reads the reports of a FHIR bundle, or one report with what it contains. A fault anywhere and nothing of it is taken.
 * It never throws.
 *
 * @example readFhir(text, terms) // { kind: 'answer', answer: [report] }
 * Reference: HL7 FHIR R4, DiagnosticReport and Observation; susceptibilities under their organism by hasMember.
 */
export function readFhir(text: string, terms: LaboratoryTerms): Outcome<readonly LaboratoryReport[], Fault> {
  try {
    const root = parsed(text)
    const resources = new Resources(root)
    const reports = resources.all.filter((one) => one.resourceType === 'DiagnosticReport')
    if (reports.length === 0) throw new Unreadable('empty', 'DiagnosticReport', { line: 1, field: 'resourceType' })
    return answer(reports.map((report) => reportOf(report, resources, terms)))
  } catch (error) {
    if (error instanceof Unreadable) return refuse(error.fault)
    throw error
  }
}

const longest = 5_000_000

function parsed(text: string): Part {
  if (text.length > longest) throw new Unreadable('too-long', String(text.length), { line: 1 })
  try {
    const value: unknown = JSON.parse(text)
    if (isPart(value)) return value
  } catch {}
  throw new Unreadable('not-readable-text', text.slice(0, 40), { line: 1 })
}

// HL7 FHIR R4, value set diagnostic-report-status.
const statuses: Readonly<Record<string, ReportStatus>> = {
  registered: 'preliminary',
  partial: 'preliminary',
  preliminary: 'preliminary',
  final: 'final',
  amended: 'corrected',
  corrected: 'corrected',
  appended: 'corrected',
}

function reportOf(report: Part, resources: Resources, terms: LaboratoryTerms): LaboratoryReport {
  const place: Place = { line: 1, segment: 'DiagnosticReport', field: 'DiagnosticReport.status' }
  const printed = textOf(report, 'status') ?? ''
  const status = termOf(statuses, printed)
  if (status === null)
    throw new Unreadable(printed === 'entered-in-error' ? 'entered-in-error' : 'status-unknown', printed, place)
  const specimen = resources.at(partsOf(report, 'specimen')[0] ?? null, 'specimen', false)
  const isolates: ReportedIsolate[] = []
  const text: string[] = []
  const doubts: Doubt[] = []
  let none = false
  for (const result of partsOf(report, 'result')) {
    const observation = resources.at(result, 'result')
    if (!observation) continue
    const read = readObservation(observation, resources, terms, isolates.length)
    if (read.kind === 'isolate') {
      isolates.push(read.isolate)
      doubts.push(...read.doubts)
    } else {
      text.push(read.line)
      none = none || saysNoGrowth(read.value, terms)
    }
  }
  const conclusion = textOf(report, 'conclusion')
  if (conclusion !== null) text.push(conclusion)
  const { site, side } = siteOf(specimen, terms)
  const growth = isolates.length > 0 ? 'growth' : none ? 'none' : null
  const ask = (code: Doubt['code']): Doubt => ({ code, about: {}, place })
  return {
    laboratory: textOf(partsOf(report, 'performer')[0] ?? null, 'display'),
    accession: textOf(partsOf(report, 'identifier')[0] ?? null, 'value'),
    label: textOf(specimen ? (partsOf(specimen, 'identifier')[0] ?? null) : null, 'value'),
    animal: animalOf(resources.at(partOf(report, 'subject'), 'subject', false), terms),
    collected:
      textOf(specimen ? partOf(specimen, 'collection') : null, 'collectedDateTime') ??
      textOf(report, 'effectiveDateTime'),
    reported: textOf(report, 'issued'),
    site,
    side,
    status,
    growth,
    standard: standardIn(text),
    isolates,
    text,
    doubts: [
      ...(growth === null ? [ask('growth-not-said')] : []),
      ...(side === null ? [ask('side-not-said')] : side === 'BOTH' ? [ask('both-sides')] : []),
      ...doubts,
    ],
  }
}

/** The animal's name is its given name; its owner is a contact of it, or its family name. */
function animalOf(patient: Part | null, terms: LaboratoryTerms): ReportedAnimal {
  const named = patient ? (partsOf(patient, 'name')[0] ?? null) : null
  const given =
    named && Array.isArray(named.given) ? named.given.filter((one) => typeof one === 'string').join(' ') : ''
  const contact = patient ? partOf(partsOf(patient, 'contact')[0] ?? {}, 'name') : null
  const owner = contact ? ownerIn(contact) : given === '' ? null : textOf(named, 'family')
  const chips = patient ? partsOf(patient, 'identifier').flatMap((one) => textOf(one, 'value') ?? []) : []
  const fifteen = [...new Set(chips.filter((one) => /^\d{15}$/.test(one)))]
  const animal = patient
    ? partsOf(patient, 'extension').find((one) => textOf(one, 'url')?.endsWith('patient-animal'))
    : null
  const kind = animal ? partsOf(animal, 'extension').find((one) => textOf(one, 'url') === 'species') : null
  const { text, codes } = wordsOf(kind ? partOf(kind, 'valueCodeableConcept') : null)
  const species = [text, ...codes].flatMap((one) =>
    one === null ? [] : (termOf(terms.species, one.toLowerCase()) ?? []),
  )
  return {
    name: given !== '' ? given : (textOf(named, 'text') ?? textOf(named, 'family')),
    owner,
    chip: fifteen.length === 1 ? (fifteen[0] ?? null) : null,
    species: species[0] ?? null,
    speciesPrinted: text,
    born: textOf(patient, 'birthDate'),
  }
}

function ownerIn(name: Part): string | null {
  const given = Array.isArray(name.given) ? name.given.filter((one) => typeof one === 'string').join(' ') : ''
  const both = [given, textOf(name, 'family') ?? ''].filter((one) => one !== '').join(' ')
  return textOf(name, 'text') ?? (both === '' ? null : both)
}

function siteOf(specimen: Part | null, terms: LaboratoryTerms): Pick<LaboratoryReport, 'site' | 'side'> {
  const collection = specimen ? partOf(specimen, 'collection') : null
  const concepts = [specimen ? partOf(specimen, 'type') : null, collection ? partOf(collection, 'bodySite') : null]
  const said = concepts.map((one) => wordsOf(one))
  const words = said.flatMap(({ text }) => text ?? [])
  const codes = said.flatMap((one) => one.codes)
  const sides = [...words.map((one) => sideIn(one, terms)), ...codes.map((one) => sideCoded(one, terms))]
  const found = [...new Set(sides.filter((one) => one !== null))]
  const site = [...new Set(words)].join(', ')
  return { site: site === '' ? null : site.slice(0, 300), side: found.length > 1 ? 'BOTH' : (found[0] ?? null) }
}
