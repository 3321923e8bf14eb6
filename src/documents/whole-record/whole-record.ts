import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { wholeRecordInEnglish as say } from '#content/wording/whole-record.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { paperOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { nerveBlocks } from '../letter/nerve.ts'
import { type Block, heading, list, paragraph } from '../render/model.ts'
import { chainBlocks } from './chain-blocks.ts'
import { entryBlocks } from './entry-blocks.ts'
import { entryRows } from './entry-rows.ts'
import { type Stand, standsOf } from './in-force.ts'

/** Every entry of the case on its day, with what was in force then, for a complaint or a court. */
export const wholeRecord: PaperDefinition = {
  id: 'whole-record',
  title: say.title,
  per: 'case',
  of: (input) => {
    const { file } = input
    const { lines } = file.theCase
    if (lines.length === 0) return notYet('no-identity')
    const numbers = new Map(lines.map(({ header }, place) => [header.id, String(place + 1)]))
    const numberOf = (id: string) => numbers.get(id) ?? say.notHere
    const days = byDay(file)
    const stands = standsOf(file, [...days.keys()])
    return paperOf(input, {
      id: 'whole-record',
      title: say.title,
      blocks: [
        heading(1, say.headings.about),
        list(say.about),
        heading(1, say.headings.contents),
        list([...days].map(([day, { length }]) => contentsLine(day, length))),
        ...[...days].flatMap(([day, ofDay]) => [
          heading(1, sayCalendarDay(day)),
          paragraph(inForceOn(stands.get(day))),
          ...ofDay.flatMap((line) => entryBlocks(line, file, numberOf)),
        ]),
        ...nerveBlocks(file, say.headings.nerve, 1),
        heading(1, say.headings.inForce),
        ...[...new Set(stands.values())].flatMap((stand) => standBlocks(stand, file)),
        heading(1, say.headings.attachments),
        attachments(lines, numberOf),
        heading(1, say.headings.chain),
        ...chainBlocks(file, numberOf),
      ],
    })
  },
}

function contentsLine(day: string, count: number): string {
  const { one, many } = say.contentsOf
  return fill(count === 1 ? one : many, { day: sayCalendarDay(day), count: String(count) })
}

function byDay({ theCase, clinic }: CaseFile): Map<string, Line[]> {
  const days = new Map<string, Line[]>()
  for (const line of theCase.lines) {
    const day = dayOf({ at: line.at, zone: clinic.zone })
    const before = days.get(day)
    if (before) before.push(line)
    else days.set(day, [line])
  }
  return days
}

/** The house policies by name and value; the rest by its stand, which stands in full at the end. */
function inForceOn(stand: Stand | undefined): string {
  const policies = (stand?.lines ?? []).flatMap(({ header, body }) => {
    if (header.kind !== 'house-policy' || body === null || typeof body !== 'object') return []
    const { policy, value } = body as { readonly policy: string; readonly value: string }
    return [fill(say.policy, { policy, value })]
  })
  const said = policies.length === 0 ? say.day.noPolicy : policies.join('; ')
  return fill(say.day.stand, { stand: String(stand?.number ?? ''), policies: said })
}

function standBlocks({ number, from, lines }: Stand, file: CaseFile): Block[] {
  return [
    heading(2, fill(say.stand, { stand: String(number) })),
    paragraph(fill(say.standFrom, { from: sayCalendarDay(from) })),
    lines.length === 0 ? paragraph(say.nothingSet) : list(lines.map((line) => setLine(line, file))),
  ]
}

function setLine(line: Line, file: CaseFile): string {
  const { kind, id } = line.header
  const said = entryRows(line, file).map(([label, value]) => `${label}: ${value}`)
  return `${kindsInEnglish[kind as KindName] ?? kind} (${id}) – ${said.join(' · ')}`
}

function attachments(lines: readonly Line[], numberOf: (id: string) => string): Block {
  const rows = lines.flatMap(({ header: { id, attachments: files } }) =>
    files.map(({ mediaType, bytes, hash }) => [numberOf(id), mediaType, String(bytes), hash]),
  )
  if (rows.length === 0) return paragraph(say.noAttachments)
  const { entry, type, bytes, hash } = say.attachmentColumns
  return {
    kind: 'table',
    caption: say.attachmentsCaption,
    columns: [
      { head: entry, align: 'right', share: 0.5 },
      { head: type, align: 'left' },
      { head: bytes, align: 'right' },
      { head: hash, align: 'left', share: 3 },
    ],
    rows,
    rowHeader: true,
  }
}
