import { Unreadable } from '../fault.ts'
import { readUnit, readValue } from '../read-value.ts'
import type { Doubt, ReportedDrug, ReportedTest } from '../report.ts'
import { type LaboratoryTerms, saysNoGrowth, termOf } from '../terms.ts'
import { component, placeOf, rawField, repetitions, subComponents, wholeText } from './fields.ts'
import type { Observation } from './orders.ts'
import type { Segment } from './segments.ts'

/** What an observation is about. What is none of these is text of the report. */
export type Sort = 'organism' | 'no-growth' | 'amount' | 'drug' | 'test' | 'text'

export function nameOf(obx: Segment): string {
  return component(obx, 3, 2) ?? component(obx, 3, 5) ?? component(obx, 3) ?? ''
}

/** Which sort of line it is, by its codes, its words and the form of its value. */
export function sortOf({ obx }: Observation, child: boolean, terms: LaboratoryTerms): Sort {
  const code = component(obx, 3) ?? ''
  const name = nameOf(obx).toLowerCase()
  const type = component(obx, 2)
  const value = wholeText(obx, 5)
  if (testOf(obx, terms) !== null) return 'test'
  const organism =
    terms.organismCodes.includes(code) || (!child && terms.organismWords.some((word) => name.includes(word)))
  if (organism && type !== 'NM' && type !== 'SN') {
    const codes = codesOf(obx)
    if (value !== null && (saysNoGrowth(value, terms) || codes.some((one) => terms.noGrowthCodes.includes(one)))) {
      return 'no-growth'
    }
    return value === null ? 'text' : 'organism'
  }
  if (terms.amountCodes.includes(code) || terms.amountWords.some((word) => name.includes(word))) return 'amount'
  if (terms.drugCodes.includes(code)) return 'drug'
  const category = categoryIn(obx)
  const unit = readUnit(component(obx, 6) ?? '', terms)
  if (category !== null) return 'drug'
  if (unit !== null && value !== null && readValue(value, terms).kind === 'number') return 'drug'
  return child && (type === 'SN' || type === 'NM') ? 'drug' : 'text'
}

/** The codes and the text of the value of a coded observation. */
export function codesOf(obx: Segment): string[] {
  const value = repetitions(obx, 5)[0] ?? ''
  return [1, 4].flatMap((place) => subComponents(value, place, obx.delimiters)[0] ?? [])
}

export function isCoded(obx: Segment): boolean {
  return ['CE', 'CWE', 'CNE', 'CF'].includes(component(obx, 2) ?? '')
}

export function organismIn(obx: Segment): { readonly organism: string; readonly code: string | null } {
  if (!isCoded(obx)) return { organism: wholeText(obx, 5)?.slice(0, 300) ?? '', code: null }
  const value = repetitions(obx, 5)[0] ?? ''
  const [code, text, , , other, , , , original] = value
    .split(obx.delimiters.component)
    .map((_, place) => subComponents(value, place + 1, obx.delimiters)[0] ?? null)
  return { organism: (text ?? other ?? original ?? code ?? '').slice(0, 300), code: code ?? null }
}

export function testOf(obx: Segment, terms: LaboratoryTerms): ReportedTest | null {
  const test =
    termOf(terms.tests, nameOf(obx).toLowerCase()) ?? termOf(terms.tests, component(obx, 3)?.toLowerCase() ?? '')
  if (test === null) return null
  const said = [wholeText(obx, 5), component(obx, 5, 2), component(obx, 5), component(obx, 8)]
  for (const text of said) {
    const read = text === null ? null : readValue(text, terms)
    if (read?.kind === 'test') return { test, result: read.result }
  }
  return null
}

const categories = /^(SDD|NS|MS|VS|S|I|R)$/

/** A category stands in the eighth field, or is the value itself; both must say the same. */
function categoryIn(obx: Segment): string | null {
  const [said, type, value] = [component(obx, 8), component(obx, 2), component(obx, 5)]
  const flag = said !== null && categories.test(said) ? said : null
  const own = type !== 'NM' && type !== 'SN' && value !== null && categories.test(value) ? value : null
  if (flag !== null && own !== null && flag !== own) {
    throw new Unreadable('category-twice', `${own} / ${flag}`, placeOf(obx, 8))
  }
  return flag ?? own
}

