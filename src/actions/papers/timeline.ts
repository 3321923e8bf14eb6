import { columnsOfTimeline } from '#content/wording/columns-of-timeline.ts'
import { canonical } from '#core/journal/canonical.ts'
import type { Case, Line } from '#core/journal/fold.ts'
import { wallClock } from '#core/time/moment.ts'
import { sheet } from '#documents/render/sheet.ts'

const header = columnsOfTimeline.map(({ column }) => column)

/** Every entry of the case, also corrected and withdrawn ones, in the order it happened, for a spreadsheet. */
export function timeline(theCase: Case): string {
  return sheet(header, theCase.lines.map(rowOf))
}

function rowOf({ header: entry, body, state, late, orderCertain }: Line): string[] {
  const { subject, happenedAt, author } = entry
  return [
    wallClock(happenedAt).toString({ timeZoneName: 'never', smallestUnit: 'second' }),
    happenedAt.zone,
    happenedAt.precision,
    orderCertain ? 'yes' : 'no',
    entry.kind,
    subject.kind,
    subject.kind === 'ear' ? subject.side : '',
    state,
    late ?? '',
    entry.writtenAt,
    'person' in author ? author.person : 'contact' in author ? author.contact : author.from,
    entry.id,
    body === null ? '' : canonical(body),
  ]
}
