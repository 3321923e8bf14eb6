import { findDelimiter, splitRows } from './delimited.ts'
import type { Column, Delimiter, TableMapping } from './mapping.ts'
import { readUnit } from './read-value.ts'
import { type LaboratoryTerms, termOf } from './terms.ts'

/** What a heading is called in small letters without spaces and marks. */
export function plainHeading(heading: string): string {
  return heading.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '')
}

/**
 * What the columns of a table seem to say, for a person to look over before anything is read by it. `knowsDrug` says
 * whether a heading names a drug, which makes a table wide.
 *
 * @example guessMapping('animal;drug;value\n…', terms, () => false).columns[1]?.means // 'drug'
 */
export function guessMapping(
  text: string,
  terms: LaboratoryTerms,
  knowsDrug: (heading: string) => boolean,
): TableMapping {
  const delimiter: Delimiter = findDelimiter(text)
  const [heading] = splitRows(text, delimiter)
  const columns = (heading?.cells ?? []).map((cell) => columnOf(cell, terms, knowsDrug))
  return { columns, delimiter, dates: null, unit: null, comma: null }
}

function columnOf(heading: string, terms: LaboratoryTerms, knowsDrug: (heading: string) => boolean): Column {
  const known = termOf(terms.columns, plainHeading(heading))
  if (known) return { heading, means: known, drug: null, unit: null }
  if (knowsDrug(heading)) return { heading, means: 'drug-values', drug: heading, unit: null }
  const words = heading.split(/[\s_:/()[\]-]+/).filter((word) => word !== '')
  const last = words.at(-1)?.toLowerCase() ?? ''
  const rest = heading.slice(0, heading.toLowerCase().lastIndexOf(last)).replace(/[\s_:/()[\]-]+$/, '')
  if (rest !== '' && knowsDrug(rest)) {
    if (terms.categoryWords.includes(last)) return { heading, means: 'drug-categories', drug: rest, unit: null }
    return { heading, means: 'drug-values', drug: rest, unit: unitOf(last, terms) }
  }
  return { heading, means: 'nothing', drug: null, unit: null }
}

/** What the last word of a heading says of the numbers below it; null when it says nothing of them. */
function unitOf(word: string, terms: LaboratoryTerms): 'mg/L' | 'mm' | null {
  if (terms.zoneWords.includes(word)) return 'mm'
  return terms.micWords.includes(word) ? 'mg/L' : readUnit(word, terms)
}
