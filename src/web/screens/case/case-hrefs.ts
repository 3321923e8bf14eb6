import type { Subject } from '#core/journal/entry.ts'

/** Addresses inside one case; `place` is its part of the address: `tansy`. */
export function casePageHref(place: string): string {
  return `/case/${encodeURIComponent(place)}`
}

export function entryHref(place: string, entry: string): string {
  return `${casePageHref(place)}#entry-${entry}`
}

/** Back to the case at an entry that was just written. */
export function keptHref(place: string, entry: string): string {
  return `${casePageHref(place)}?kept=${entry}#entry-${entry}`
}

export function chapterHref(chapter: string): string {
  return `#chapter-${chapter.toLowerCase()}`
}

export type WritingAbout = {
  readonly subject?: Subject | null
  readonly owed?: string
  readonly amend?: string
  readonly settle?: readonly string[]
  /** What the form begins with, by the name of the field. */
  readonly answers?: Readonly<Record<string, string>>
}

/** Where an entry of a kind is written; the side or operation is handed on only when the link itself names it. */
export function writeHref(
  place: string,
  kind: string,
  { subject, owed, amend, settle, answers = {} }: WritingAbout = {},
): string {
  const query = new URLSearchParams()
  if (subject?.kind === 'ear') query.set('side', subject.side)
  if (subject?.kind === 'operation') query.set('operation', subject.operation)
  if (subject?.kind === 'household' || subject?.kind === 'animal') query.set('about', subject.kind)
  if (owed !== undefined) query.set('owed', owed)
  if (amend !== undefined) query.set('amend', amend)
  if (settle !== undefined) query.set('settle', settle.join(','))
  for (const [name, value] of Object.entries(answers)) query.set(`answer.${name}`, value)
  const text = query.toString()
  return `${casePageHref(place)}/write/${kind}${text === '' ? '' : `?${text}`}`
}

export function historyHref(place: string, entry: string): string {
  return `${casePageHref(place)}/entry/${entry}`
}

export function withdrawHref(place: string, entry: string): string {
  return `${historyHref(place, entry)}/withdraw`
}

export function refileHref(place: string, entry: string): string {
  return `${historyHref(place, entry)}/refile`
}

export function conflictHref(place: string, entry: string): string {
  return `${casePageHref(place)}/conflict/${entry}`
}

export function joinHref(place: string): string {
  return `${casePageHref(place)}/join`
}

/** Where it is said to which operated ear a late sign belongs; `told` names the call it was told in. */
export function lateHref(place: string, told?: string): string {
  return `${casePageHref(place)}/late${told === undefined ? '' : `?told=${told}`}`
}

/** Who belongs to the animal and how to reach them. */
export function contactsHref(place: string): string {
  return `${casePageHref(place)}/contacts`
}

export function contactHref(place: string, contact: string): string {
  return `${casePageHref(place)}/contact/${encodeURIComponent(contact)}`
}

export function addContactHref(place: string, part: string): string {
  return `${contactsHref(place)}/${part}`
}

/** The talk about costs and consent, up to the signature. */
export function agreementHref(place: string): string {
  return `${casePageHref(place)}/agreement`
}

/** Where one of the usual plans becomes the planned lines of an operation. */
export function planHref(place: string, operation: string): string {
  return `${casePageHref(place)}/plan/${encodeURIComponent(operation)}`
}

export function plateHref(place: string, side: string): string {
  return `${casePageHref(place)}/plate/${side}`
}

/** The dose plan of one operation. */
export function dosePlanHref(place: string, operation: string): string {
  return `${casePageHref(place)}/doses/${encodeURIComponent(operation)}`
}

/** Where one line of a dose plan is changed, or a new one added. */
export function planLineHref(place: string, operation: string, line: string | null): string {
  return `${dosePlanHref(place, operation)}/line${line === null ? '' : `?line=${encodeURIComponent(line)}`}`
}

/** The round of an animal in the ward. */
export function wardPageHref(place: string): string {
  return `${casePageHref(place)}/ward`
}

/** What went wrong in or after the operations of the case. */
export function troubleHref(place: string): string {
  return `${casePageHref(place)}/trouble`
}

/** The worksheet of the choice, at one ear when it is named. */
export function choiceHref(place: string, side?: string): string {
  return `${casePageHref(place)}/choice${side === undefined ? '' : `?ear=${side}`}`
}

/** One time of asking the owner: what was asked, what came back, and the way to take it by phone. */
export function questionsHref(place: string, key: string): string {
  return `${casePageHref(place)}/questions/${encodeURIComponent(key)}`
}

/** Every specimen of the animal with what came back. */
export function specimensHref(place: string): string {
  return `${casePageHref(place)}/results`
}

/** One report of a laboratory: what it means for this animal, and the decision. */
export function reportHref(place: string, report: string): string {
  return `${specimensHref(place)}/${report}`
}

/** Where the report of a culture is typed, or one that was typed is corrected. */
export function typeReportHref(place: string, specimen: string, amend?: string): string {
  return `${specimensHref(place)}/type/${specimen}${amend === undefined ? '' : `?amend=${amend}`}`
}

/** The screen beside the operating table. */
export function roomHref(place: string, operation: string): string {
  return `${casePageHref(place)}/room/${encodeURIComponent(operation)}`
}

/** The anaesthetic ledger of an operation. */
export function ledgerHref(place: string, operation: string): string {
  return `${roomHref(place, operation)}/ledger`
}

/** Where the theatre sheet that was written by hand is typed in. */
export function paperSheetHref(place: string, operation: string): string {
  return `${roomHref(place, operation)}/paper`
}

/** One of the three spoken pauses of an operation. */
export function pauseHref(place: string, operation: string, pause: string): string {
  return `${roomHref(place, operation)}/pause/${pause}`
}

/** The specimens of an operation, its incident note, and telling the owner what happened: beside the table. */
export function besideHref(place: string, operation: string, which: 'specimens' | 'incident' | 'told'): string {
  return `${roomHref(place, operation)}/${which}`
}

/** Kinds that are written on the dose plan of the operation. */
const ofPlan: ReadonlySet<string> = new Set(['planned-line', 'second-check'])

/** Where that is written what an operation still misses; null is settled on the page of the case. */
export function settleHref(place: string, operation: string, kind: string | null): string {
  if (kind === null) return casePageHref(place)
  if (ofPlan.has(kind)) return dosePlanHref(place, operation)
  if (kind === 'agreement') return agreementHref(place)
  // A booking is about the operation rather than the animal.
  return writeHref(place, kind, kind === 'booking' ? { subject: { kind: 'operation', animal: '', operation } } : {})
}

/** The list of emergencies beside the operating table, or one of them. */
export function nowHref(place: string, operation: string, call?: string): string {
  return `${roomHref(place, operation)}/now${call === undefined ? '' : `/${call}`}`
}

/** A file of a case that the server makes: a paper as PDF, page or plain text. */
export function paperHref(stream: string, file: string): string {
  return `/api/papers/${encodeURIComponent(stream)}/${encodeURIComponent(file)}`
}
