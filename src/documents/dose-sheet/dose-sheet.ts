import { procedures } from '#content/procedures/index.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { doseSheetWords as words } from '#content/wording/papers-dose.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { isOfEmergency } from '#core/dosing/emergency-declared.ts'
import { inPlanOrder } from '#core/dosing/in-plan-order.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { minutesBetween } from '#core/time/moment.ts'
import { plain } from '#core/units/quantity.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { animalOf, type Operation, operationOf, paperOf, whenOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition, type PaperInput } from '../case/paper-input.ts'
import { sourceLines } from '../case/sources-list.ts'
import { type Block, facts, heading, list, paragraph, small } from '../render/model.ts'
import { ceilingBlocks } from './ceilings.ts'
import { findingLines, type PlannedEntry, planTable, sayFinding, whyTable } from './plan-tables.ts'
import { secondCheckBlocks } from './second-check.ts'

/** What to draw up for one operation: plan first, and beside every number who chose it and why it is allowed. */
export const doseSheet: PaperDefinition = {
  id: 'dose-sheet',
  title: 'Dose sheet',
  per: 'operation',
  of: (input) => {
    const { file, doses } = input
    const animal = animalOf(file)
    if (!animal) return notYet('no-identity')
    const operation = operationOf(input)
    if (!operation) return notYet('no-operation')
    const planned = inPlanOrder(linesAbout(file.theCase, 'planned-line', operation.id), file.house)
    const [first] = planned
    if (!first) return notYet('no-plan')
    return paperOf(input, {
      id: 'dose-sheet',
      title: fill(words.title, { name: animal.name, side: papersInEnglish.sides[operation.side] }),
      print: 'wall',
      blocks: [
        headFacts(input, operation, first),
        ...otherWeight(input, first),
        ...emergencyDeclared(doses),
        ...(doses ? [] : [notJudged]),
        heading(1, words.lines),
        planTable(planned, doses, operation.done === null),
        heading(1, words.ceilings),
        ...ceilingBlocks(doses),
        ...aboutTheAnimal(doses),
        heading(1, words.second),
        ...secondCheckBlocks(file, planned, operation.done?.moment.at ?? null),
        { kind: 'signatures', lines: Object.values(words.signatures) },
        paragraph([small(words.behind)]),
        { kind: 'page-break' },
        heading(1, words.why),
        whyTable(planned, doses),
        heading(1, words.sources),
        list(sourceLines(doses?.lines.flatMap(({ sources }) => sources) ?? []).map((line) => [small(line)])),
      ],
    })
  },
}

const notJudged: Block = { kind: 'callout', tone: 'stop', word: words.notJudgedWord, lines: [words.notJudged] }

function headFacts({ file }: PaperInput, operation: Operation, planned: PlannedEntry): Block {
  const { author } = planned.header
  const person = author.kind === 'person' ? personNamed(file, author.person) : author.kind
  const side = papersInEnglish.sides[operation.side]
  return facts(
    [words.operation, `${procedureNamed(operation.procedure, procedures).name}, ${side}`],
    [words.weight, weightWords({ file }, planned)],
    [words.plannedOn, fill(words.plannedBy, { when: whenOf(planned), person })],
  )
}

function weightWords({ file }: Pick<PaperInput, 'file'>, planned: PlannedEntry): string {
  const weighed = file.theCase.live('weight').findLast((line) => line.at <= planned.at)
  if (!weighed) return papersInEnglish.notRecorded
  const hours = (minutesBetween({ at: weighed.at }, { at: planned.at }) / 60).toFixed(1)
  const shown = inBothUnits(fromStored(weighed.body.weight))
  return fill(words.weightValue, { shown, how: words.how[weighed.body.how], date: whenOf(weighed), hours })
}

/** The plan stands for one weight; a later one makes the sheet old. */
function otherWeight({ file }: PaperInput, planned: PlannedEntry): Block[] {
  const now = file.theCase.live('weight').at(-1)
  const before = file.theCase.latest('operation-summary')
  const forPlan = fromStored(planned.body.weight).value
  if (before || !now || fromStored(now.body.weight).value.eq(forPlan)) return []
  const about = { planned: plain(forPlan), now: now.body.weight.value }
  return [{ kind: 'callout', tone: 'stop', word: words.otherWeightWord, lines: [fill(words.otherWeight, about)] }]
}

function aboutTheAnimal(doses: DoseResult | null): Block[] {
  const findings = doses?.findings.filter((finding) => !isOfEmergency(finding)) ?? []
  if (findings.length === 0) return []
  return [heading(2, words.animal), ...findingLines(findings).map((line) => paragraph(line))]
}

/** Read before anything is drawn: what follows was planned while an emergency lifted what bars it. */
function emergencyDeclared(doses: DoseResult | null): Block[] {
  const lines = doses?.findings.filter(isOfEmergency).map(sayFinding) ?? []
  return lines.length === 0 ? [] : [{ kind: 'callout', tone: 'stop', word: words.emergency, lines }]
}
