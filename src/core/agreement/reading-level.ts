import type { Decimal } from '#core/units/quantity.ts'
import {
  countText,
  fernandezHuerta,
  fleschKincaidGrade,
  smogGrade,
  szigrisztPazos,
  type TextCounts,
} from './readability.ts'
import { syllablesIn } from './syllables.ts'
import { syllablesInSpanish } from './syllables-in-spanish.ts'

const formulas = {
  'flesch-kincaid': fleschKincaidGrade,
  smog: smogGrade,
  'fernandez-huerta': fernandezHuerta,
  'szigriszt-pazos': szigrisztPazos,
} as const
type Formula = keyof typeof formulas

/** By which formulas a language is measured, and what we aim at by one of them. */
const ways = {
  en: {
    syllables: syllablesIn,
    by: ['flesch-kincaid', 'smog'],
    aim: { by: 'flesch-kincaid', bound: 8, easy: 'at-most' },
  },
  es: {
    syllables: syllablesInSpanish,
    by: ['fernandez-huerta', 'szigriszt-pazos'],
    aim: { by: 'szigriszt-pazos', bound: 65, easy: 'at-least' },
  },
} as const

export type MeasuredLanguage = keyof typeof ways

export type ReadingLevel = {
  readonly counts: TextCounts
  readonly measures: readonly { readonly by: Formula; readonly value: Decimal }[]
  readonly aim: (typeof ways)[MeasuredLanguage]['aim']
  readonly meetsAim: boolean
}

/**
 * How easy a text is to read, by the formulas of its language: a sieve, never a reader.
 *
 * @example readingLevel('The cat sat on the mat.', 'en').meetsAim // true
 */
export function readingLevel(text: string, language: MeasuredLanguage): ReadingLevel {
  const { syllables, by, aim } = ways[language]
  const counts = countText(text, syllables)
  const reached = formulas[aim.by](counts)
  return {
    counts,
    measures: by.map((formula) => ({ by: formula, value: formulas[formula](counts) })),
    aim,
    meetsAim: aim.easy === 'at-most' ? reached.lte(aim.bound) : reached.gte(aim.bound),
  }
}
