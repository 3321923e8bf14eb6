import { type Block, runsOf, type Words } from './model.ts'

/** All sentences of some blocks, a line for each, without captions, heads and terms: what a reading formula counts. */
export function textOfBlocks(blocks: readonly Block[]): string {
  return blocks.flatMap(linesOf).join('\n')
}

function linesOf(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
      return [block.text]
    case 'paragraph':
      return [plain(block.words)]
    case 'list':
      return block.items.map(plain)
    case 'facts':
      return block.facts.map(({ value }) => plain(value))
    case 'table':
      return block.rows.flatMap((row) => row.map(plain))
    case 'callout':
      return [...block.lines, ...(block.items ?? [])].map(plain)
    default:
      return []
  }
}

function plain(words: Words): string {
  return runsOf(words)
    .map(({ text }) => text)
    .join('')
}
