import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { type Chapter, chapterRank, chapters } from './chapter.ts'
import { reachedChapter } from './chapter-of-kind.ts'
import { chapterOfOwed } from './chapter-of-owed.ts'
import type { Missing, MissingCode } from './missing.ts'
import { missingInAgreement, missingInChoice } from './missing-agreed.ts'
import { missingAtReferral, missingInWorkUp } from './missing-before.ts'
import { missingAtHome, missingInTheatre, missingInWard, missingInYear } from './missing-operation.ts'
import { courseOf, placedLines, placeOf } from './placed-lines.ts'

/** `open`: reached, and something is missing that is needed, or owed. `done`: neither. */
export type ChapterState = 'not-reached' | 'open' | 'done'

export type ChapterView = {
  readonly chapter: Chapter
  readonly state: ChapterState
  /** What is there: every line that counts, in the order it happened. */
  readonly there: readonly Line[]
  /** Lines of this chapter that were corrected or taken back; nothing goes silently. */
  readonly before: readonly Line[]
  readonly missing: readonly Missing[]
  /** What is next, earliest limit first. */
  readonly next: readonly OwedItem[]
}

export type Chapters = {
  readonly chapters: readonly ChapterView[]
  /** How far the case has come. */
  readonly reached: Chapter | 'Closed'
  /** Owed in the clinic's own stream, not in this case. */
  readonly aside: readonly OwedItem[]
}

/** Still worth writing down when the animal has died: what belongs to the record of an operation, and who it was. */
const stillAfterDeath: ReadonlySet<MissingCode> = new Set<MissingCode>([
  'identity-missing',
  'household-missing',
  'checkpoint-missing',
  'count-missing',
  'count-unequal',
  'throat-pack-in',
  'pause-missing',
  'summary-missing',
])

/**
 * The case as its eight chapters, each with what is there, what is missing and what is next. Missing things of a
 * chapter are named when the case has reached it or comes to it next; those of later chapters would only be noise.
 *
 * @example chaptersOf(file, { procedures, owed: owedOf(file, procedures, options).owed }).chapters[1].missing
 */
export function chaptersOf(
  file: CaseFile,
  about: { readonly procedures: readonly Procedure[]; readonly owed: readonly OwedItem[] },
): Chapters {
  const { theCase } = file
  const reached = reachedChapter(theCase)
  const there = groupBy(theCase.lines, placedLines(theCase))
  const before = corrected(file)
  const next = new Map<Chapter | 'clinic', OwedItem[]>()
  for (const item of about.owed) push(next, chapterOfOwed(item, file), item)
  const furthest = reached === 'Closed' ? furthestWith(there) : chapterRank(reached)
  const views = chapters.map((chapter): ChapterView => {
    const lines = there.get(chapter) ?? []
    const begun = chapterRank(chapter) <= furthest || lines.length > 0
    const near = begun || (reached !== 'Closed' && chapterRank(chapter) === furthest + 1)
    const missing = near ? missingOf(chapter, file, about.procedures) : []
    const stay = reached === 'Closed' ? missing.filter(({ code }) => stillAfterDeath.has(code)) : missing
    const owed = next.get(chapter) ?? []
    const open = owed.length > 0 || stay.some(({ weight }) => weight === 'needed')
    const state = begun ? (open ? 'open' : 'done') : 'not-reached'
    return { chapter, state, there: lines, before: before.get(chapter) ?? [], missing: stay, next: owed }
  })
  return { chapters: views, reached, aside: next.get('clinic') ?? [] }
}

function missingOf(chapter: Chapter, file: CaseFile, procedures: readonly Procedure[]): Missing[] {
  switch (chapter) {
    case 'Referral':
      return missingAtReferral(file)
    case 'Work-up':
      return missingInWorkUp(file)
    case 'Choice':
      return missingInChoice(file)
    case 'Agreement':
      return missingInAgreement(file)
    case 'Theatre':
      return missingInTheatre(file, procedures)
    case 'Ward':
      return missingInWard(file)
    case 'Home':
      return missingAtHome(file)
    case 'Year':
      return missingInYear(file)
  }
}

function corrected({ theCase }: CaseFile): ReadonlyMap<Chapter, Line[]> {
  const course = courseOf(theCase)
  const found = new Map<Chapter, Line[]>()
  for (const line of theCase.lines) {
    if (line.state === 'live') continue
    const chapter = placeOf(line, course, theCase)
    if (chapter) push(found, chapter, line)
  }
  return found
}

function groupBy(lines: readonly Line[], placed: ReadonlyMap<string, Chapter>): ReadonlyMap<Chapter, Line[]> {
  const groups = new Map<Chapter, Line[]>()
  for (const line of lines) {
    const chapter = placed.get(line.header.id)
    if (chapter) push(groups, chapter, line)
  }
  return groups
}

function push<Key, Value>(groups: Map<Key, Value[]>, key: Key, value: Value): void {
  const group = groups.get(key)
  if (group) group.push(value)
  else groups.set(key, [value])
}

/** The furthest chapter with a line, other than the death itself. */
function furthestWith(there: ReadonlyMap<Chapter, Line[]>): number {
  const ranks = chapters
    .filter((chapter) => there.get(chapter)?.some(({ header }) => header.kind !== 'death'))
    .map((chapter) => chapterRank(chapter))
  return Math.max(0, ...ranks)
}
