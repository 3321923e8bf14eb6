/** Widths in em of a plain sans serif, on the wide side: a word may take less room than reserved, never more. */
const wide = new Set('mwMWOQ@—…%')
const narrow = new Set("ijlI.,:;|!'’()[]ft r")

/** How wide a text may be at a font size, without asking any font. Reference: Noto Sans advance widths, rounded up. */
export function textWidth(text: string, size: number, bold = false): number {
  let em = 0
  for (const letter of text) {
    if (wide.has(letter)) em += 0.96
    else if (narrow.has(letter)) em += 0.4
    else if (letter >= 'A' && letter <= 'Z') em += 0.72
    else em += 0.62
  }
  return em * size * (bold ? 1.07 : 1)
}

/** The text in lines no wider than asked; a single word that is wider stands alone on its line. */
export function wrapped(text: string, width: number, size: number, bold = false): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidth(longer, size, bold) > width) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return line === '' ? lines : [...lines, line]
}
