import { routeWords } from '#content/wording/app-form-words.ts'
import {
  animalWordsInEnglish,
  dividesInEnglish,
  usesInEnglish,
  whenInEnglish as words,
} from '#content/wording/app-formulary.ts'
import type { Cumulative, DoseRow, Maximum, StockProduct, TabletProduct, When } from '#core/formulary/drug.ts'
import { fill } from '#core/outcome/finding.ts'
import { never } from '#core/outcome/outcome.ts'
import { sayQuantity } from '../case/say-quantity.ts'

/**
 * The heading of a row of the formulary: use, routes, bracket, formulation.
 *
 * @example sayRow(row) // 'local block: around a nerve or splashed on or into tissue'
 */
export function sayRow({ use, routes, qualifier, formulation }: DoseRow): string {
  const ways = routes.map((route) => routeWords[route]).join(words.or)
  const bracket = qualifier ? ` (${qualifier})` : ''
  return `${usesInEnglish[use]}: ${ways}${bracket}${formulation ? `, ${formulation}` : ''}`
}

/** When a caution or exclusion applies; empty when always. Example: `when: sepsis or liver disease`. */
export function sayWhen(when: When | undefined): string {
  if (!when) return ''
  switch (when.kind) {
    case 'any-of':
      return fill(words.anyOf, { words: when.words.map((word) => animalWordsInEnglish[word]).join(words.or) })
    case 'all-of':
      return fill(words.allOf, { words: when.words.map((word) => animalWordsInEnglish[word]).join(words.and) })
    case 'lighter-than':
      return fill(words.lighterThan, { weight: sayQuantity(when.weight) })
    case 'younger-than': {
      const months = String(when.months)
      if (!when.only) return fill(words.youngerThan, { months })
      return fill(words.youngerThanOnly, { months, word: animalWordsInEnglish[when.only] })
    }
    case 'given-within':
      return fill(words.givenWithin, { drug: when.drug, time: sayQuantity(when.time) })
    case 'given-at-least':
      return fill(words.givenAtLeast, { drug: when.drug, dose: sayQuantity(when.dose) })
    default:
      return never(when)
  }
}

/** `2 mg/kg (never passed)`. */
export function sayMaximum({ limit, words: said }: Maximum): string {
  return withWords(sayQuantity(limit), said)
}

export function sayCumulative({ limit, per, words: said }: Cumulative): string {
  return withWords(limit ? `${sayQuantity(limit)} per ${per}` : `per ${per}`, said)
}

export function sayStock({ strength, words: said }: StockProduct): string {
  return strength ? withWords(sayQuantity(strength), said) : (said ?? '')
}

export function sayTablet({ strength, divides, words: said }: TabletProduct): string {
  return withWords(`${sayQuantity(strength)}, ${dividesInEnglish[divides]}`, said)
}

function withWords(value: string, said: string | undefined): string {
  return said ? `${value} (${said})` : value
}
