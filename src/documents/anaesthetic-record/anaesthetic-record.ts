import { owedRules } from '#content/follow-up/owed-rules.ts'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { nowInEnglish } from '#content/wording/app-now.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { anaestheticRecordWords as words } from '#content/wording/papers-anaesthetic.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { ledgerOf } from '#core/theatre/ledger.ts'
import { type Recovery, recoveryOf } from '#core/theatre/recovery.ts'
import { clockFace, shoutsOf } from '#core/theatre/shouts.ts'
import { clockOf } from '#core/time/moment.ts'
import { plain } from '#core/units/quantity.ts'
import { operationOf, paperOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { sourceLines } from '../case/sources-list.ts'
import { drugBlocks } from '../operation-report/drugs.ts'
import { lossBlocks } from '../operation-report/loss.ts'
import { signedState } from '../operation-report/signed-state.ts'
import { type Block, facts, heading, list, paragraph } from '../render/model.ts'
import { ledgerTable } from './ledger-table.ts'
import { whoFacts } from './people.ts'
import { nameOfEvent, sayBlock, sayEffect, saySeen } from './say-recovery.ts'
import { stripBlocks } from './strips.ts'

/** One anaesthetic as it was recorded: people, drugs, what was measured with its gaps, events, recovery. */
export const anaestheticRecord: PaperDefinition = {
  id: 'anaesthetic-record',
  title: 'Anaesthetic record',
  per: 'operation',
  of: (input) => {
    const { file, on } = input
    const operation = operationOf(input)
    if (!operation) return notYet('no-operation')
    const every = theatreTimers.observeEvery
    const ledger = ledgerOf(file, operation.id, on.at, every.value)
    const ids = ledger.together.map(({ id }) => id)
    const begun = ledger.rows.some(({ kind }) => kind === 'observation' || kind === 'stamp')
    if (!begun && !operation.summary) return notYet('not-operated')
    const recovery = recoveryOf(file, operation, on.at, owedRules.blockLasts)
    const side = papersInEnglish.sides[operation.side]
    const titled = (key: keyof typeof words.headings) => heading(1, fill(words.headings[key], { side }))
    const { anaesthetist } = operation
    return paperOf(input, {
      id: 'anaesthetic-record',
      title: fill(words.title, { side }),
      blocks: [
        ...signedState(file, operation),
        titled('who'),
        whoFacts(file, operation, ledger, every.value),
        titled('drugs'),
        ...drugBlocks(file, ids, words.person),
        titled('strips'),
        ...stripBlocks(file, ledger, every.value),
        titled('ledger'),
        paragraph(fill(ledgerInEnglish.rule, { minutes: plain(every.value.value) })),
        ledgerTable(file, ledger),
        titled('emergencies'),
        ...emergencyBlocks(file, ids),
        titled('loss'),
        ...lossBlocks(file, operation),
        titled('recovery'),
        ...recoveryBlocks(file, recovery),
        heading(1, words.sources),
        list(sourceLines([every, ...recovery.blocks.flatMap(({ lasts }) => lasts ?? [])])),
        {
          kind: 'signatures',
          lines: [
            fill(words.signature, {
              person: anaesthetist === null ? papersInEnglish.notRecorded : personNamed(file, anaesthetist),
            }),
          ],
        },
      ],
    })
  },
}

function emergencyBlocks({ theCase, clinic: { zone } }: CaseFile, operations: readonly string[]): Block[] {
  const shouts = operations.flatMap((operation) => shoutsOf(theCase, operation))
  if (shouts.length === 0) return [paragraph(words.noEmergency)]
  return [
    list(
      shouts.map(({ call, begun, ended }) => {
        const about = { what: nowInEnglish.calls[call], from: clockOf(begun.at, zone) }
        if (!ended) return fill(words.emergencyLasting, about)
        const clock = clockFace(begun.at, ended.at)
        return fill(words.emergency, { ...about, until: clockOf(ended.at, zone), clock, text: ended.body.text ?? '' })
      }),
    ),
  ]
}

function recoveryBlocks({ clinic: { zone } }: CaseFile, recovery: Recovery): Block[] {
  return [
    facts(
      [words.terms.tubeOut, recovery.tubeOut === null ? papersInEnglish.notRecorded : clockOf(recovery.tubeOut, zone)],
      ...recovery.events.map(
        (event) => [nameOfEvent(event), saySeen(event, recovery.tubeOut, zone) ?? papersInEnglish.notRecorded] as const,
      ),
    ),
    ...(recovery.blocks.length === 0
      ? [paragraph(ledgerInEnglish.recovery.noBlock)]
      : [list(recovery.blocks.map((block) => sayBlock(block, zone)))]),
    ...recovery.effects.map((effect) => paragraph(sayEffect(effect, zone))),
  ]
}
