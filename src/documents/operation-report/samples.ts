import { specimenWords, reportInEnglish as words } from '#content/wording/report.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { potsOf } from '#core/theatre/specimens.ts'
import { sayDay, timeOf } from '../case/case-words.ts'
import { type Block, paragraph } from '../render/model.ts'

/** Every specimen of an operation with its label and how far its result has come. */
export function sampleBlocks(theCase: Case, operation: string): Block[] {
  const pots = potsOf(theCase, operation)
  if (pots.length === 0) return [paragraph(words.noSample)]
  const { label, site, tests, state } = words.sampleColumns
  return [
    {
      kind: 'table',
      caption: words.samplesCaption,
      rowHeader: true,
      columns: [
        { head: label, align: 'left', share: 1 },
        { head: site, align: 'left', share: 2 },
        { head: tests, align: 'left', share: 3 },
        { head: state, align: 'left', share: 2.4 },
      ],
      rows: pots.map(({ specimen, labelled }) => [
        specimen.body.label,
        specimenWords.sites[specimen.body.site],
        specimen.body.tests.map((test) => specimenWords.tests[test]).join(', '),
        [
          labelled ? fill(words.labelledOn, { at: timeOf(labelled) }) : words.unlabelled,
          stateOf(theCase, specimen),
        ].join('; '),
      ]),
    },
  ]
}

export function stateOf(theCase: Case, specimen: Line<BodyOf<'specimen'>>): string {
  const result = theCase.live('specimen-result').findLast(({ body }) => body.specimen === specimen.header.id)
  if (!result) return words.sampleStates.waiting
  const about = { status: specimenWords.status[result.body.status], date: sayDay(result.header.happenedAt) }
  return fill(words.sampleStates.result, about)
}
