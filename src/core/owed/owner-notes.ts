import type { BodyOf, Case, Line } from '../journal/fold.ts'
import { rootOf } from './operations.ts'
import type { Draft, OwedItem } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'

export type OwnerNote = Line<BodyOf<'owner-note'>>
export type OwnerReply = Line<BodyOf<'owner-reply'>>

/** The notes of a case, oldest first, each with what was answered to it. */
export function ownerNotesOf(theCase: Case): { readonly note: OwnerNote; readonly replies: readonly OwnerReply[] }[] {
  const replies = theCase.live('owner-reply')
  return theCase.live('owner-note').map((note) => {
    const root = rootOf(theCase, note.header.id)
    return { note, replies: replies.filter(({ body }) => rootOf(theCase, body.note) === root) }
  })
}

/**
 * Every note that an owner sent through the link is owed an answer, each by itself: a later one does not answer the one
 * before. What somebody of the house wrote down for the owner was heard already.
 */
export function owedAfterNotes({ rules, zone, revision, file: { theCase } }: Setting): Draft[] {
  return ownerNotesOf(theCase).flatMap(({ note, replies }): Draft[] => {
    const { author, attachments, id } = note.header
    if (author.kind !== 'owner-link') return []
    const item: OwedItem = {
      ...dueWithin(note.at, rules.ownerNoteAnsweredWithin, zone),
      id: `owner-note-to-answer:${id}`,
      what: 'owner-note-to-answer',
      about: {},
      who: 'nurse',
      person: null,
      way: 'task',
      side: note.body.ear === 'LEFT' || note.body.ear === 'RIGHT' ? note.body.ear : null,
      operation: null,
      why: [{ code: 'owner-sent-note', about: { pictures: String(attachments.length) } }],
      facts: [rules.ownerNoteAnsweredWithin],
      withOwner: true,
      revision,
    }
    const spoken = theCase
      .live('call')
      .filter(({ at, body }) => at > note.at && body.reached === 'yes' && body.contact === author.contact)
    const [by] = [...replies, ...spoken].sort((a, b) => (a.at < b.at ? -1 : 1))
    if (!by) return [{ item, ended: null }]
    return [{ item, ended: { because: by.at > item.dueBy ? 'settled-late' : 'settled', by: by.header.id } }]
  })
}
