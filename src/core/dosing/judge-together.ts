import { convert, Quantity } from '#core/units/quantity.ts'
import { judgeBlood } from './blood-match.ts'
import { add, type Draft } from './draft.ts'
import { barredByPlanned } from './exclusions.ts'
import { type DoseFinding, isBlock } from './findings.ts'
import { judgeInteractions, type Planned } from './interactions.ts'
import { goesIntoEar } from './into-ear.ts'
import { judgeDay } from './limits.ts'
import { judgeRepeat } from './repeat.ts'
import type { DoseRequest, DosingKnowledge, PlannedMass } from './request.ts'
import { judgeUnsettled } from './unsettled.ts'

/** What the lines mean for each other: drugs that must not meet, and the sum of a day. */
export function judgeTogether(drafts: readonly Draft[], request: DoseRequest, knowledge: DosingKnowledge): Draft[] {
  const planned = drafts.flatMap((draft): Planned[] =>
    draft.drug ? [{ line: draft.line.id, drug: draft.drug, intoEar: goesIntoEar(draft.line) }] : [],
  )
  const masses = drafts.flatMap((draft) => massOf(draft))
  return drafts.map((draft) => {
    const mine = planned.find((entry) => entry.line === draft.line.id)
    const mass = masses.find((entry) => entry.line === draft.line.id)
    const { weight } = request.animal
    return add(draft, [
      ...(mine ? judgeInteractions(mine, planned, request, knowledge.drugs, knowledge.rules.interactions) : []),
      ...(draft.drug && draft.row ? judgeRepeat(draft.drug, draft.row, request, knowledge) : []),
      ...(draft.drug && draft.row ? judgeBlood(draft.drug, draft.line, request, knowledge.rules) : []),
      ...(draft.drug ? judgeUnsettled(draft.drug, request, knowledge.drugs, knowledge.rules.interactions) : []),
      ...(mass && weight ? judgeMass(mass, masses, request, draft.body?.weight ?? weight, knowledge) : []),
    ])
  })
}

/** What the milligrams of a line mean beside the other lines and what was given. */
function judgeMass(
  mine: PlannedMass,
  masses: readonly PlannedMass[],
  request: DoseRequest,
  weight: Quantity<'kg'>,
  { drugs }: DosingKnowledge,
): DoseFinding[] {
  const others = masses.filter((entry) => entry !== mine)
  return [...judgeDay(mine, masses, request, weight, drugs), ...barredByPlanned(mine.drug, mine.row, others, weight)]
}

function massOf({ line, drug, row, amount, dose }: Draft, delivered = dose): PlannedMass[] {
  const mass = amount && convert(amount, 'mg')
  if (!mass || !drug || !row || !dose || !delivered) return []
  const real = new Quantity(mass.value.times(delivered.value).div(dose.value), 'mg')
  return [{ line: line.id, drug, row, mass: delivered === dose ? mass : real }]
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
  const masses = drawn.flatMap(({ draft, delivered }) => massOf(draft, delivered))
  const over = new Map<string, readonly DoseFinding[]>()
  if (!weight) return over
  for (const { draft } of drawn) {
    const mine = masses.find(({ line }) => line === draft.line.id)
    if (!mine || draft.findings.some(isBlock)) continue
    const blocks = judgeDay(mine, masses, request, draft.body?.weight ?? weight, drugs).filter(isBlock)
    if (blocks.length > 0) over.set(draft.line.id, blocks)
  }
  return over
}

/** A line and the dose that its syringe or its tablets give. */
export type DrawnDraft = { readonly draft: Draft; readonly delivered: Draft['dose'] }
