import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, KindName, Line } from '#core/journal/fold.ts'
import type { Chapter } from './chapter.ts'
import { chapterOfKind } from './chapter-of-kind.ts'

/** Where the case stood at a moment: the last milestone before it. */
type Course = {
  readonly milestones: readonly { readonly at: string; readonly chapter: Chapter }[]
  readonly operated: readonly string[]
  readonly wentHome: readonly string[]
}

/**
 * The chapter of every line that counts, also of erased lines and of kinds this code does not know. Entries that take
 * another back (withdrawal, refile) stand in no chapter: they are the history of what they took back.
 *
 * @example placedLines(file.theCase).get(line.header.id) // 'Ward'
 */
export function placedLines(theCase: Case): ReadonlyMap<string, Chapter> {
  const course = courseOf(theCase)
  const placed = new Map<string, Chapter>()
  for (const line of theCase.lines) {
    const chapter = line.state === 'live' ? placeOf(line, course, theCase) : null
    if (chapter) placed.set(line.header.id, chapter)
  }
  return placed
}

/** The chapter a line belongs to, or belonged to before it was corrected or taken back; null for what takes back. */
export function placeOf(line: Line, course: Course, theCase: Case): Chapter | null {
  const kind = line.header.kind as KindName
  if (kind === 'withdrawal' || kind === 'refile' || kind === 'erasure') return null
  if (!line.known || line.body === null) return homeOrWhen(kind, line, course)
  switch (kind) {
    case 'note':
    case 'paper':
    case 'photograph':
    case 'plate-drawing':
    case 'skin-plan':
    case 'other-ear-plan':
    case 'weight':
    case 'call':
    case 'late-sign':
      return chapterAt(line.at, course)
    case 'drug-given':
    case 'drug-wasted':
    case 'emergency-declared':
    case 'second-check':
      return line.header.subject.kind === 'operation' ? 'Theatre' : chapterAt(line.at, course)
    case 'observation':
      return (line.body as BodyOf<'observation'>).where === 'theatre' ? 'Theatre' : 'Ward'
    case 'check':
    case 'complication':
      return inWard(line.at, course) ? 'Ward' : 'Year'
    case 'specimen':
      return (line.body as BodyOf<'specimen'>).operation === null ? 'Work-up' : 'Theatre'
    case 'specimen-result':
    case 'result-read':
    case 'told':
      return resultChapter(line, theCase)
    default:
      return homeOrWhen(kind, line, course)
  }
}

function homeOrWhen(kind: KindName, line: Line, course: Course): Chapter {
  const home: Chapter | 'clinic' | undefined = chapterOfKind[kind]
  return home === undefined || home === 'clinic' ? chapterAt(line.at, course) : home
}

/** Results of an operation's samples close in the year; those of a sample taken before it belong to the work-up. */
function resultChapter(line: Line, theCase: Case): Chapter {
  const sample = sampleOf(line, theCase)
  return sample && sample.operation === null ? 'Work-up' : 'Year'
}

/** The specimen behind a result, the reading of it, or the telling of it. */
function sampleOf(line: Line, theCase: Case): BodyOf<'specimen'> | null {
  let current: Line | undefined = line
  // told → result-read → specimen-result → specimen: three steps at most.
  for (let step = 0; current && step < 4; step += 1) {
    if (current.header.kind === 'specimen') return current.body as BodyOf<'specimen'> | null
    const body = current.body as { about?: string; result?: string; specimen?: string } | null
    const next = body?.specimen ?? body?.result ?? body?.about
    current = next === undefined ? undefined : theCase.line(next)
  }
  return null
}

/** What a case has passed, so that a line without a chapter of its own falls where the case stood. */
export function courseOf(theCase: Case): Course {
  const at = (chapter: Chapter, ...kinds: readonly KindName[]) =>
    kinds.flatMap((kind) => theCase.live(kind).map((line) => ({ at: line.at, chapter })))
  const operated = theCase.live('operation-summary').map(({ body }) => body.closedAt.at)
  const stamped = theCase.live('theatre-stamp').filter(({ body }) => body.checkpoint === 'closed')
  const wentHome = theCase.live('discharge').map((line) => line.at)
  const milestones = [
    ...at('Referral', 'referral'),
    ...at('Work-up', 'ear-findings', 'baseline', 'imaging'),
    ...at('Choice', 'choice'),
    ...at('Agreement', 'agreement', 'booking'),
    ...at('Theatre', 'planned-line', 'pause-item', 'theatre-stamp'),
    ...operated.map((when) => ({ at: when, chapter: 'Ward' as const })),
    ...at('Home', 'discharge'),
    ...at('Year', 'check', 'owner-answer', 'twelve-months', 'late-event').filter((one) =>
      wentHome.some((home) => home < one.at),
    ),
  ]
  return {
    milestones: milestones.sort((a, b) => compareText(a.at, b.at)),
    operated: [...operated, ...stamped.map((line) => line.at)].sort(),
    wentHome: [...wentHome].sort(),
  }
}

function chapterAt(at: string, course: Course): Chapter {
  return course.milestones.findLast((milestone) => milestone.at <= at)?.chapter ?? 'Referral'
}

/** Operated, and not gone home since. */
function inWard(at: string, { operated, wentHome }: Course): boolean {
  const operation = operated.findLast((when) => when <= at)
  return operation !== undefined && !wentHome.some((home) => home >= operation && home <= at)
}
