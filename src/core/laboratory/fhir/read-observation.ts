import { Unreadable } from '../fault.ts'
import { readValue } from '../read-value.ts'
import type { Doubt, Place, ReportedDrug, ReportedIsolate, ReportedTest } from '../report.ts'
import { type LaboratoryTerms, saysNoGrowth, termOf } from '../terms.ts'
import { inside, type Part, partOf, partsOf, type Resources, textOf, wordsOf } from './resources.ts'

export type ReadObservation =
  | { readonly kind: 'isolate'; readonly isolate: ReportedIsolate; readonly doubts: readonly Doubt[] }
  /** What grew nothing, and every other line of the report. */
  | { readonly kind: 'text'; readonly line: string; readonly value: string }

/** An organism with the drugs under it; an observation without members and without an organism is a line of text. */
export function readObservation(
  observation: Part,
  resources: Resources,
  terms: LaboratoryTerms,
  before: number,
): ReadObservation {
  checkState(observation)
  const { text: name, codes } = wordsOf(partOf(observation, 'code'))
  const coded = wordsOf(partOf(observation, 'valueCodeableConcept'))
  const value = coded.text ?? textOf(observation, 'valueString')
  const members = [
    ...partsOf(observation, 'hasMember'),
    ...partsOf(observation, 'related').flatMap((one) => inside(one, 'target')),
  ]
  const organism =
    members.length > 0 ||
    codes.some((code) => terms.organismCodes.includes(code)) ||
    terms.organismWords.some((word) => (name ?? '').toLowerCase().includes(word))
  const none =
    value !== null && (saysNoGrowth(value, terms) || coded.codes.some((one) => terms.noGrowthCodes.includes(one)))
  if (!organism || value === null || none) {
    if (members.length > 0) throw new Unreadable('isolate-unclear', name ?? '', placeOf('hasMember'))
    const quantity = partOf(observation, 'valueQuantity')
    const said = value ?? (quantity ? printedQuantity(quantity) : '')
    return {
      kind: 'text',
      line: `${name ?? ''}: ${said}`.slice(0, 2_000),
      value: none ? (terms.noGrowth[0] ?? said) : said,
    }
  }
  const drugs: ReportedDrug[] = []
  const tests: ReportedTest[] = []
  const doubts: Doubt[] = []
  for (const member of members) {
    const found = resources.at(member, 'hasMember')
    if (found) addMember(found, { drugs, tests, doubts }, terms)
  }
  const key = String(before + 1)
  const isolate = { key, organism: value.slice(0, 300), code: coded.codes[0] ?? null, amount: null, drugs, tests }
  return { kind: 'isolate', isolate, doubts }
}

type Found = { readonly drugs: ReportedDrug[]; readonly tests: ReportedTest[]; readonly doubts: Doubt[] }

function addMember(observation: Part, found: Found, terms: LaboratoryTerms): void {
  checkState(observation)
  const test = testIn(observation, terms)
  if (test) found.tests.push(test)
  else {
    const { drug, doubts } = drugOf(observation, terms)
    if (found.drugs.some((one) => one.drug === drug.drug && one.unit === drug.unit)) {
      throw new Unreadable('drug-twice', drug.drug, placeOf('code'))
    }
    found.drugs.push(drug)
    found.doubts.push(...doubts)
  }
}

function testIn(observation: Part, terms: LaboratoryTerms): ReportedTest | null {
  const { text } = wordsOf(partOf(observation, 'code'))
  const test = termOf(terms.tests, (text ?? '').toLowerCase())
  const said = wordsOf(partOf(observation, 'valueCodeableConcept')).text ?? textOf(observation, 'valueString')
  const read = said === null ? null : readValue(said, terms)
  return test !== null && read?.kind === 'test' ? { test, result: read.result } : null
}

/**
 * One drug: its value with the sign beside it, its category in the interpretation.
 *
 * @example drugOf(observation, terms).drug.value // '<=2'
 * Reference: HL7 FHIR R4, Observation.valueQuantity.comparator and Observation.interpretation.
 */
export function drugOf(observation: Part, terms: LaboratoryTerms): { drug: ReportedDrug; doubts: Doubt[] } {
  const { text: name, codes } = wordsOf(partOf(observation, 'code'))
  if (name === null) throw new Unreadable('drug-without-isolate', '', placeOf('code'))
  const meanings = partsOf(observation, 'interpretation').flatMap((one) => wordsOf(one).codes)
  if (meanings.length > 1) throw new Unreadable('category-twice', meanings.join(' / '), placeOf('interpretation'))
  const coded = wordsOf(partOf(observation, 'valueCodeableConcept'))
  const quantity = partOf(observation, 'valueQuantity')
  const printed = quantity
    ? printedQuantity(quantity)
    : (textOf(observation, 'valueString') ?? coded.codes[0] ?? coded.text ?? '')
  const read = readValue(printed, terms)
  const place = placeOf('value')
  const drug = {
    drug: name.slice(0, 300),
    code: codes[0] ?? null,
    value: null,
    unit: null,
    disk: null,
    category: meanings[0] ?? null,
    place,
  }
  switch (read.kind) {
    case 'number': {
      const unit = read.otherUnit === null ? read.unit : null
      const value = read.otherUnit === null ? read.value : `${read.value} ${read.otherUnit}`
      const about = { drug: name, value, unit: read.otherUnit ?? '' }
      const code = read.otherUnit === null ? 'unit-not-said' : 'unit-unknown'
      return { drug: { ...drug, value, unit }, doubts: unit === null ? [{ code, about, place }] : [] }
    }
    case 'category':
    case 'test': {
      const said = read.kind === 'category' ? read.category : read.result
      if (drug.category !== null && read.kind === 'category' && drug.category !== said) {
        throw new Unreadable('category-twice', `${said} / ${drug.category}`, placeOf('interpretation'))
      }
      return { drug: { ...drug, category: drug.category ?? said }, doubts: [] }
    }
    case 'not-tested':
      if (drug.category === null) throw new Unreadable('number-unreadable', name, place)
      return { drug, doubts: [] }
    case 'unclear':
      return {
        drug: { ...drug, value: printed.slice(0, 200) },
        doubts: [{ code: 'value-unclear', about: { drug: name, value: printed.slice(0, 200) }, place }],
      }
  }
}

/** The unit by its code where it is one of ours, else as printed. */
function printedQuantity(quantity: Part): string {
  const unit = textOf(quantity, 'code') ?? textOf(quantity, 'unit') ?? ''
  return `${textOf(quantity, 'comparator') ?? ''}${textOf(quantity, 'value') ?? ''} ${unit}`.trim()
}

/** A line that was entered in error stops the whole report: somebody asks which one is meant instead. */
function checkState(observation: Part): void {
  const status = textOf(observation, 'status') ?? ''
  if (status === 'entered-in-error') throw new Unreadable('entered-in-error', status, placeOf('status'))
}

function placeOf(field: string): Place {
  return { line: 1, segment: 'Observation', field: `Observation.${field}` }
}
