import type { KindName } from '#core/journal/fold.ts'
import { type Chapter, chapterRank } from './chapter.ts'

/**
 * The one chapter a kind of entry belongs to; `clinic` for what is written in the clinic's own stream. A new kind does
 * not compile until it has its place here. What a single line of it says may move that line: see `placedLines`.
 */
export const chapterOfKind = {
  agreement: 'Agreement',
  'anaesthetic-assessment': 'Theatre',
  'arrived-paper': 'clinic',
  baseline: 'Work-up',
  'blood-loss': 'Theatre',
  'blood-test': 'Work-up',
  'blood-type': 'Work-up',
  booking: 'Agreement',
  call: 'Home',
  check: 'Year',
  choice: 'Choice',
  complication: 'Year',
  'consent-withdrawn': 'Agreement',
  'cost-assumption': 'Choice',
  'cost-so-far': 'Agreement',
  count: 'Theatre',
  cytology: 'Work-up',
  death: 'Year',
  discharge: 'Home',
  'dose-policy': 'clinic',
  'drug-given': 'Theatre',
  'drug-wasted': 'Theatre',
  'ear-findings': 'Work-up',
  'emergency-declared': 'Theatre',
  erasure: 'clinic',
  estimate: 'Agreement',
  'history-item': 'Work-up',
  'figures-approved': 'clinic',
  'figures-left': 'clinic',
  'breakpoint-edition': 'clinic',
  'report-erratum': 'clinic',
  'report-frozen': 'clinic',
  'house-policy': 'clinic',
  household: 'Referral',
  identity: 'Referral',
  imaging: 'Work-up',
  'incident-note': 'Theatre',
  'laboratory-table': 'clinic',
  'late-event': 'Year',
  'late-sign': 'Referral',
  'medicine-before': 'Work-up',
  'medicine-change': 'Home',
  merge: 'Referral',
  note: 'Referral',
  observation: 'Theatre',
  'operation-summary': 'Theatre',
  'other-ear-plan': 'Year',
  'owner-answer': 'Year',
  'owner-note': 'Home',
  'owner-reply': 'Home',
  'owner-wishes': 'Choice',
  paper: 'Work-up',
  'pause-item': 'Theatre',
  photograph: 'Work-up',
  'planned-line': 'Theatre',
  'plate-drawing': 'Choice',
  referral: 'Referral',
  refile: 'Referral',
  'register-line': 'clinic',
  'result-read': 'Year',
  'second-check': 'Theatre',
  'shelf-item': 'clinic',
  'side-settled': 'Theatre',
  'skin-plan': 'Year',
  specimen: 'Work-up',
  'specimen-result': 'Year',
  'theatre-stamp': 'Theatre',
  told: 'Year',
  'twelve-months': 'Year',
  'usual-plan': 'clinic',
  'vet-answer': 'Year',
  'ward-score': 'Ward',
  weight: 'Work-up',
  withdrawal: 'Referral',
} as const satisfies Record<KindName, Chapter | 'clinic'>

/** The kinds whose home is a chapter, by name. Example: `kindsOf('Choice') // ['choice']`. */
export function kindsOf(chapter: Chapter): KindName[] {
  return (Object.keys(chapterOfKind) as KindName[]).filter((kind) => chapterOfKind[kind] === chapter)
}

/** What ends a chapter or opens the next: the kinds by which one sees how far a case has come. */
const reachedBy = {
  Referral: [],
  'Work-up': ['ear-findings', 'baseline', 'imaging'],
  Choice: ['choice'],
  Agreement: ['agreement'],
  Theatre: ['theatre-stamp'],
  Ward: ['operation-summary'],
  Home: ['discharge'],
  Year: ['twelve-months', 'late-event'],
} as const satisfies Record<Chapter, readonly KindName[]>

type Latest = { latest(kind: KindName): unknown }

/**
 * The furthest chapter the case has reached; `Closed` after death. The one truth for lists and for the page of a case.
 *
 * @example reachedChapter(fold(entries)) // 'Agreement'
 */
export function reachedChapter(theCase: Latest): Chapter | 'Closed' {
  if (theCase.latest('death')) return 'Closed'
  const reached = (Object.keys(reachedBy) as Chapter[]).filter((chapter) =>
    reachedBy[chapter].some((kind) => theCase.latest(kind)),
  )
  return reached.sort((a, b) => chapterRank(b) - chapterRank(a))[0] ?? 'Referral'
}
