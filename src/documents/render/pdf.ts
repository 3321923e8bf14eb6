import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'
import { papersInEnglish } from '#content/wording/papers.ts'
import { type Block, type Label, type Paper, printable, runsOf, type Words } from './model.ts'
import { template } from './template.ts'

/** Prints papers as tagged PDF (PDF/UA-1). Made once, because the fonts are read into it. */
export type PdfPress = (paper: Paper) => Uint8Array

/** All that the typesetter needs of a paper, as plain data that can be given to another thread. */
export type Typeset = {
  readonly id: string
  readonly source: string
  readonly inputs: { readonly paper: string }
  readonly options: { readonly pdfStandard: 'ua-1'; readonly creationTimestamp: number }
}

export function typesetOf(paper: Paper): Typeset {
  const creationTimestamp = Math.floor(Date.parse(paper.at) / 1000)
  const options = { pdfStandard: 'ua-1', creationTimestamp } as const
  return { id: paper.id, source: template, inputs: { paper: JSON.stringify(asData(paper)) }, options }
}

/**
 * A press with these fonts (TrueType bytes, given by the caller because documents never read the disk).
 * The same paper and fonts give the same bytes. A paper that cannot be set is a bug and is thrown.
 *
 * @example const press = pdfPress(fonts); writeFileSync('leaflet.pdf', press(paper))
 */
export function pdfPress(fonts: readonly Uint8Array[]): PdfPress {
  const compiler = NodeCompiler.create({ fontArgs: [{ fontBlobs: [...fonts] as FontBlobs }] })
  return (paper) => {
    const { id, source, inputs, options } = typesetOf(paper)
    const compiled = compiler.compile({ mainFileContent: source, inputs })
    const trouble = compiled.takeDiagnostics()
    if (compiled.result === null) {
      throw new Error(`The paper ${id} cannot be set: ${JSON.stringify(trouble?.shortDiagnostics)}`)
    }
    return new Uint8Array(compiler.pdf(compiled.result, options))
  }
}

type FontBlobs = Parameters<typeof NodeCompiler.create>[0] extends infer Args
  ? Args extends { fontArgs?: (infer Font)[] }
    ? Extract<Font, { fontBlobs: unknown }>['fontBlobs']
    : never
  : never

/** What the template reads: every text printable, every default written out. */
function asData(paper: Paper) {
  const [language = 'en', region] = paper.language.split('-')
  return {
    title: printable(paper.title),
    tongue: { language, region: region ?? null },
    about: printable(paper.about),
    date: printable(paper.date),
    from: printable(paper.from),
    caution: paper.caution,
    provenance: printable(paper.provenance),
    print: paper.print,
    turnOver: paper.turnOver ?? null,
    blocks: paper.blocks.map(blockData),
  }
}

function blockData(block: Block): unknown {
  switch (block.kind) {
    case 'paragraph':
      return { ...block, words: runs(block.words) }
    case 'list':
      return { ...block, language: block.language ?? null, items: block.items.map(runs) }
    case 'table':
      return {
        ...block,
        caption: printable(block.caption),
        columns: block.columns.map((column) => ({
          share: 1,
          weight: 'plain',
          ...column,
          head: printable(column.head),
        })),
        rows: block.rows.map((row) => row.map(runs)),
      }
    case 'callout':
      return { ...block, lines: block.lines.map(runs), items: (block.items ?? []).map(runs) }
    case 'facts':
      return { ...block, facts: block.facts.map(({ term, value }) => ({ term: printable(term), value: runs(value) })) }
    case 'heading':
      return { ...block, text: printable(block.text) }
    case 'big':
      return { ...block, text: printable(block.text), note: block.note === null ? null : printable(block.note) }
    case 'signatures':
      return { ...block, date: printable(block.date ?? papersInEnglish.signedOn), lines: block.lines.map(printable) }
    case 'picture':
      return { ...block, alt: printable(block.alt), caption: printable(block.caption) }
    case 'labels':
      return { ...block, labels: block.labels.map(labelData) }
    case 'page-break':
      return block
  }
}

function labelData({ name, big, of, lines, blanks }: Label) {
  return {
    name: printable(name),
    big: printable(big),
    of: printable(of),
    lines: lines.map(runs),
    blanks: blanks.map(printable),
  }
}

function runs(words: Words) {
  return runsOf(words).map((run) => ({ kind: run.kind, text: printable(run.text) }))
}
