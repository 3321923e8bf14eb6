import { type Cells, cellsOf, placeOf } from './cells.ts'
import { drugsOf } from './drug-cells.ts'
import { Unreadable } from './fault.ts'
import { columnsOfReport, type TableMapping } from './mapping.ts'
import { readDate } from './read-date.ts'
import type { Doubt, LaboratoryReport, Place, ReportedDrug, ReportedIsolate, ReportedTest } from './report.ts'
import { type LaboratoryTerms, saysNoGrowth, sideCoded, sideIn, termOf } from './terms.ts'

type Building = ReportedIsolate & { amount: string | null; drugs: ReportedDrug[]; tests: ReportedTest[] }

/** One report from its rows. */
export function reportOfRows(rows: readonly Cells[], mapping: TableMapping, terms: LaboratoryTerms): LaboratoryReport {
  const said = new Map<string, { readonly text: string; readonly place: Place }>()
  for (const means of columnsOfReport) {
    const cells = rows.flatMap((row) => cellsOf(row, means))
    for (const cell of cells) {
      const before = said.get(means)
      if (before && before.text !== cell.text) {
        throw new Unreadable('animals-differ', `${before.text} / ${cell.text}`, cell.place)
      }
      if (!before) said.set(means, cell)
    }
  }
  const text = (means: (typeof columnsOfReport)[number]) => said.get(means)?.text.slice(0, 300) ?? null
  const date = (means: 'born' | 'collected' | 'reported') => {
    const cell = said.get(means)
    return cell ? readDate(cell.text, mapping.dates, cell.place) : null
  }
  const { isolates, none, doubts, lines } = isolatesOf(rows, mapping, terms)
  const first: Place = { line: rows[0]?.line ?? 1, segment: null, field: null }
  const ask = (code: Doubt['code']): Doubt => ({ code, about: {}, place: first })
  const [side, site] = [text('side'), text('site')]
  const ear = side === null ? (site === null ? null : sideIn(site, terms)) : sideCoded(side, terms)
  const status = termOf(terms.statuses, text('status')?.toLowerCase() ?? '')
  const growth = isolates.length > 0 ? 'growth' : none ? 'none' : null
  const [standard, edition] = [text('standard'), text('edition')]
  const species = text('species')
  return {
    laboratory: text('laboratory'),
    accession: text('accession'),
    label: text('label'),
    animal: {
      name: text('animal'),
      owner: text('owner'),
      chip: text('chip')?.replaceAll(/[\s.-]/g, '') ?? null,
      species: species === null ? null : termOf(terms.species, species.toLowerCase()),
      speciesPrinted: species,
      born: date('born'),
    },
    collected: date('collected'),
    reported: date('reported'),
    site,
    side: ear,
    status,
    growth,
    standard: [standard, edition].filter((part) => part !== null).join(' ') || null,
    isolates,
    text: lines,
    doubts: [
      ...(status === null ? [ask('status-not-said')] : []),
      ...(growth === null ? [ask('growth-not-said')] : []),
      ...(ear === null ? [ask('side-not-said')] : ear === 'BOTH' ? [ask('both-sides')] : []),
      ...doubts,
    ],
  }
}

function isolatesOf(rows: readonly Cells[], mapping: TableMapping, terms: LaboratoryTerms) {
  const isolates: Building[] = []
  const doubts: Doubt[] = []
  const lines: string[] = []
  let none = false
  for (const row of rows) {
    for (const { text } of cellsOf(row, 'comment')) if (!lines.includes(text)) lines.push(text)
    const [organism] = cellsOf(row, 'organism')
    const found = drugsOf(row, mapping, terms)
    if (!organism || saysNoGrowth(organism.text, terms)) {
      if (found.drugs.length > 0)
        throw new Unreadable('drug-without-isolate', found.drugs[0]?.drug ?? '', placeOf(row, null))
      if (organism) none = true
      if (organism && !lines.includes(organism.text)) lines.push(organism.text)
      continue
    }
    const isolate = isolateFor(row, organism, isolates)
    for (const drug of found.drugs) addDrug(isolate, drug)
    isolate.tests.push(...found.tests.filter(({ test }) => !isolate.tests.some((one) => one.test === test)))
    doubts.push(...found.doubts)
  }
  return { isolates, none, doubts, lines }
}

function isolateFor(
  row: Cells,
  organism: { readonly text: string; readonly place: Place },
  isolates: Building[],
): Building {
  const [number] = cellsOf(row, 'isolate')
  const name = organism.text.slice(0, 300)
  const known = isolates.find((one) => (number ? one.key === number.text : one.organism === name))
  if (known && known.organism !== name) throw new Unreadable('isolate-twice', name, organism.place)
  const amount = cellsOf(row, 'amount')[0]?.text.slice(0, 300) ?? null
  if (known) {
    known.amount ??= amount
    return known
  }
  const key = number?.text.slice(0, 300) ?? String(isolates.length + 1)
  const made: Building = { key, organism: name, code: null, amount, drugs: [], tests: [] }
  isolates.push(made)
  return made
}

function addDrug(isolate: Building, drug: ReportedDrug): void {
  const before = isolate.drugs.find((one) => one.drug === drug.drug && one.unit === drug.unit)
  if (!before) isolate.drugs.push(drug)
  else if (before.value !== drug.value || before.category !== drug.category) {
    throw new Unreadable('drug-twice', drug.drug, drug.place)
  }
}
