import { type Drug, drugById } from '#core/formulary/drug.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { amountOf } from './amount.ts'
import { judgeContainers } from './containers.ts'
import { add, type Draft, identify, weigh } from './draft.ts'
import { type DoseCode, type DoseFinding, isBlock } from './findings.ts'
import { drawDraft, finish, withSource } from './finish.ts'
import { unknownGiven, unknownPlan } from './given-doubts.ts'
import { drugsGiven } from './given-drug.ts'
import { judgeDrawnDay, judgeTogether } from './judge-together.ts'
import { type Ceiling, judgeCeiling, type MeasuredDraft } from './local-anaesthetic-ceiling.ts'
import type { DoseLine, DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'
import { judgeAge, judgeWeight, leanWeight } from './weight.ts'

export type DoseResult = {
  readonly lines: readonly DoseLine[]
  readonly ceilings: readonly Ceiling[]
  /** About the animal and what it was given. */
  readonly findings: readonly DoseFinding[]
}

/**
 * Judges every line of a plan for one animal: what to draw, or why not and what would make it possible.
 * Judges plans only; what was given is counted, never refused. Never picks a dose.
 *
 * @example doseLines({ animal, given: [], lines: [{ id: 'l1', drug: 'bupivacaine', use: 'local_block', dose, stock }] }, knowledge)
 */
export function doseLines(request: DoseRequest, knowledge: DosingKnowledge): DoseResult {
  const { animal } = request
  const weight = judgeWeight(animal, request.at, knowledge.rules.weight)
  const drafts = request.lines
    .map((line) => identify(line, request, knowledge))
    .map((draft) => (draft.row ? weigh(draft, weight, request, knowledge) : draft))
  const judged = judgeTogether(drafts, request, knowledge)

  const lean = animal.weight && leanWeight(animal.weight, animal.bodyCondition, knowledge.rules.weight)
  const ceiling = judgeCeiling(
    judged.filter(isMeasurable).map(asMeasured).flatMap(withLoading),
    request,
    knowledge,
    lean,
  )
  const limited = judged.map((draft) =>
    add(
      draft,
      [draft.line.id, loadingId(draft.line)].flatMap((id) => ceiling.findings.get(id) ?? []),
    ),
  )
  const lines = drawAll(limited, ceiling.down, request, knowledge)
  const findings = [
    ...weight,
    ...judgeAge(animal, knowledge.rules),
    ...unknownGiven(request, knowledge),
    ...unknownPlan(request, knowledge),
  ]
  return {
    lines,
    ceilings: ceiling.ceiling ? [ceiling.ceiling] : [],
    findings: bySeverity(findings.map((finding) => withSource(finding, knowledge))),
  }
}

/** Drawn to the nearest mark; rounded down where the day's limit is passed by rounding, and refused where that is not enough. */
function drawAll(
  drafts: readonly Draft[],
  down: ReadonlySet<string>,
  request: DoseRequest,
  knowledge: DosingKnowledge,
): DoseLine[] {
  const drawn = (downs: ReadonlySet<string>) => {
    const containers = judgeContainers(drafts, request, knowledge, downs)
    return drafts.map((one) => {
      const { line, drug } = one
      const draft = add(one, containers.findings.get(line.id) ?? [])
      const poured = containers.poured.get(line.id)
      const how = {
        down: downs.has(line.id),
        loadingDown: downs.has(loadingId(line)),
        ...(poured && { poured }),
        loaded: drug !== undefined && wasLoaded(drug, line, request, knowledge),
      }
      const answer = drawDraft(draft, how, knowledge)
      return { draft, answer, delivered: answer?.measured.delivered ?? draft.dose }
    })
  }
  const nearest = drawn(down)
  const over = judgeDrawnDay(nearest, request, knowledge)
  if (over.size === 0) return nearest.map(({ draft, answer }) => finish(draft, answer, knowledge))
  const lower = drawn(new Set([...down, ...over.keys()]))
  const still = judgeDrawnDay(lower, request, knowledge)
  return lower.map(({ draft, answer }) => finish(add(draft, still.get(draft.line.id) ?? []), answer, knowledge))
}

type Measurable = Draft & Required<Pick<Draft, 'drug' | 'row' | 'dose' | 'amount' | 'body'>>

/** Blocks that leave no doubt what was meant: the animal or another drug bars it, but its amount is still asked for. */
const withoutDoubt: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'excluded',
  'excluded-by-given',
  'nsaid-with-steroid',
  'over-daily-maximum',
  'pair-forbidden',
  'repeat-too-soon',
  'two-nsaids',
])

function isMeasurable(draft: Draft): draft is Measurable {
  const { drug, row, dose, amount, body } = draft
  const isDoubtful = draft.findings.some((finding) => isBlock(finding) && !withoutDoubt.has(finding.code))
  return Boolean(drug && row && dose && amount && body) && !isDoubtful
}

function asMeasured(draft: Measurable): MeasuredDraft & Pick<Measurable, 'body'> {
  return { ...draft, refused: draft.findings.some(isBlock) }
}

/** A loading dose is a single dose of its own before the ceiling, whatever the infusion is counted as. */
function withLoading(draft: MeasuredDraft & Pick<Measurable, 'body'>): MeasuredDraft[] {
  const { line, body } = draft
  if (!line.loading) return [draft]
  const { loading, over: _, ...rest } = line
  const single: PlannedLine = { ...rest, id: loadingId(line), use: 'analgesia_bolus', dose: loading.dose }
  return [{ ...draft, line: single, amount: amountOf(loading.dose, body) }, draft]
}

function loadingId({ id }: PlannedLine): string {
  return `${id} (loading dose)`
}

/** The drug was given, or another line plans it, as a single dose: its infusion does not start from nothing. */
function wasLoaded(drug: Drug, line: PlannedLine, request: DoseRequest, { drugs }: DosingKnowledge): boolean {
  const planned = request.lines.some(
    (other) => other.id !== line.id && other.use !== line.use && drugById(drugs, other.drug)?.id === drug.id,
  )
  return planned || request.given.some((given) => drugsGiven(drugs, given.drug).some(({ id }) => id === drug.id))
}
