import type { LaboratoryReport, ReportedDrug, ReportedIsolate, ReportStatus } from '../report.ts'
import { escapeText } from './fields.ts'

const delimiters = { field: '|', component: '^', repetition: '~', escape: '\\', sub: '&' } as const
const culture = '634-6^Bacteria identified^LN'
const letters: Readonly<Record<ReportStatus, string>> = { preliminary: 'P', final: 'F', corrected: 'C' }

/**
 * A report as one result message of version 2.5.1, so that another program reads of it what we read.
 *
 * @example writeOru(report).split('\r')[0] // 'MSH|^~\\&|QUIET EAR|…'
 * Reference: HL7 version 2.5.1, chapter 7; susceptibilities by OBR-26 and OBR-29 under their culture.
 */
export function writeOru(report: LaboratoryReport): string {
  const { accession, label, animal, isolates, growth } = report
  const status = report.status === null ? '' : letters[report.status]
  const [family, given] = animal.name === null ? ['', ''] : [animal.owner ?? '', animal.name]
  const order = (place: number, service: string, more: Readonly<Record<number, string>>) =>
    segment('OBR', {
      1: String(place),
      2: escaped(label),
      3: escaped(accession),
      4: service,
      7: time(report.collected),
      22: time(report.reported),
      25: status,
      ...more,
    })
  const observations = [
    ...isolates.flatMap((isolate) => isolateLines(isolate)),
    ...(growth === 'none' ? [{ 2: 'ST', 3: culture, 5: 'No growth' }] : []),
  ]
  const lines = [
    `MSH|^~\\&|QUIET EAR|${escaped(report.laboratory)}|||${time(report.reported)}||ORU^R01^ORU_R01|${escaped(accession)}|P|2.5.1`,
    segment('PID', {
      1: '1',
      3: animal.chip === null ? '' : `${animal.chip}^^^^CHIP`,
      5: animal.owner === null ? `^${escaped(animal.name)}` : `${escaped(family)}^${escaped(given)}`,
      7: time(animal.born),
      35: escaped(animal.speciesPrinted ?? animal.species),
    }),
    // An owner of a nameless animal has no place beside it.
    ...(animal.owner !== null ? [segment('NK1', { 1: '1', 2: escaped(animal.owner) })] : []),
    order(1, culture, {}),
    ...report.text.map((text, place) => segment('NTE', { 1: String(place + 1), 3: escaped(text) })),
    ...observations.map((one, place) => segment('OBX', { 1: String(place + 1), 11: status, ...one })),
    segment('SPM', {
      1: '1',
      2: escaped(label),
      4: `^${escaped(report.site)}`,
      9: sideOf(report),
      17: time(report.collected),
    }),
    ...isolates.flatMap((isolate, place) =>
      isolate.drugs.length === 0
        ? []
        : [
            order(place + 2, '29576-6^Susceptibility^LN', {
              26: `634-6&Bacteria identified&LN^${escaped(isolate.key)}`,
              29: `${escaped(label)}^${escaped(accession)}`,
            }),
            ...isolate.drugs.map((drug, at) => segment('OBX', { 1: String(at + 1), 11: status, ...drugLine(drug) })),
          ],
    ),
  ]
  return `${lines.join('\r')}\r`
}

function isolateLines({ key, organism, code, amount, tests }: ReportedIsolate): Readonly<Record<number, string>>[] {
  return [
    { 2: 'CWE', 3: culture, 4: escaped(key), 5: `${escaped(code)}^${escaped(organism)}` },
    ...(amount === null ? [] : [{ 2: 'ST', 3: '^Amount of growth', 4: escaped(key), 5: escaped(amount) }]),
    ...tests.map(({ test, result }) => ({ 2: 'ST', 3: `^${test}`, 4: escaped(key), 5: result })),
  ]
}

function drugLine({ drug, code, value, unit, disk, category }: ReportedDrug): Readonly<Record<number, string>> {
  const match = /^(<=|>=|<|>)?([\d.]+)(?:\/([\d.]+))?$/.exec(value ?? '')
  const ratio = match?.[3] === undefined ? '' : `^/^${match[3]}`
  const said = match ? { 2: 'SN', 5: `${match[1] ?? ''}^${match[2]}${ratio}` } : { 2: 'ST', 5: escaped(value) }
  const method = disk === null ? {} : { 17: `^${escaped(disk)}` }
  return {
    ...said,
    3: `${code === drug ? '' : escaped(code)}^${escaped(drug)}`,
    6: unit ?? '',
    8: escaped(category),
    ...method,
  }
}

function sideOf({ side }: LaboratoryReport): string {
  return side === null ? '' : side === 'BOTH' ? 'BOTH' : side
}

function escaped(text: string | null): string {
  return text === null ? '' : escapeText(text, delimiters)
}

function time(text: string | null): string {
  const [day = '', rest = ''] = (text ?? '').split('T')
  return `${day.replaceAll('-', '')}${rest.replaceAll(':', '')}`
}

function segment(name: string, fields: Readonly<Record<number, string>>): string {
  const last = Math.max(...Object.keys(fields).map(Number))
  const all = Array.from({ length: last }, (_, place) => fields[place + 1] ?? '')
  return [name, ...all].join('|').replace(/\|+$/, '')
}
