import { never } from '#core/outcome/outcome.ts'
import { type Block, type Paper, printable, runsOf, type Table, type Words } from './model.ts'

/** The paper as plain text: for a terminal, an e-mail, and for comparing with what a colleague approved. */
export function renderText(paper: Paper): string {
  const head = [paper.from, '', underlined(paper.title, '='), paper.about, paper.date]
  const parts = [head.map(printable).join('\n')]
  if (paper.caution !== null) parts.push(printable(paper.caution))
  for (const block of paper.blocks) parts.push(blockText(block))
  parts.push(`--\n${printable(paper.provenance)}`)
  return `${parts.join('\n\n')}\n`
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return block.level === 1
        ? underlined(printable(block.text), '-')
        : `${'#'.repeat(block.level)} ${printable(block.text)}`
    case 'paragraph':
      return plain(block.words)
    case 'list':
      return block.items.map((item, index) => hanging(block.numbered ? `${index + 1}. ` : '- ', plain(item))).join('\n')
    case 'table':
      return tableText(block)
    case 'callout':
      return [`!! ${printable(block.word)}`, ...block.lines.map((line) => hanging('   ', plain(line)))].join('\n')
    case 'facts':
      return block.facts.map(({ term, value }) => hanging(`${printable(term)}: `, plain(value))).join('\n')
    case 'signatures':
      return block.lines.map((line) => `${printable(line)}: ______________________  Date: ____________`).join('\n')
    case 'big':
      return `>> ${printable(block.text)}${block.note === null ? '' : `\n   ${printable(block.note)}`}`
    case 'page-break':
      return '· · ·'
    default:
      return never(block)
  }
}

function plain(words: Words): string {
  return runsOf(words)
    .map((run) => printable(run.text))
    .join('')
}

function underlined(text: string, line: string): string {
  return `${text}\n${line.repeat(Math.min(72, [...text].length))}`
}

/** Further lines of one item stand under its first. */
function hanging(start: string, text: string): string {
  return start + text.replaceAll('\n', `\n${' '.repeat(Math.min(start.length, 6))}`)
}

const widest = 108

/** Side by side when the page is wide enough, otherwise row by row with the column's name before each cell. */
function tableText({ caption, columns, rows }: Table): string {
  const cells = rows.map((row) => row.map(plain))
  const all = [columns.map(({ head }) => printable(head)), ...cells]
  const widths = columns.map((_, column) => Math.max(...all.map((row) => [...(row[column] ?? '')].length)))
  const fits = widths.reduce((sum, width) => sum + width + 2, 0) <= widest && !all.flat().some((c) => c.includes('\n'))
  const lines = fits
    ? [all[0] ?? [], widths.map((width) => '-'.repeat(width)), ...cells].map((row) => padded(row, widths, columns))
    : cells.map((row) => row.map((cell, at) => hanging(`${at === 0 ? '- ' : '  '}${all[0]?.[at]}: `, cell)).join('\n'))
  return [printable(caption), ...lines].join('\n')
}

function padded(row: readonly string[], widths: readonly number[], columns: Table['columns']): string {
  return row
    .map((cell, at) => {
      const space = ' '.repeat(Math.max(0, (widths[at] ?? 0) - [...cell].length))
      return columns[at]?.align === 'right' ? space + cell : cell + space
    })
    .join('  ')
    .trimEnd()
}
