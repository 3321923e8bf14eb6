import type { LaboratoryTerms } from './terms.ts'

/** What a printed result is. A comma before three digits can be two numbers and is never taken for one of them. */
export type PrintedValue =
  | {
      readonly kind: 'number'
      readonly value: string
      readonly unit: 'mg/L' | 'mm' | null
      /** A unit that stands there and is not one of ours. */
      readonly otherUnit: string | null
      readonly category: string | null
    }
  | { readonly kind: 'category'; readonly category: string }
  | { readonly kind: 'test'; readonly result: 'positive' | 'negative' }
  | { readonly kind: 'not-tested' }
  | { readonly kind: 'unclear'; readonly given: string }

const signs: Readonly<Record<string, string>> = {
  '': '',
  '=': '',
  '<=': '<=',
  '=<': '<=',
  '≤': '<=',
  '<': '<',
  '>=': '>=',
  '=>': '>=',
  '≥': '>=',
  '>': '>',
}

const number = /^(<=|=<|≤|<|>=|=>|≥|>|=)?\s*(\d+(?:[.,]\d+)?)(?:\s*\/\s*(\d+(?:[.,]\d+)?))?\s*(.*)$/

/** S, I, R, SDD, NS and what older standards print, with the mark that some laboratories put behind. */
const category = /^(SDD|NS|MS|VS|S|I|R)[*#]?$/i

/**
 * Reads `≤0,5 µg/mL`, `<= 0.5`, `2/38`, `18 mm`, `R*`, `>=32 R`, `n.t.`, `POS`.
 *
 * @example readValue('≤0,5 µg/mL', terms) // { kind: 'number', value: '<=0.5', unit: 'mg/L', … }
 */
export function readValue(text: string, terms: LaboratoryTerms): PrintedValue {
  const given = text.normalize('NFKC').replaceAll(/\s+/g, ' ').trim()
  const plain = given.toLowerCase()
  if (plain === '' || terms.notTested.includes(plain)) return { kind: 'not-tested' }
  if (category.test(given)) return { kind: 'category', category: given }
  if (terms.positive.includes(plain)) return { kind: 'test', result: 'positive' }
  if (terms.negative.includes(plain)) return { kind: 'test', result: 'negative' }
  const match = number.exec(given)
  const [first, partner] = [plainNumber(match?.[2]), plainNumber(match?.[3])]
  if (!match || first === null || (match[3] !== undefined && partner === null)) return { kind: 'unclear', given: text }
  const value = `${signs[match[1] ?? ''] ?? ''}${first}${partner === null ? '' : `/${partner}`}`
  // A range, or a second number, is more than one answer.
  if (/^[^\p{L}%]*\d/u.test(match[4] ?? '')) return { kind: 'unclear', given: text }
  const words = (match[4] ?? '').split(' ').filter((word) => word !== '')
  const last = words.at(-1) ?? ''
  const printed = category.test(last) ? last : null
  const unit = (printed === null ? words : words.slice(0, -1)).join(' ')
  const known = unit === '' ? null : readUnit(unit, terms)
  return { kind: 'number', value, unit: known, otherUnit: unit !== '' && !known ? unit : null, category: printed }
}

/** mg/L and µg/mL are one; anything else that is not millimetres is asked about. */
export function readUnit(text: string, terms: LaboratoryTerms): 'mg/L' | 'mm' | null {
  const plain = text.normalize('NFKC').toLowerCase().replaceAll(/\s+/g, '').replaceAll('μ', 'u')
  if (terms.milligramsPerLitre.includes(plain)) return 'mg/L'
  return terms.millimetres.includes(plain) ? 'mm' : null
}

/** `0,125` can only be a fraction; `1,000` can be one or a thousand. */
function plainNumber(text: string | undefined): string | null {
  if (text === undefined || text.length > 12) return null
  if (/^[1-9]\d*,\d{3}$/.test(text)) return null
  const [whole = '', part = ''] = text.replace(',', '.').split('.')
  const rest = part.replace(/0+$/, '')
  return `${whole.replace(/^0+(?=\d)/, '')}${rest === '' ? '' : `.${rest}`}`
}
