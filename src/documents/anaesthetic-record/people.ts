import { procedures } from '#content/procedures/index.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { anaestheticRecordWords as words } from '#content/wording/papers-anaesthetic.ts'
import { emergencySheetWords } from '#content/wording/papers-emergency.ts'
import { authorNamed, type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { assessmentOf } from '#core/theatre/assessment-of.ts'
import { isMeasured, type Ledger, wholeMinutes } from '#core/theatre/ledger.ts'
import { doneAt } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { plain, type Quantity } from '#core/units/quantity.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { type Operation, whenOf } from '../case/case-words.ts'
import { type Block, facts } from '../render/model.ts'

const missing = papersInEnglish.notRecorded

/** Whose anaesthetic it was, who looked after it, and from when to when. */
export function whoFacts(file: CaseFile, operation: Operation, ledger: Ledger, every: Quantity<'min'>): Block {
  const { theCase } = file
  const { terms } = words
  const at = (mark: string) => doneAt(theCase, operation.id, mark)
  const clock = (instant: string | null) => (instant === null ? missing : clockOf(instant, file.clinic.zone))
  const { start, tubeOut } = ledger
  const observers = new Set(ledger.observations.map(({ header }) => authorNamed(file, header.author)))
  return facts(
    [terms.operation, procedureNamed(operation.procedure, procedures).name],
    ...(ledger.together.length < 2
      ? []
      : [[terms.together, ledger.together.map(({ side }) => papersInEnglish.sides[side]).join(', ')] as const]),
    [terms.weight, sayWeight(file, operation)],
    ...assessed(file, operation),
    [terms.surgeon, personNamed(file, operation.surgeon)],
    [terms.anaesthetist, operation.anaesthetist === null ? missing : personNamed(file, operation.anaesthetist)],
    [terms.observers, [...observers].join(', ') || missing],
    [terms.start, clock(start)],
    [terms.incision, clock(at('incision'))],
    [terms.closed, clock(at('closed'))],
    [terms.tubeOut, clock(tubeOut)],
    [
      terms.duration,
      start === null || tubeOut === null
        ? papersInEnglish.notKnown
        : fill(words.minutes, { minutes: String(wholeMinutes(start, tubeOut)) }),
    ],
    [terms.gaps, sayGaps(ledger, every)],
  )
}

/** The last weight before the operation: the one that its doses stand on. */
function sayWeight({ theCase }: CaseFile, operation: Operation): string {
  const weight = theCase.live('weight').findLast(({ at }) => at <= operation.moment.at)
  if (!weight) return missing
  const { weight: stored, how } = weight.body
  return fill(words.weight, {
    shown: inBothUnits(fromStored(stored)),
    how: emergencySheetWords.how[how],
    date: whenOf(weight),
  })
}

function assessed(file: CaseFile, operation: Operation): (readonly [string, string])[] {
  const { terms } = words
  const found = assessmentOf(operation, operationsOf(file), file.theCase)
  if (!found) {
    return [
      [terms.asa, missing],
      [terms.airway, missing],
    ]
  }
  const { asa, emergency, because, airwayA, airwayB } = found.body
  return [
    [terms.asa, fill(emergency ? words.asaEmergency : words.asa, { asa, because })],
    [terms.airway, fill(words.airway, { a: airwayA, b: airwayB })],
  ]
}

/** How much of the anaesthetic nobody measured: first thing a reader of the table should know. */
function sayGaps({ gaps, start, tubeOut, observations }: Ledger, every: Quantity<'min'>): string {
  const words = ledgerInEnglish
  if (!observations.some(isMeasured) && gaps.length === 0) return words.nothingMeasured
  const minutes = { minutes: plain(every.value) }
  const total = gaps.reduce((sum, gap) => sum + gap.minutes, 0)
  const whole = start === null || tubeOut === null ? null : String(wholeMinutes(start, tubeOut))
  const about = {
    count: String(gaps.length),
    longest: String(Math.max(...gaps.map((gap) => gap.minutes))),
    total: String(total),
    ofAll: whole === null ? '' : fill(words.ofAll, { minutes: whole }),
  }
  return [
    gaps.length === 0 ? fill(words.noGap, minutes) : fill(words.gaps[gaps.length === 1 ? 'one' : 'many'], about),
    ...(start === null ? [words.noStart] : []),
    ...(tubeOut === null ? [words.noEnd] : []),
  ].join('; ')
}
