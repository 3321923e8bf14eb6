import { plainText } from './markdown.mjs'

/** The words and the facts of content, as the app shows them too; lent by `loadFacts` before a page is written. */
let source
export async function loadFacts(load) {
  source = { ...(await load('core/evidence/facts-in.ts')), ...(await load('documents/sources/say-content.ts')) }
}

export const factsIn = (value) => source.factsIn(value)
export const citedIn = (value) => source.citedIn(value)
export const inWords = (name) => source.inWords(name)
/** Any value of content as words for a table. */
export const say = (value) => plainText(source.sayContent(value))
/** A fact as words for a table. */
export const sayFact = (fact) => plainText(source.sayFact(fact))

const knownInWords = {
  read: 'read',
  remembered: 'remembered, not read again',
  'common-practice': 'common practice',
  house: 'house judgement',
}

/** `read; guideline; medium confidence`: how we know it, how good the evidence is, how surely we copied it. */
export function howKnown({ known, strength, confidence }) {
  return `${knownInWords[known]}; ${strength}; ${confidence} confidence`
}

/** The sources as links to the page of sources, with the place where to look. */
export function whereFrom({ sources, where, checked }) {
  const links = sources.map((id) => `[${id}](sources.md#${id})`).join(', ')
  return `${links}${where ? ` (${plainText(where)})` : ''}, checked ${checked}`
}
