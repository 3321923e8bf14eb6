import { matchInEnglish } from '#content/wording/app-match.ts'
import { referralInEnglish as words } from '#content/wording/app-referral.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import type { Match } from '#core/identity/match.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import { fill } from '#core/outcome/finding.ts'
import { type FirstCall, sameAs } from '#core/referral/first-call.ts'
import { householdOf, identityOf, ownerRow, referralOf, vetRow } from '#core/referral/first-call-bodies.ts'
import { sayBecause, type Triage, type Urgency } from '#core/referral/triage.ts'
import type { Lists, WaitingRow } from '../../journal/database.ts'
import { newId } from '../../journal/device.ts'
import { makeEntry, type Pen } from '../../journal/write-entry.ts'

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
}

/** Makes the entries of a call of which nothing is missing. One that is the same animal writes the call and its reason only. */
export function writeCall(
  pen: Pen,
  call: FirstCall,
  matches: readonly CaseMatch[],
  judged: { readonly triage: Triage; readonly urgency: Urgency },
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
  const entries = [
    ...(same || owner === null ? [] : openFile(pen, call, { stream, subject, owner, household, vet })),
    makeEntry(pen, { kind: 'referral', stream, subject, body: referral }),
    ...notesOf(call, matches).map((text) => makeEntry(pen, { kind: 'note', stream, subject, body: { text } })),
  ]
  const row = (contact: string, body: WaitingRow['body']): WaitingRow => {
    return { register: 'contact', id: contact, body, by: pen.person, state: 'waiting', because: null }
  }
  const rows = [
    ...(newOwner && owner !== null ? [row(owner, ownerRow(call))] : []),
    ...(call.vet === 'new' && vet !== null ? [row(vet, vetRow(call))] : []),
  ]
  const name = same?.row.name ?? call.name.trim()
  return { stream, name, urgency: judged.urgency, because: referral.because, entries, rows }
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