/** One drug with its value; a line that says only that it was not tested is none. */
export function drugIn({ obx }: Observation, terms: LaboratoryTerms): { drug: ReportedDrug | null; doubts: Doubt[] } {
  if (repetitions(obx, 5).length > 1) throw new Unreadable('several-values', rawField(obx, 5), placeOf(obx, 5))
  const place = placeOf(obx, 5)
  const [name, code] = [nameOf(obx), component(obx, 3)]
  if (name === '') throw new Unreadable('drug-without-isolate', '', placeOf(obx, 3))
  const category = categoryIn(obx)
  const made = (part: Partial<ReportedDrug>): ReportedDrug => {
    return { drug: name.slice(0, 300), code, value: null, unit: null, disk: diskIn(obx), category, place, ...part }
  }
  const text = component(obx, 2) === 'SN' ? structured(obx) : (wholeText(obx, 5) ?? '')
  const read = readValue(text, terms)
  if (component(obx, 2) === 'NM' && read.kind !== 'number') {
    if (read.kind !== 'not-tested') throw new Unreadable('number-unreadable', text, place)
  }
  if (read.kind === 'not-tested') return { drug: category === null ? null : made({}), doubts: [] }
  if (read.kind === 'category' || read.kind === 'test') {
    return {
      drug: made({ category: category ?? (read.kind === 'category' ? read.category : read.result) }),
      doubts: [],
    }
  }
  if (read.kind === 'unclear') {
    // A coded value such as "S^Susceptible" says its category in its code.
    if (category !== null && component(obx, 2) !== 'SN') return { drug: made({}), doubts: [] }
    if (component(obx, 2) === 'SN') throw new Unreadable('number-unreadable', rawField(obx, 5), place)
    const about = { drug: name, value: text.slice(0, 200) }
    return { drug: made({ value: text.slice(0, 200) }), doubts: [{ code: 'value-unclear', about, place }] }
  }
  const printed = component(obx, 6) ?? component(obx, 6, 2)
  const unit = printed === null ? read.unit : readUnit(printed, terms)
  const other = printed !== null && unit === null ? printed : read.otherUnit
  if (read.category !== null && category !== null && read.category !== category) {
    throw new Unreadable('category-twice', `${read.category} / ${category}`, placeOf(obx, 8))
  }
  const value = other === null ? read.value : `${read.value} ${other}`
  const drug = made({ value, unit, category: category ?? read.category })
  const about = { drug: name, value, unit: other ?? '' }
  const doubts: Doubt[] =
    unit !== null ? [] : [{ code: other === null ? 'unit-not-said' : 'unit-unknown', about, place: placeOf(obx, 6) }]
  return { drug, doubts }
}

/** What a disk holds, where the method of the line names it: `30 µg`. */
function diskIn(obx: Segment): string | null {
  const method = component(obx, 17, 2) ?? component(obx, 17) ?? ''
  return /\d+(?:\.\d+)?(?:\/\d+(?:\.\d+)?)?\s*(?:µg|ug|mcg|units?|iu)\b/i.exec(method)?.[0] ?? null
}

/** `<=^0.5`, `>^4`, `^0.5` and the ratio `<=^2^/^38`; a range is two answers and none of them is taken. */
function structured(obx: Segment): string {
  const value = repetitions(obx, 5)[0] ?? ''
  const part = (place: number) => subComponents(value, place, obx.delimiters)[0] ?? ''
  const [sign, first, between, second] = [part(1), part(2), part(3), part(4)]
  const range = between !== '' && between !== '/' && between !== ':'
  if (range || (second !== '' && between === '')) throw new Unreadable('number-unreadable', value, placeOf(obx, 5))
  return `${sign}${first}${second === '' ? '' : `/${second}`}`
}
