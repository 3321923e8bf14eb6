const standards =
  /\b(?:CLSI|EUCAST|VET0?1S?|M100)\b[^.;\n]{0,40}?\b(?:ed(?:ition)?\.?\s*\d+|\d+(?:st|nd|rd|th) ed(?:ition)?|v(?:ersion)?\.?\s*\d+(?:\.\d+)?)/gi

/**
 * The standard and edition that the text of a report names, as printed; null when it names none, or more than one.
 *
 * @example standardIn(['Interpreted by CLSI VET01S ed7.']) // 'CLSI VET01S ed7'
 */
export function standardIn(text: readonly string[]): string | null {
  const found = new Set(text.flatMap((line) => line.match(standards) ?? []))
  return found.size === 1 ? ([...found][0]?.slice(0, 300) ?? null) : null
}
