import { convert, Decimal, Quantity } from '#core/units/quantity.ts'
import { kindOf } from './amount.ts'
import { judgeBlood } from './blood-match.ts'
import { hourOf } from './container.ts'
import { add, type Draft } from './draft.ts'
import { barredByPlanned } from './exclusions.ts'
import { type DoseFinding, isBlock } from './findings.ts'
import { judgeInteractions, type Planned } from './interactions.ts'
import { goesIntoEar } from './into-ear.ts'
import { judgeDay } from './limits.ts'
import { judgeRepeat } from './repeat.ts'
import type { Counted, DoseRequest, DosingKnowledge, PlannedAmount } from './request.ts'
import { judgeRunsTwice, judgeTwice } from './twice.ts'
import { judgeUnsettled } from './unsettled.ts'

/** What the lines mean for each other: drugs that must not meet, and the sum of a day. */
export function judgeTogether(drafts: readonly Draft[], request: DoseRequest, knowledge: DosingKnowledge): Draft[] {
  const planned = drafts.flatMap((draft): Planned[] =>
    draft.drug ? [{ line: draft.line.id, drug: draft.drug, intoEar: goesIntoEar(draft.line) }] : [],
  )
  const amounts = drafts.flatMap((draft) => amountsOf(draft))
  return drafts.map((draft) => {
    const mine = planned.find((entry) => entry.line === draft.line.id)
    const amount = amounts.find((entry) => entry.line === draft.line.id)
    const { weight } = request.animal
    return add(draft, [
      ...(mine ? judgeInteractions(mine, planned, request, knowledge.drugs, knowledge.rules.interactions) : []),
      ...(draft.drug && draft.row ? judgeRepeat(draft.drug, draft.row, request, knowledge) : []),
      ...(draft.drug && draft.row ? judgeBlood(draft.drug, draft.line, request, knowledge.rules) : []),
      ...(draft.drug ? judgeUnsettled(draft.drug, request, knowledge.drugs, knowledge.rules.interactions) : []),
      ...judgeRunsTwice(draft, drafts),
      ...(amount && weight ? judgeAmount(amount, amounts, request, draft.body?.weight ?? weight, knowledge) : []),
    ])
  })
}

/** What the amount of a line means beside the other lines and what was given. */
function judgeAmount(
  mine: PlannedAmount,
  amounts: readonly PlannedAmount[],
  request: DoseRequest,
  weight: Quantity<'kg'>,
  knowledge: DosingKnowledge,
): DoseFinding[] {
  const { drugs } = knowledge
  const others = amounts.filter((entry) => entry !== mine)
  return [
    ...judgeDay(mine, amounts, request, weight, drugs),
    ...barredByPlanned(mine.drug, mine.row, others, weight),
    ...judgeTwice(mine, amounts, request, weight, knowledge),
  ]
}

/** What a line adds to a day: one dose of it, or what an infusion runs in until its end, or within the day. */
function amountsOf({ line, drug, row, amount, dose }: Draft, delivered = dose): PlannedAmount[] {
  if (!amount || !drug || !row || !dose || !delivered) return []
  const isRunning = kindOf(dose) === 'infusion-per-weight'
  const once = isRunning ? hourOf(amount) : amount
  const counted: Counted | undefined = convert(once, 'mg') ?? convert(once, 'mL')
  if (!counted) return []
  const real = delivered === dose ? counted.value : counted.value.times(delivered.value).div(dose.value)
  const base = { line: line.id, drug, row }
  if (!isRunning) return [{ ...base, amount: new Quantity(real, counted.unit) as Counted }]
  if (!line.over) return [{ ...base, amount: new Quantity(new Decimal(0), counted.unit) as Counted, perHour: real }]
  const hours = Decimal.min(line.over.value.div(60), 24)
  return [{ ...base, amount: new Quantity(real.times(hours), counted.unit) as Counted }]
}

/**
 * The sum of the day once more with what syringes and tablets really give: two doses inside the limit, each rounded
 * up, may pass it together.
 */
export function judgeDrawnDay(
  drawn: readonly DrawnDraft[],
  request: DoseRequest,
  { drugs }: Pick<DosingKnowledge, 'drugs'>,
): ReadonlyMap<string, readonly DoseFinding[]> {
  const { weight } = request.animal
  const amounts = drawn.flatMap(({ draft, delivered }) => amountsOf(draft, delivered))
  const over = new Map<string, readonly DoseFinding[]>()
  if (!weight) return over
  for (const { draft } of drawn) {
    const mine = amounts.find(({ line }) => line === draft.line.id)
    if (!mine || draft.findings.some(isBlock)) continue
    const blocks = judgeDay(mine, amounts, request, draft.body?.weight ?? weight, drugs).filter(isBlock)
    if (blocks.length > 0) over.set(draft.line.id, blocks)
  }
  return over
}

/** A line and the dose that its syringe or its tablets give. */
export type DrawnDraft = { readonly draft: Draft; readonly delivered: Draft['dose'] }
