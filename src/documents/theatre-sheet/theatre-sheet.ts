import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { pauseInEnglish } from '#content/wording/app-pause.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { theatreSheetWords as words } from '#content/wording/papers-theatre.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { inPlanOrder } from '#core/dosing/in-plan-order.ts'
import { boundPlanOf } from '#core/dosing/second-check.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { assessmentOf } from '#core/theatre/assessment-of.ts'
import { pausesOf } from '#core/theatre/spoken-pause.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { type Operation, operationOf, paperOf, whenOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition, type PaperInput } from '../case/paper-input.ts'
import { saidFlags } from '../case/said-flags.ts'
import { wholeVolume } from '../emergency-sheet/say-whole.ts'
import { sheetOfCase } from '../emergency-sheet/sheet-of-case.ts'
import { type Block, facts, heading, paragraph, type Words } from '../render/model.ts'
import {
  countTable,
  drugTable,
  lossTable,
  observationTable,
  pauseTable,
  pointTable,
  recoveryTable,
} from './blank-tables.ts'

/** The whole theatre record to be written by hand, printed before theatre: paper never fails, and is typed in afterwards. */
export const theatreSheet: PaperDefinition = {
  id: 'theatre-sheet',
  title: 'Theatre sheet',
  per: 'operation',
  of: (input) => {
    const { file } = input
    const operation = operationOf(input)
    if (!operation) return notYet('no-operation')
    if (operation.summary) return notYet('operated')
    const side = papersInEnglish.sides[operation.side]
    const procedure = procedureNamed(operation.procedure, procedures)
    const pair = oneAnaesthetic(operation, operationsOf(file), file.theCase)
    const titled = (key: keyof typeof words.headings, about = {}) =>
      heading(1, fill(words.headings[key], { side, ...about }))
    return paperOf(input, {
      id: 'theatre-sheet',
      title: fill(words.title, { side }),
      blocks: [
        { kind: 'callout', tone: 'attention', word: words.howWord, lines: [words.how] },
        titled('before'),
        beforeFacts(input, operation),
        ...pausesOf(operation.id, pair, spokenPauses).flatMap((pause): Block[] => [
          titled('pauses', { pause: pauseInEnglish.titles[pause.pause] }),
          paragraph(words.whoLed),
          pauseTable(pause),
        ]),
        { kind: 'page-break' },
        titled('points'),
        pointTable(procedure, reportInEnglish.clockMarks),
        titled('drugs'),
        drugTable(inPlanOrder(linesAbout(file.theCase, 'planned-line', operation.id), file.house)),
        { kind: 'page-break' },
        titled('observations', { minutes: plain(theatreTimers.observeEvery.value.value) }),
        observationTable(),
        titled('loss'),
        lossTable(),
        countTable(),
        titled('recovery'),
        recoveryTable(ledgerInEnglish.recovery.events, operation.side),
        { kind: 'signatures', lines: [words.signature] },
      ],
    })
  },
}

function beforeFacts(input: PaperInput, operation: Operation): Block {
  const { file } = input
  const { terms } = words
  const weighed = file.theCase.latest('weight')
  const flags = saidFlags(file)
  const assessed = assessmentOf(operation, operationsOf(file), file.theCase)?.body
  const bound = boundPlanOf(file.theCase, linesAbout(file.theCase, 'planned-line', operation.id))
  const strong = (text: string): Words => [{ kind: 'strong', text }]
  return facts(
    [
      terms.operation,
      strong(`${procedureNamed(operation.procedure, procedures).name}, ${papersInEnglish.sides[operation.side]}`),
    ],
    [
      terms.people,
      [operation.surgeon, operation.anaesthetist]
        .map((id) => (id ? personNamed(file, id) : papersInEnglish.notRecorded))
        .join('; '),
    ],
    [terms.weight, weighed ? strong(inBothUnits(fromStored(weighed.body.weight))) : papersInEnglish.notRecorded],
    [terms.flags, flags.length === 0 ? words.noFlags : strong(flags.join('; '))],
    [terms.consent, sayConsent(input, operation)],
    [terms.asa, assessed ? `${assessed.asa}${assessed.emergency ? ' E' : ''}` : words.noAssessment],
    [terms.airway, assessed ? fill(words.airway, { a: assessed.airwayA, b: assessed.airwayB }) : words.noAssessment],
    [terms.plan, bound ? bound.fingerprint.slice(0, 8) : papersInEnglish.notRecorded],
    [terms.blood, sayBlood(input)],
    [terms.sheetFor, words.emergency],
  )
}

function sayConsent({ file }: PaperInput, { booking }: Operation): string {
  const agreement = file.theCase.live('agreement').find(({ header }) => header.id === booking?.body.agreement)
  if (!agreement) return words.noConsent
  return fill(words.consent, { fingerprint: agreement.body.fingerprint.slice(0, 8), when: whenOf(agreement) })
}

/** The marks of this animal in millilitres, because nobody works out a percentage beside the table. */
function sayBlood({ file }: PaperInput): string {
  const made = sheetOfCase(file)
  if (made.kind !== 'sheet') return papersInEnglish.notKnown
  const { blood, lossAt } = made.sheet
  const percent = (fraction: string) => plain(new Decimal(fraction).times(100))
  const marks = lossAt.map(({ mark, volume }) =>
    fill(words.mark, { percent: percent(mark.value.fraction), volume: wholeVolume(volume) }),
  )
  return fill(words.blood, { volume: wholeVolume(blood.counted), marks: marks.join(', ') })
}
