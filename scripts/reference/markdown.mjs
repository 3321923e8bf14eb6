/** A table with escaped cells; an empty list gives nothing. */
export function table(heads, rows) {
  if (rows.length === 0) return []
  const line = (cells) => `| ${cells.map(cell).join(' | ')} |`
  return [line(heads), `| ${heads.map(() => '---').join(' | ')} |`, ...rows.map(line), '']
}

/** Text that Markdown prints as it stands. */
export function plainText(value) {
  return String(value).replaceAll('<', '&lt;').replaceAll('*', '\\*').replaceAll('_', '\\_')
}

function cell(value) {
  return String(value ?? '')
    .replaceAll('|', '\\|')
    .replaceAll('\n', '<br>')
}

export function bullets(items) {
  return items.length === 0 ? [] : [...items.map((item) => `- ${item}`), '']
}

/** One sentence with a capital letter and a full stop. */
export function sentence(text) {
  const begun = text.charAt(0).toUpperCase() + text.slice(1)
  return /[.!?]$/u.test(begun) ? begun : `${begun}.`
}

/** The head every generated page carries. */
export function head(title, intro, caution) {
  return [
    '<!-- Written by scripts/docs.mjs from src/content and src/core. Change the facts there, then run `npm run docs`. -->',
    '',
    `# ${title}`,
    '',
    intro,
    ...(caution ? ['', `*${caution}*`] : []),
    '',
  ]
}
