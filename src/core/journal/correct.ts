import type { Entry, Subject } from './entry.ts'

/** What a new entry takes from the moment it is written: everything but its content. */
export type Written = Pick<Entry, 'happenedAt' | 'writtenAt' | 'author' | 'device'>

/**
 * Files an entry that stood with the wrong animal to the right one: a copy there, and a `refile` entry that withdraws
 * it here. Both are accepted together; the copy keeps the time of the event. Withdrawing the `refile` entry brings the original back.
 *
 * @example refile(entry, { stream: 'case:0042', subject }, 'Other dog of the same owner.', [id1, id2], written)
 */
export function refile(
  entry: Entry,
  to: { readonly stream: string; readonly subject: Subject },
  reason: string,
  ids: readonly [copy: string, refile: string],
  written: Written,
): readonly [Entry, Entry] {
  const [copyId, refileId] = ids
  const { happenedAt, writtenAt, author, device } = written
  const copy: Entry = {
    ...entry,
    writtenAt,
    author,
    device,
    id: copyId,
    stream: to.stream,
    subject: to.subject,
    supersedes: [],
    withdraws: null,
    refiledFrom: entry.id,
    reason,
  }
  const withdrawing: Entry = {
    ...entry,
    happenedAt,
    writtenAt,
    author,
    device,
    id: refileId,
    kind: 'refile',
    version: 1,
    body: { toStream: to.stream, toSubject: to.subject, copy: copyId },
    // What this entry had corrected stays corrected: it must not come alive again with the wrong animal.
    supersedes: entry.supersedes,
    withdraws: entry.id,
    refiledFrom: null,
    attachments: [],
    reason,
  }
  return [copy, withdrawing]
}
