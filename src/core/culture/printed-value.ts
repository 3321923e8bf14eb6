import type { TestMethod } from './breakpoint.ts'
import type { Sign } from './ladder.ts'

/** Why a printed value cannot be read; the sentence that says what would make it possible is in content/wording. */
export const valueDoubts = [
  'method-not-stated',
  'unit-not-known',
  'unit-against-method',
  'comma-doubtful',
  'value-not-read',
  'off-the-ladder',
  'sum-of-both-parts',
] as const
export type ValueDoubt = (typeof valueDoubts)[number]

/** What stands printed of one drug, before any breakpoint. */
export type PrintedValue =
  | {
      readonly kind: 'mic'
      readonly sign: Sign
      readonly amount: string /** Of a combination: the other part. */
      readonly partner: string | null
    }
  | { readonly kind: 'zone'; readonly sign: Sign; readonly millimetres: string }
  | { readonly kind: 'category' }
  | { readonly kind: 'unreadable'; readonly doubt: ValueDoubt }

const shape =
  /^(?<sign><=|=<|≤|>=|=>|≥|<|>|=)? ?(?<amount>\d+(?:[.,]\d+)?|[.,]\d+)(?: ?\/ ?(?<partner>\d+(?:[.,]\d+)?))? ?(?<unit>[a-zµμ][a-zµμ/.]*)?$/
const signs: Readonly<Record<string, Sign>> = { '=<': '<=', '≤': '<=', '=>': '>=', '≥': '>=' }
/** The same unit in the ways it is printed. */
const concentrations = new Set(['mg/l', 'ug/ml', 'µg/ml', 'μg/ml', 'mcg/ml'])
const lettersOnly = /^(?:s|sdd|i|r|ns|susceptible|sensitive|intermediate|resistant|nonsusceptible)\*?$/
const noZone = /^no (?:zone|inhibition)$/

/**
 * Reads what is printed. Nothing is guessed: a bare number says neither mg/L nor mm unless the method is stated, and
 * another unit is not turned into one of ours.
 *
 * @example readPrinted('<=0.5/9.5 µg/mL', null) // { kind: 'mic', sign: '<=', amount: '0.5', partner: '9.5' }
 */
export function readPrinted(raw: string, method: TestMethod | null): PrintedValue {
  const text = raw.trim().toLowerCase().replaceAll(/\s+/g, ' ')
  if (lettersOnly.test(text.replaceAll(/[- ]/g, ''))) return { kind: 'category' }
  if (noZone.test(text))
    return method === 'MIC' ? doubt('unit-against-method') : { kind: 'zone', sign: '=', millimetres: '6' }
  const found = shape.exec(text)?.groups
  if (!found?.amount) return doubt('value-not-read')
  if (thousandsPossible(found.amount) || (found.partner && thousandsPossible(found.partner)))
    return doubt('comma-doubtful')
  const told = unitMeans(found.unit)
  if (told === 'unknown') return doubt('unit-not-known')
  if (told && method && told !== method) return doubt('unit-against-method')
  const means = told ?? method
  if (!means) return doubt('method-not-stated')
  const sign = found.sign === undefined ? '=' : (signs[found.sign] ?? (found.sign as Sign))
  const amount = decimal(found.amount)
  if (means === 'MIC') return { kind: 'mic', sign, amount, partner: found.partner ? decimal(found.partner) : null }
  return found.partner ? doubt('value-not-read') : { kind: 'zone', sign, millimetres: amount }
}

function unitMeans(unit: string | undefined): TestMethod | 'unknown' | null {
  if (unit === undefined) return null
  if (unit === 'mm') return 'DISK'
  return concentrations.has(unit) ? 'MIC' : 'unknown'
}

/** `1,024` is a thousand and more in one country and a little over one in another. */
function thousandsPossible(amount: string): boolean {
  return /^[1-9]\d{0,2},\d{3}$/.test(amount)
}

function decimal(amount: string): string {
  const dotted = amount.replace(',', '.')
  return dotted.startsWith('.') ? `0${dotted}` : dotted
}

function doubt(one: ValueDoubt): PrintedValue {
  return { kind: 'unreadable', doubt: one }
}

/** The categories that a laboratory prints, as ours; null for anything else. Nothing is translated between standards. */
export type PrintedCategory = 'S' | 'SDD' | 'I' | 'R' | 'NS'
const printedCategories: Readonly<Record<string, PrintedCategory>> = {
  s: 'S',
  susceptible: 'S',
  sensitive: 'S',
  sdd: 'SDD',
  i: 'I',
  intermediate: 'I',
  r: 'R',
  resistant: 'R',
  ns: 'NS',
  nonsusceptible: 'NS',
}

/**
 * The laboratory's category in one spelling.
 *
 * @example printedCategory('R*') // 'R'
 */
export function printedCategory(text: string | null): PrintedCategory | null {
  if (text === null) return null
  return printedCategories[text.toLowerCase().replaceAll(/[- *]/g, '')] ?? null
}
