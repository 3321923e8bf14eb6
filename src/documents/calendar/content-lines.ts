/** Lines of an iCalendar file (RFC 5545): escaping of text (3.3.11), folding at 75 octets (3.1), CRLF. */

const limit = 75

/** One property: `SUMMARY:Bella\, visit`. The value stands as it is; use `escapeText` for text. */
export function contentLine(name: string, value: string): string {
  return `${name}:${value}`
}

/** Backslash, semicolon, comma and line ends escaped; other control characters removed. */
export function escapeText(text: string): string {
  return text
    .replaceAll('\\', '\\\\')
    .replaceAll(';', '\\;')
    .replaceAll(',', '\\,')
    .replaceAll(/\r\n|\r|\n/g, '\\n')
    .replaceAll(/\p{Cc}/gu, '')
}

/** Octets of one character in UTF-8. */
function octets(character: string): number {
  const point = character.codePointAt(0) ?? 0
  if (point < 0x80) return 1
  if (point < 0x800) return 2
  return point < 0x10000 ? 3 : 4
}

/** Folds one line so that none is longer than 75 octets, never inside a character. */
export function foldLine(line: string): string {
  let folded = ''
  let length = 0
  for (const character of line) {
    const size = octets(character)
    if (length + size > limit) {
      folded += '\r\n '
      length = 1
    }
    folded += character
    length += size
  }
  return folded
}

/** The file: every line folded, ended by CRLF. */
export function writeLines(lines: readonly string[]): string {
  return lines.map((line) => `${foldLine(line)}\r\n`).join('')
}
