import { wholeRecordInEnglish as say } from '#content/wording/whole-record.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Block, list, paragraph } from '../render/model.ts'

/** The state of the chain of every stream of the case, and the hash of each entry. */
export function chainBlocks({ theCase }: CaseFile, numberOf: (id: string) => string): Block[] {
  const streams = new Map<string, Line[]>()
  for (const line of theCase.lines) {
    if (line.envelope) streams.set(line.header.stream, [...(streams.get(line.header.stream) ?? []), line])
  }
  const { entry, sequence, id, hash } = say.hashColumns
  return [
    list([...streams].map(([stream, lines]) => stateOf(stream, lines, numberOf))),
    paragraph(say.chainLimits),
    {
      kind: 'table',
      caption: say.hashCaption,
      columns: [
        { head: entry, align: 'right', share: 0.5 },
        { head: sequence, align: 'right', share: 0.5 },
        { head: id, align: 'left', share: 2 },
        { head: hash, align: 'left', share: 3 },
      ],
      rows: theCase.lines.map(({ header, envelope }) => [
        numberOf(header.id),
        envelope ? String(envelope.sequence) : '',
        header.id,
        envelope?.hash ?? say.unaccepted,
      ]),
      rowHeader: true,
    },
  ]
}

function stateOf(stream: string, lines: readonly Line[], numberOf: (id: string) => string): string {
  const inChain = lines.toSorted((a, b) => (a.envelope?.sequence ?? 0) - (b.envelope?.sequence ?? 0))
  const broken = inChain.find(({ envelope }, place) => {
    const before = inChain[place - 1]?.envelope?.hash ?? null
    return envelope?.sequence !== place + 1 || envelope.previous !== before
  })
  return broken
    ? fill(say.chainBroken, { stream, number: numberOf(broken.header.id) })
    : fill(say.chainHolds, { stream, count: String(lines.length) })
}
