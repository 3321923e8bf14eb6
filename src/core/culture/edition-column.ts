import type { BodyOf } from '#core/journal/fold.ts'

/** The columns of the file of an edition, as docs/breakpoint-file.md describes them. */
export const editionColumns = [
  'standard',
  'edition',
  'year',
  'convention',
  'audience',
  'host',
  'organism',
  'drug',
  'sites',
  'route',
  'method',
  'disk',
  'susceptible',
  'between',
  'resistant',
  'dose',
  'kind',
  'remark',
] as const
export type EditionColumn = (typeof editionColumns)[number]

/** What a file holds: everything of the entry but whose copy it is. */
export type EditionInFile = Omit<BodyOf<'breakpoint-edition'>, 'from'>
export const editionFaultCodes = [
  'not-a-table',
  'no-rows',
  'column-unknown',
  'column-twice',
  'column-missing',
  'not-written',
  'too-long',
  'not-a-year',
  'not-one-of',
  'not-the-same',
  'host-of-others',
  'organism-unknown',
  'drug-unknown',
  'disk-missing',
  'disk-of-dilution',
  'end-not-understood',
  'off-the-ladder',
  'ends-turned',
  'ends-gap',
  'no-ends',
  'ends-of-none',
  'dose-missing',
  'dose-of-people',
  'row-twice',
] as const

/** One thing that is wrong: where, what stands there, and what may have been meant or would be right. */
export type EditionFault = {
  readonly code: (typeof editionFaultCodes)[number]
  readonly line: number
  readonly column: EditionColumn | null
  readonly found: string
  readonly near?: readonly string[]
  readonly why?: string
}
