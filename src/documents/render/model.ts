/**
 * One paper, whatever it is printed on. Text is plain strings, never markup: a renderer escapes, a paper never does.
 * The set of blocks is closed, so that HTML, plain text and PDF can each be complete.
 */
export type Paper = {
  readonly id: string
  readonly title: string
  /** BCP 47 tag of the words on the paper. */
  readonly language: string
  /** Who it is about, in one line. */
  readonly about: string
  /** The date on the paper, as words. */
  readonly date: string
  /** The same moment in UTC; nothing here reads a clock. */
  readonly at: string
  /** Practice name and phone, for the head of every page. */
  readonly from: string
  readonly blocks: readonly Block[]
  /** On every page that states a dose, a category or a risk; null on papers that state none. */
  readonly caution: string | null
  /** Which case, and from how much of its record the paper was made. */
  readonly provenance: string
  /** `large` is for reading at home (14 pt, one side wherever it fits), `wall` for one page read at two metres. */
  readonly print: 'ordinary' | 'large' | 'wall'
  /** Said at the foot of a side that goes on overleaf, where that has to be said. */
  readonly turnOver?: string
}

export type Run = { readonly kind: 'text' | 'strong' | 'small'; readonly text: string }
/** A line of words; a bare string is ordinary text. */
export type Words = string | readonly Run[]

export type Column = {
  readonly head: string
  readonly align: 'left' | 'right' | 'centre'
  /** Share of the width, 1 when not given. */
  readonly share?: number
  /** `big` is read at two metres on the wall sheet. */
  readonly weight?: 'plain' | 'strong' | 'big'
}

export type Table = {
  readonly kind: 'table'
  readonly caption: string
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly Words[])[]
  /** The first cell of each row names the row. */
  readonly rowHeader: boolean
}

/** What is read from a syringe at arm's length: what it is and how much, then the rest, then lines to be filled in by hand. */
export type Label = {
  readonly name: string
  readonly big: string
  /** Beside the big words: of what it is drawn. */
  readonly of: string
  readonly lines: readonly Words[]
  readonly blanks: readonly string[]
}

export type Tone = 'stop' | 'attention' | 'calm'

export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly kind: 'paragraph'; readonly words: Words }
  /** `language` only where it is another than that of the paper. */
  | {
      readonly kind: 'list'
      readonly numbered: boolean
      readonly items: readonly Words[]
      readonly language?: string
    }
  | Table
  /** `word` says the tone ("Stop", "Please note"), because colour alone says nothing. */
  | {
      readonly kind: 'callout'
      readonly tone: Tone
      readonly word: string
      readonly lines: readonly Words[]
      /** Short things listed below the lines. */
      readonly items?: readonly Words[]
    }
  | { readonly kind: 'facts'; readonly facts: readonly { readonly term: string; readonly value: Words }[] }
  /** `date` is the word beside the line for the day; in English when not given. */
  | { readonly kind: 'signatures'; readonly lines: readonly string[]; readonly date?: string }
  | { readonly kind: 'big'; readonly text: string; readonly note: string | null }
  /** A drawing our own code made (`svg`, complete in itself) and the same in words, for whoever cannot see it. */
  | { readonly kind: 'picture'; readonly svg: string; readonly alt: string; readonly caption: string }
  /** A sheet of labels to be cut out: ink and paper only, because a colour would say something that nobody wrote. */
  | { readonly kind: 'labels'; readonly labels: readonly Label[] }
  | { readonly kind: 'page-break' }

export const heading = (level: 1 | 2 | 3, text: string): Block => ({ kind: 'heading', level, text })
export const paragraph = (words: Words): Block => ({ kind: 'paragraph', words })
export const list = (items: readonly Words[]): Block => ({ kind: 'list', numbered: false, items })
export const facts = (...pairs: readonly (readonly [string, Words])[]): Block => ({
  kind: 'facts',
  facts: pairs.map(([term, value]) => ({ term, value })),
})
export const strong = (text: string): Run => ({ kind: 'strong', text })
export const small = (text: string): Run => ({ kind: 'small', text })
export const text = (plain: string): Run => ({ kind: 'text', text: plain })

export function runsOf(words: Words): readonly Run[] {
  return typeof words === 'string' ? [text(words)] : words
}

/** Control characters never reach a page or a terminal; line breaks and tabs stay. */
export function printable(given: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to keep off the paper
  return given.replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g, '\ufffd')
}

/**
 * The paper itself, when it can be printed in every form: headings skip no level, every table row has a cell for every
 * column. Anything else is a bug of the paper and is thrown.
 */
export function checked(paper: Paper): Paper {
  let level = 0
  for (const block of paper.blocks) {
    if (block.kind === 'heading') {
      if (block.level > level + 1) throw new Error(`${paper.id}: the heading "${block.text}" skips a level.`)
      level = block.level
    }
    if (block.kind === 'table' && block.rows.some((row) => row.length !== block.columns.length)) {
      throw new Error(`${paper.id}: a row of "${block.caption}" does not fill its columns.`)
    }
  }
  return paper
}
