import type { CaseFile } from '#core/journal/clinic.ts'
import type { KindName } from '#core/journal/fold.ts'
import { never } from '#core/outcome/outcome.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import type { Chapter } from './chapter.ts'
import { chapterOfKind, reachedChapter } from './chapter-of-kind.ts'
import { courseOf, placeOf } from './placed-lines.ts'

/**
 * The chapter an owed thing belongs to; `clinic` for what is wrong in the clinic's own stream and owed in every case.
 *
 * @example chapterOfOwed({ what: 'consent-before-operation', … }, file) // 'Agreement'
 */
export function chapterOfOwed(item: OwedItem, file: CaseFile): Chapter | 'clinic' {
  switch (item.what) {
    case 'urgent-referral':
    case 'referral-waiting':
      return 'Referral'
    case 'baseline-before-premedication':
      return 'Work-up'
    case 'consent-before-operation':
    case 'owner-about-costs':
    case 'estimate-to-answer':
      return 'Agreement'
    case 'weight-before-operation':
    case 'second-check-of-lines':
    case 'second-name-for-emergency':
    case 'sign-out':
    case 'last-meal':
    case 'fasting-to-settle':
    case 'admission':
      return 'Theatre'
    case 'result-expected':
      return item.operation === null ? 'Work-up' : 'Year'
    case 'result-to-read':
    case 'result-to-decide':
    case 'owner-to-tell':
    case 'referring-vet-to-tell':
      return ofLine(item.id.slice(item.what.length + 1), file) ?? 'Year'
    case 'look-after-the-block':
    case 'owner-about-emergency':
    case 'pain-to-treat':
    case 'pain-again':
    case 'ward-pain':
    case 'ward-airway':
    case 'ward-temperature':
    case 'first-blink':
    case 'ward-food':
    case 'ward-urine':
    case 'ward-dose':
    case 'ward-owner-call':
      return 'Ward'
    case 'eye-lubricated':
    case 'face-and-eye-look':
    case 'eye-at-risk-look':
      return wentHome(item, file) ? (item.what === 'eye-lubricated' ? 'Home' : 'Year') : 'Ward'
    case 'first-call':
    case 'medicine-change-to-write':
    case 'owner-about-medicines':
    case 'carer-to-tell':
    case 'owner-note-to-answer':
    case 'change-to-review':
      return 'Home'
    case 'suture-check':
    case 'wound-check':
    case 'recheck':
    case 'agreed-visit':
    case 'skin-plan':
    case 'other-ear-plan':
    case 'skin-plan-review':
    case 'other-ear-review':
    case 'twelve-months':
    case 'unknown-may-be-recorded':
    case 'late-sign-to-settle':
    case 'late-event-look':
    case 'late-event-decision':
    case 'outcome-again':
    case 'owner-reported':
    case 'owner-reported-look':
    case 'owner-answer-to-read':
    case 'report-erratum':
    case 'unfiled-to-hear':
    case 'told-to-put-right':
    case 'vet-answer-to-read':
    case 'vet-death-to-confirm':
      return 'Year'
    case 'owner-wishes-to-read':
      return 'Choice'
    case 'conflict-to-settle':
      return ofLine(item.id.slice(item.what.length + 1).split('+')[0] ?? '', file) ?? ofKind(item.about.kind)
    case 'pending-entry':
    case 'unknown-entry':
      return ofLine(item.id.slice(item.what.length + 1), file) ?? 'clinic'
    case 'kept-aside':
      return whereItStands(file)
    case 'policy-unreadable':
      return 'clinic'
    default:
      return never(item.what)
  }
}

function ofKind(kind: string | undefined): Chapter | 'clinic' {
  const home: Chapter | 'clinic' | undefined = chapterOfKind[kind as KindName]
  return home ?? 'clinic'
}

function ofLine(id: string, { theCase }: CaseFile): Chapter | undefined {
  const line = theCase.line(id)
  return line ? (placeOf(line, courseOf(theCase), theCase) ?? undefined) : undefined
}

function whereItStands({ theCase }: CaseFile): Chapter {
  const reached = reachedChapter(theCase)
  return reached === 'Closed' ? 'Year' : reached
}

/** Whether the animal has gone home since the operation the item is about. */
function wentHome(item: OwedItem, { theCase }: CaseFile): boolean {
  const cut = theCase
    .live('operation-summary')
    .find(({ header }) => header.subject.kind === 'operation' && header.subject.operation === item.operation)
  return theCase.live('discharge').some(({ at }) => at >= (cut?.at ?? ''))
}
