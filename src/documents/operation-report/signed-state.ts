import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Operation } from '../case/case-words.ts'
import { type Block, paragraph } from '../render/model.ts'

/** Draft or signed; and a side that two entries name differently is never passed over. */
export function signedState(file: CaseFile, { summary, booking, side }: Operation): Block[] {
  const sides = papersInEnglish.sides
  const doubt: Block[] =
    booking !== null && booking.body.side !== side
      ? [
          {
            kind: 'callout',
            tone: 'stop',
            word: words.otherSideWord,
            lines: [fill(words.otherSide, { booked: sides[booking.body.side], signed: sides[side] })],
          },
        ]
      : []
  if (!summary) return [...doubt, { kind: 'callout', tone: 'attention', word: words.draftWord, lines: [words.draft] }]
  const when = sayMoment(summary.header.happenedAt)
  return [...doubt, paragraph(fill(words.signed, { person: personNamed(file, summary.body.signedBy), when }))]
}
