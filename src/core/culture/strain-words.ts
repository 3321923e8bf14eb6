/** What a laboratory may say of a strain beside its name. */
export type StrainWord = 'methicillin' | 'esbl' | 'carbapenemase'

const says: Readonly<Record<StrainWord, RegExp>> = {
  methicillin: /\b(?:mr(?:sp|sa|ss|sc|cons|s)|mec ?a|pbp ?2a|meth?icillin[- ]?(?:resistan\w*|r\b))/i,
  esbl: /\b(?:esbl|extended[- ]spectrum)/i,
  carbapenemase: /\b(?:cpe|cre|carbapenemase|ndm|kpc|oxa-?48)\b/i,
}
const denied = /\b(?:non?|not|negative|neg|without|kein\w*|susceptible|sensitive)\b/i

/**
 * What the printed name says of the strain. A name with any word of denial says nothing for certain, and is not taken
 * for it.
 *
 * @example strainSays('Staphylococcus pseudintermedius (MRSP)', 'methicillin') // true
 */
export function strainSays(printed: string, word: StrainWord): boolean {
  return says[word].test(printed) && !denied.test(printed)
}
