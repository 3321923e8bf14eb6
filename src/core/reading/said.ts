/** What stands in one place of an entry, ready to be read. */
export type Said =
  /**
   * `open`: the answer says that nobody looked or asked; it is an answer, and never "normal". `mark`: ticked, like an
   * artefact, and never left out where the value beside it is told.
   */
  | { readonly kind: 'text'; readonly text: string; readonly open: boolean; readonly mark?: true }
  /** Words somebody wrote, paragraph by paragraph. */
  | { readonly kind: 'words'; readonly lines: readonly string[] }
  | { readonly kind: 'blank'; readonly blank: 'not-recorded' | 'none' | 'not-assessed'; readonly text: string }
  /** Other entries, by id. */
  | { readonly kind: 'entries'; readonly ids: readonly string[] }
  | { readonly kind: 'rows'; readonly rows: readonly SaidRow[] }
  | { readonly kind: 'list'; readonly groups: readonly (readonly SaidRow[])[] }
  /** Drawn, and shown as a drawing. */
  | { readonly kind: 'drawn' }

export type SaidRow = { readonly at: string; readonly label: string; readonly said: Said }

/**
 * The same on one line, for a gist or to compare two answers.
 *
 * @example plainSaid({ kind: 'text', text: 'severe', open: false }, nameOfEntry) // 'severe'
 */
export function plainSaid(said: Said, nameOfEntry: (id: string) => string): string {
  switch (said.kind) {
    case 'text':
    case 'blank':
      return said.text
    case 'words':
      return said.lines.join(' ')
    case 'entries':
      return said.ids.map(nameOfEntry).join(', ')
    case 'rows':
      return said.rows.map(({ label, said: part }) => withLabel(label, plainSaid(part, nameOfEntry))).join(', ')
    case 'list':
      return said.groups
        .map((group) => group.map(({ label, said: part }) => withLabel(label, plainSaid(part, nameOfEntry))).join(', '))
        .join('; ')
    case 'drawn':
      return ''
  }
}

/** A label and its answer on one line; a label that is a question needs no colon. */
export function withLabel(label: string, said: string): string {
  return label.endsWith('?') ? `${label} ${said}` : `${label}: ${said}`
}
