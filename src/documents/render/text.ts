import { papersInEnglish } from '#content/wording/papers.ts'
import { never } from '#core/outcome/outcome.ts'
import { type Block, type Label, type Paper, printable, runsOf, type Table, type Words } from './model.ts'

/** The paper as plain text: for a terminal, an e-mail, and for comparing with what a colleague approved. */
export function renderText(paper: Paper): string {
  const head = [paper.from, '', underlined(paper.title, '='), paper.about, paper.date]
  const parts = [head.map(printable).join('\n')]
  if (paper.caution !== null) parts.push(printable(paper.caution))
  for (const block of paper.blocks) parts.push(blockText(block, paper.print))
  parts.push(`--\n${printable(paper.provenance)}`)
  return `${parts.join('\n\n')}\n`
}

function blockText(block: Block, print: Paper['print']): string {
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
      return tableText(block, print === 'large')
    case 'callout':
      return [
        `!! ${printable(block.word)}`,
        ...block.lines.map((line) => hanging('   ', plain(line))),
        ...(block.items ?? []).map((item) => hanging('   – ', plain(item))),
      ].join('\n')
    case 'facts':
      return block.facts.map(({ term, value }) => hanging(`${printable(term)}: `, plain(value))).join('\n')
    case 'signatures':
      return block.lines
        .map(
          (line) =>
            `${printable(line)}: ______________________  ${printable(block.date ?? papersInEnglish.signedOn)}: ____________`,
        )
        .join('\n')
    case 'big':
      return `>> ${printable(block.text)}${block.note === null ? '' : `\n   ${printable(block.note)}`}`
    case 'picture':
      return `[${printable(block.caption)}]\n${printable(block.alt)}`
    case 'labels':
      return block.labels.map(labelText).join('\n\n')
    case 'page-break':
      return '· · ·'
    default:
      return never(block)
  }
}

function labelText({ name, big, of, lines, blanks }: Label): string {
  const open = blanks.map((blank) => `${printable(blank)}: ____________`)
  return [`[ ${printable(name)} | ${printable(big)} ${printable(of)} ]`, ...lines.map(plain), ...open].join('\n  ')
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

/** Columns side by side; when they are wider than the page, each gets its share and its words are wrapped. */
function tableText({ caption, columns, rows }: Table, nameIsWide: boolean): string {
  const head = columns.map((column) => printable(column.head))
  const cells = rows.map((row) => row.map(plain))
  const natural = columns.map((_, at) =>
    Math.max(...[head, ...cells].flatMap((row) => (row[at] ?? '').split('\n')).map((line) => [...line].length)),
  )
  const gaps = 2 * (columns.length - 1)
  const shares = columns.reduce((sum, { share = 1 }) => sum + share, 0)
  const tooWide = natural.reduce((sum, width) => sum + width, gaps) > widest
  const fair = columns.map(({ share = 1 }) => Math.max(8, Math.floor(((widest - gaps) * share) / shares)))
  // On a large page the name of a row goes over its whole width; here it gets what the other columns leave of theirs.
  const unused = fair.reduce((sum, width, at) => sum + Math.max(0, width - (natural[at] ?? 0)), 0)
  const widths = natural.map((width, at) => {
    const most = (fair[at] ?? 0) + (nameIsWide && at === 0 ? unused : 0)
    return tooWide ? Math.min(width, most) : width
  })
  const rule = widths.map((width) => '-'.repeat(width))
  const lines = [head, rule, ...cells].flatMap((row) => {
    const wrappedCells = row.map((cell, at) => wrapped(cell, widths[at] ?? widest))
    const height = Math.max(...wrappedCells.map((cell) => cell.length))
    return Array.from({ length: height }, (_, line) =>
      padded(
        wrappedCells.map((cell) => cell[line] ?? ''),
        widths,
        columns,
      ),
    )
  })
  return [printable(caption), ...lines].join('\n')
}

/** A word longer than the width stays whole. */
function wrapped(cell: string, width: number): string[] {
  return cell.split('\n').flatMap((line) => {
    const lines: string[] = ['']
    for (const word of line.split(' ')) {
      const now = lines.at(-1) ?? ''
      const longer = now === '' ? word : `${now} ${word}`
      if ([...longer].length <= width || now === '') lines[lines.length - 1] = longer
      else lines.push(word)
    }
    return lines
  })
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
