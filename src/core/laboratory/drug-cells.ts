import { type Cells, cellsOf, placeOf } from './cells.ts'
import { Unreadable } from './fault.ts'
import type { ColumnMeaning, TableMapping } from './mapping.ts'
import { readValue } from './read-value.ts'
import type { Doubt, Place, ReportedDrug, ReportedTest } from './report.ts'
import { type LaboratoryTerms, termOf } from './terms.ts'

type Found = { readonly drugs: ReportedDrug[]; readonly tests: ReportedTest[]; readonly doubts: Doubt[] }

/** The drugs and tests of one row, whether the table is long or wide. */
export function drugsOf(row: Cells, mapping: TableMapping, terms: LaboratoryTerms): Found {
  const found: Found = { drugs: [], tests: [], doubts: [] }
  const first = (means: ColumnMeaning) => cellsOf(row, means)[0]
  const long = first('drug')
  if (long) {
    const value = first('value')
    const [sign, unit] = [first('sign')?.text ?? '', first('unit')?.text ?? '']
    const printed = `${sign}${value?.text ?? ''}${unit === '' ? '' : ` ${unit}`}`
    const method = unitOfMethod(first('method')?.text ?? '', terms)
    const category = first('category')?.text ?? null
    const line = { drug: long.text, printed: value ? printed : '', category, method, usual: mapping.unit }
    take(found, line, value?.place ?? long.place, mapping, terms)
    const disk = first('disk')?.text ?? null
    const last = found.drugs.at(-1)
    if (last && disk !== null) found.drugs[found.drugs.length - 1] = { ...last, disk }
  }
  const wide = new Map<string, { values: string; category: string | null; unit: 'mg/L' | 'mm' | null; place: Place }>()
  for (const { column, text } of row.cells) {
    if (column.drug === null || text === '') continue
    const key = `${column.drug} ${column.unit ?? ''}`
    const at = wide.get(key) ??
      wide.get(`${column.drug} `) ?? { values: '', category: null, unit: column.unit, place: placeOf(row, column) }
    if (column.means === 'drug-values') wide.set(key, { ...at, values: text, unit: column.unit })
    else if (column.means === 'drug-categories') setCategory(wide, column.drug, text, placeOf(row, column))
  }
  for (const [key, { values, category, unit, place }] of wide) {
    const drug = key.slice(0, key.lastIndexOf(' '))
    take(found, { drug, printed: values, category, method: unit, usual: mapping.unit }, place, mapping, terms)
  }
  return found
}

/** A column of categories belongs to the values of its drug, whatever they are measured in. */
function setCategory(
  wide: Map<string, { values: string; category: string | null; unit: 'mg/L' | 'mm' | null; place: Place }>,
  drug: string,
  category: string,
  place: Place,
): void {
  const keys = [...wide.keys()].filter((key) => key.slice(0, key.lastIndexOf(' ')) === drug)
  if (keys.length > 1) throw new Unreadable('isolate-unclear', drug, place)
  const key = keys[0] ?? `${drug} `
  wide.set(key, { ...(wide.get(key) ?? { values: '', unit: null, place }), category })
}

function unitOfMethod(text: string, terms: LaboratoryTerms): 'mg/L' | 'mm' | null {
  const words = text.toLowerCase().split(/[^\p{L}\p{N}]+/u)
  if (words.some((word) => terms.zoneWords.includes(word))) return 'mm'
  return words.some((word) => terms.micWords.includes(word)) ? 'mg/L' : null
}

type Printed = {
  readonly drug: string
  readonly printed: string
  readonly category: string | null
  /** What the row says its number is, and what this laboratory's bare numbers are. */
  readonly method: 'mg/L' | 'mm' | null
  readonly usual: 'mg/L' | 'mm' | null
}

function take(found: Found, line: Printed, place: Place, mapping: TableMapping, terms: LaboratoryTerms): void {
  const drug = line.drug.slice(0, 300)
  const text = mapping.comma === null ? line.printed : withoutComma(line.printed, mapping.comma)
  const read = readValue(text, terms)
  const category =
    line.category === null || terms.notTested.includes(line.category.toLowerCase()) ? null : line.category
  const made = (part: Partial<ReportedDrug>): ReportedDrug => {
    return { drug, code: null, value: null, unit: null, disk: null, category, place, ...part }
  }
  const test = termOf(terms.tests, drug.toLowerCase())
  const result = read.kind === 'test' ? read.result : category === null ? null : readValue(category, terms)
  const said = result === null || typeof result === 'string' ? result : result.kind === 'test' ? result.result : null
  if (test !== null && said !== null) {
    found.tests.push({ test, result: said })
    return
  }
  switch (read.kind) {
    case 'not-tested':
      if (category !== null) found.drugs.push(made({}))
      return
    case 'category':
      if (category !== null && category !== read.category) {
        throw new Unreadable('category-twice', `${read.category} / ${category}`, place)
      }
      found.drugs.push(made({ category: read.category }))
      return
    case 'test':
      found.drugs.push(made({ category: category ?? read.result }))
      return
    case 'unclear':
      found.drugs.push(made({ value: line.printed.slice(0, 200) }))
      found.doubts.push({ code: 'value-unclear', about: { drug, value: line.printed.slice(0, 200) }, place })
      return
    case 'number': {
      if (category !== null && read.category !== null && category !== read.category) {
        throw new Unreadable('category-twice', `${read.category} / ${category}`, place)
      }
      if (read.unit !== null && line.method !== null && read.unit !== line.method) {
        throw new Unreadable('unit-disagrees', `${read.unit} / ${line.method}`, place)
      }
      const unit = read.otherUnit === null ? (read.unit ?? line.method ?? line.usual) : null
      const value = read.otherUnit === null ? read.value : `${read.value} ${read.otherUnit}`
      found.drugs.push(made({ value, unit, category: category ?? read.category }))
      if (unit === null) {
        const about = { drug, value: read.value, unit: read.otherUnit ?? '' }
        found.doubts.push({ code: read.otherUnit === null ? 'unit-not-said' : 'unit-unknown', about, place })
      }
    }
  }
}

/** `1,000` once somebody said what it is. */
function withoutComma(text: string, comma: 'decimal' | 'thousands'): string {
  return text.replaceAll(/(\d),(?=\d{3}\b)/g, comma === 'decimal' ? '$1.' : '$1')
}
