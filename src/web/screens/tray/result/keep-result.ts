import { takeInResultInEnglish as words } from '#content/wording/app-take-in-result.ts'
import type { Side } from '#core/animal/species.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import { fill } from '#core/outcome/finding.ts'
import { trayStream } from '#core/tray/tray.ts'
import type { Attachment } from '../../../journal/take-in.ts'
import { makeEntry, type Pen } from '../../../journal/write-entry.ts'

const clinic = { kind: 'clinic' } as const

/** Who and what a report says it is of, in the words of the tray. */
export function sayReport({ animal, side, accession, label }: LaboratoryReport): string {
  const { both, name, none } = words.animal
  const who =
    animal.name === null
      ? none
      : fill(animal.owner === null ? name : both, { name: animal.name, owner: animal.owner ?? '' })
  const number = [
    ...(accession === null ? [] : [fill(words.report.accession, { accession })]),
    ...(label === null ? [] : [fill(words.report.label, { label })]),
  ].join(', ')
  return fill(words.says, { animal: who, ear: side ?? words.noSide, report: number || words.report.none })
}

/** What came in, as the tray holds it: nothing says with certainty whose it is, or somebody has to look. */
export function held(pen: Pen, file: Attachment, says: string, from: string | null): Entry {
  const body = { came: 'other', from, seems: 'laboratory-report', says: says.slice(0, 300) } as const
  return makeEntry(pen, { kind: 'arrived-paper', stream: trayStream, subject: clinic, body, attachments: [file] })
}

type Where = { readonly stream: string; readonly animal: string; readonly side: Side }

/**
 * Everything is filed through the tray, in one stroke: what came in, its result in the case, and the entry that says
 * where it went. So a wrong filing is taken back like any other, and the original waits in the tray again.
 */
export function filed(
  pen: Pen,
  where: Where,
  body: BodyOf<'specimen-result'>,
  about: {
    readonly file: Attachment
    readonly says: string
    readonly from: string | null
    /** What waited in the tray already and is filed now. */
    readonly arrived: string | null
    readonly supersedes: readonly string[]
  },
): Entry[] {
  const { file, says, from, supersedes } = about
  const came = about.arrived === null ? held(pen, file, says, from) : null
  const arrived = about.arrived ?? came?.id ?? ''
  const subject = { kind: 'ear', animal: where.animal, side: where.side } as const
  const reason =
    supersedes.length > 0 ? fill(words.filing.again, { status: words.statuses[body.status] }) : words.filing.reason
  const made = makeEntry(pen, {
    kind: 'specimen-result',
    stream: where.stream,
    subject,
    body,
    supersedes,
    attachments: [file],
    reason,
  })
  const copy = { ...made, refiledFrom: arrived }
  const refile = { toStream: where.stream, toSubject: subject, copy: copy.id }
  return [
    ...(came ? [came] : []),
    copy,
    makeEntry(pen, { kind: 'refile', stream: trayStream, subject: clinic, body: refile, withdraws: arrived, reason }),
  ]
}
