import { letterInEnglish as words } from '#content/wording/letter.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { PaperInput } from '../case/paper-input.ts'
import { type Block, heading, paragraph, type Table } from '../render/model.ts'

/** Everything still owed, with a name and a last day. */
export function owedBlocks({ owed, file }: PaperInput): Block[] {
  if (owed.length === 0) return [heading(1, words.owed), paragraph(words.owedNothing)]
  const { what, who, from, by, why } = words.owedColumns
  const day = (at: string) => sayMoment({ at, zone: file.clinic.zone, precision: 'day', by: 'clock' })
  const table: Table = {
    kind: 'table',
    caption: words.owedCaption,
    rowHeader: true,
    columns: [
      { head: what, align: 'left', share: 2.6 },
      { head: who, align: 'left', share: 1.1 },
      { head: from, align: 'left', share: 1.6 },
      { head: by, align: 'left', share: 1.6, weight: 'strong' },
      { head: why, align: 'left', share: 3.2 },
    ],
    rows: owed.map((item) => [item.what, item.who, day(item.dueFrom), day(item.dueBy), item.why]),
  }
  return [heading(1, words.owed), table]
}
