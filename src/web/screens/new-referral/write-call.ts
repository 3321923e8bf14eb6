import { lateInEnglish as lateWords } from '#content/wording/app-late.ts'
import { matchInEnglish } from '#content/wording/app-match.ts'
import { referralInEnglish as words } from '#content/wording/app-referral.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import type { Match } from '#core/identity/match.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import { type LateAnswer, type LateEventWhat, whatOfSigns } from '#core/late/late-answer.ts'
import { fill } from '#core/outcome/finding.ts'
import { daysOfSigns, type FirstCall, lateAnswerOf, sameAs } from '#core/referral/first-call.ts'
import { householdOf, identityOf, ownerRow, referralOf, vetRow } from '#core/referral/first-call-bodies.ts'
import { sayBecause, type Triage, type Urgency } from '#core/referral/triage.ts'
import type { Lists, WaitingRow } from '../../journal/database.ts'
import { newId } from '../../journal/device.ts'
import { makeEntry, type Pen } from '../../journal/write-entry.ts'
import { lateEntries } from '../../late/late-entries.ts'
import type { IndexEars, ShownEar } from '../../late/use-index-ears.ts'
import type { LateHere } from './use-late.ts'

/** A file that looks like the animal of the call. */
export type CaseMatch = Match<Lists['cases'][number]>

/** What one call becomes: entries of one case, and the people who are not on file yet. */
export type WrittenCall = {
  readonly stream: string
  readonly name: string
  readonly urgency: Urgency
  readonly because: string
  readonly entries: readonly Entry[]
  readonly rows: readonly WaitingRow[]
  /** What became of a late sign; null where none was told, or no operated ear fits. */
  readonly late: LateWritten | null
}

/** The ear it was put to, in whose file, and whether that is another file than the call's. */
export type LateWritten =
  | { readonly kind: 'event'; readonly what: LateEventWhat; readonly ear: ShownEar; readonly apart: boolean }
  | { readonly kind: 'unsure' | 'none' | 'away' }

/** Makes the entries of a call of which nothing is missing. One that is the same animal writes the call and its reason only. */
export function writeCall(
  pen: Pen,
  call: FirstCall,
  matches: readonly CaseMatch[],
  judged: { readonly triage: Triage; readonly urgency: Urgency; readonly late: LateHere },
): WrittenCall {
  const id = newId()
  const same = sameAs(call, matches)
  const vet = call.vet === 'new' ? `contact-${newId()}` : call.vet || null
  const newOwner = same === null && call.knownOwner === null
  const household = call.knownOwner?.household ?? `household-${id}`
  const owner = same ? same.row.contact : (call.knownOwner?.contact ?? `contact-${id}`)
  const stream = same?.row.stream ?? `case:${id}`
  const animal = same?.row.animal ?? `animal-${id}`
  const subject: Subject = { kind: 'animal', animal }
  const decided = { urgency: judged.urgency, because: sayBecause(judged.triage, triageInEnglish) }
  const referral = referralOf(call, { owner, vet }, decided)
  const toldIn = makeEntry(pen, { kind: 'referral', stream, subject, body: referral })
  const name = same?.row.name ?? call.name.trim()
  const late = lateOf(pen, call, judged.late, { toldIn, name, owner: same?.row.ownerName ?? call.ownerName.trim() })
  const entries = [
    ...(same || owner === null ? [] : openFile(pen, call, { stream, subject, owner, household, vet })),
    toldIn,
    ...notesOf(call, matches).map((text) => makeEntry(pen, { kind: 'note', stream, subject, body: { text } })),
    ...late.entries,
  ]
  const row = (contact: string, body: WaitingRow['body']): WaitingRow => {
    return { register: 'contact', id: contact, body, by: pen.person, state: 'waiting', because: null }
  }
  const rows = [
    ...(newOwner && owner !== null ? [row(owner, ownerRow(call))] : []),
    ...(call.vet === 'new' && vet !== null ? [row(vet, vetRow(call))] : []),
  ]
  return { stream, name, urgency: judged.urgency, because: referral.because, entries, rows, late: late.written }
}

/** The answer to the operated ears that were offered, with the late event at the ear that was chosen. */
function lateOf(
  pen: Pen,
  call: FirstCall,
  { signs, ears }: LateHere,
  { toldIn, name, owner }: { readonly toldIn: Entry; readonly name: string; readonly owner: string },
): { readonly entries: readonly Entry[]; readonly written: LateWritten | null } {
  const offered = ears.kind === 'found' ? ears.ears : []
  if (ears.kind !== 'away' && offered.length === 0) return { entries: [], written: null }
  const answer = lateAnswerOf(call, offered)
  const telling = {
    stream: toldIn.stream,
    subject: toldIn.subject,
    told: toldIn.id,
    at: toldIn.writtenAt,
    signs,
    daysOfSigns: daysOfSigns(call),
    seenBy: call.caller === null || call.caller === 'other' ? 'elsewhere' : call.caller,
    name,
    owner: owner === '' ? lateWords.unknown : owner,
    said: call.complaint.trim(),
    before: null,
  } as const
  return { entries: lateEntries(pen, telling, ears, answer), written: writtenOf(answer, ears, signs, toldIn.stream) }
}

function writtenOf(answer: LateAnswer, ears: IndexEars, signs: LateHere['signs'], stream: string): LateWritten | null {
  if (ears.kind === 'away') return { kind: 'away' }
  if (ears.kind !== 'found' || answer.belongs === null) return null
  if (answer.belongs !== 'operated-ear') return { kind: answer.belongs }
  const ear = ears.ears.find(({ operation }) => operation === answer.operation)
  return ear ? { kind: 'event', what: answer.what ?? whatOfSigns(signs), ear, apart: ear.stream !== stream } : null
}

type NewFile = {
  readonly stream: string
  readonly subject: Subject
  readonly owner: string
  readonly household: string
  readonly vet: string | null
}

function openFile(pen: Pen, call: FirstCall, { stream, subject, owner, household, vet }: NewFile): Entry[] {
  const ids = { owner, household, vet }
  const home: Subject = { kind: 'household', household }
  return [
    makeEntry(pen, { kind: 'household', stream, subject: home, body: householdOf(call, ids) }),
    makeEntry(pen, { kind: 'identity', stream, subject, body: identityOf(call, ids, pen.zone) }),
  ]
}

/** What was said of the files that look like this animal, and why: kept as notes of the case. */
function notesOf(call: FirstCall, matches: readonly CaseMatch[]): string[] {
  const same = sameAs(call, matches)
  return matches.flatMap((match) => {
    const said = call.matches[match.row.stream]
    if (said === undefined || (same !== null && same !== match)) return []
    const reasons = match.reasons.map((reason) => matchInEnglish.reasons[reason]).join(', ')
    const { stream, name } = match.row
    return [fill(words.matches.note[said.answer], { stream, name: name ?? '', reasons, because: said.because }).trim()]
  })
}
