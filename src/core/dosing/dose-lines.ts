import type { Drug } from '#core/formulary/drug.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { amountOf } from './amount.ts'
import { judgeBreed, judgeSilence } from './animal-checks.ts'
import { type Confirmation, confirmationOf } from './confirmation.ts'
import { judgeContainers } from './containers.ts'
import { add, type Draft, identify, weigh } from './draft.ts'
import { judgeInEar } from './ear-checks.ts'
import { liftDraft, sayEmergency } from './emergency-declared.ts'
import { type ScopedEmergency, type ScopedRequest, scoped } from './emergency-scope.ts'
import { type DoseCode, type DoseFinding, isBlock } from './findings.ts'
import { drawDraft, finish, withSource } from './finish.ts'
import { unknownGiven, unknownPlan } from './given-doubts.ts'
import { drugsGiven } from './given-drug.ts'
import { judgeGivenSlips } from './given-slips.ts'
import { judgeDrawnDay, judgeTogether } from './judge-together.ts'
import { type Ceiling, judgeCeiling, type MeasuredDraft } from './local-anaesthetic-ceiling.ts'
import { judgeOwn } from './own-defaults.ts'
import type { DoseLine, DoseRequest, DosingKnowledge, PlannedLine } from './request.ts'
import { judgeShelf } from './shelf-state.ts'
import { judgeConfused } from './strength-checks.ts'
import { judgeAge, judgeThin, judgeWeight, leanWeight } from './weight.ts'

export type DoseResult = {
  readonly lines: readonly DoseLine[]
  readonly ceilings: readonly Ceiling[]
  /** About the animal and what it was given. */
  readonly findings: readonly DoseFinding[]
  /** Absent when nothing asks for a second person. */
  readonly confirmation?: Confirmation
}

/**
 * Judges every line of a plan for one animal: what to draw, or why not and what would make it possible.
 * Judges plans only; what was given is counted, never refused. Never picks a dose.
 *
 * @example doseLines({ animal, given: [], lines: [{ id: 'l1', drug: 'bupivacaine', use: 'local_block', dose, stock }] }, knowledge)
 */
export function doseLines(request: DoseRequest, knowledge: DosingKnowledge): DoseResult {
  const { animal } = request
  const emergency = request.emergency && scoped(request.emergency, knowledge.drugs)
  const read: ScopedRequest = emergency ? { ...request, emergency } : request
  const weight = [...judgeWeight(animal, request.at, knowledge.rules.weight), ...judgeBreed(animal, knowledge.rules)]
  const drafts = request.lines
    .map((line) => identify(line, request, knowledge))
    .map((draft) => (draft.row ? weigh(draft, weight, request, knowledge) : draft))
  const stocked = drafts.map((draft) => add(draft, judgeShelf(draft.line, request.at, knowledge.shelf)))
  const judged = judgeTogether(stocked, request, knowledge)

  const lean = animal.weight && leanWeight(animal.weight, animal.bodyCondition, knowledge.rules.weight)
  const asked = judged.filter(isMeasurable).map((draft) => asMeasured(draft, emergency))
  const ceiling = judgeCeiling(asked.flatMap(withLoading), read, knowledge, lean)
  const limited = judged
    .map((draft) =>
      add(
        draft,
        [draft.line.id, loadingId(draft.line)].flatMap((id) => ceiling.findings.get(id) ?? []),
      ),
    )
    .map((draft) => liftDraft(draft, emergency))
  const lines = drawAll(limited, ceiling.down, read, knowledge)
  const findings = [
    ...sayEmergency(emergency, knowledge.rules),
    ...weight,
    ...judgeAge(animal, knowledge.rules),
    ...judgeThin(animal, knowledge.rules),
    ...judgeSilence(drafts.filter(isOfARow), animal, knowledge.rules),
    ...judgeConfused(drafts.filter(isOfARow), knowledge.rules),
    ...judgeInEar(request, knowledge),
    ...unknownGiven(request, knowledge),
    ...judgeGivenSlips(request, knowledge),
    ...unknownPlan(request, knowledge),
    ...judgeOwn(lines, knowledge),
  ]
  const said = bySeverity(findings.map((finding) => withSource(finding, knowledge)))
  const confirmation = confirmationOf(lines, said, emergency !== undefined)
  return {
    lines,
    ceilings: ceiling.ceiling ? [ceiling.ceiling] : [],
    findings: said,
    ...(confirmation && { confirmation }),
  }
}

/** Drawn to the nearest mark; rounded down where rounding would pass the day's limit, and refused where that is not enough. */
function drawAll(
  drafts: readonly Draft[],
  down: ReadonlySet<string>,
  request: ScopedRequest,
  knowledge: DosingKnowledge,
): DoseLine[] {
  const drawn = (downs: ReadonlySet<string>) => {
    const containers = judgeContainers(drafts, request, knowledge, downs)
    return drafts.map((one) => {
      const { line, drug } = one
      const draft = liftDraft(add(one, containers.findings.get(line.id) ?? []), request.emergency)
      const poured = containers.poured.get(line.id)
      const how = {
        down: downs.has(line.id),
        loadingDown: downs.has(loadingId(line)),
        ...(poured && { poured }),
        loaded: drug !== undefined && wasLoaded(drug, line, drafts, request, knowledge),
      }
      const answer = drawDraft(draft, how, request.emergency, knowledge)
      return { draft, answer, delivered: answer?.measured.delivered ?? draft.dose }
    })
  }
  const nearest = drawn(down)
  const over = judgeDrawnDay(nearest, request, knowledge)
  if (over.size === 0) return nearest.map(({ draft, answer }) => finish(draft, answer, knowledge))
  const lower = drawn(new Set([...down, ...over.keys()]))
  const still = judgeDrawnDay(lower, request, knowledge)
  return lower.map(({ draft, answer }) =>
    finish(liftDraft(add(draft, still.get(draft.line.id) ?? []), request.emergency), answer, knowledge),
  )
}

type OfARow = Draft & Required<Pick<Draft, 'drug' | 'row'>>

function isOfARow(draft: Draft): draft is OfARow {
  return draft.drug !== undefined && draft.row !== undefined
}

type Measurable = Draft & Required<Pick<Draft, 'drug' | 'row' | 'dose' | 'amount' | 'body'>>

/** Blocks that leave no doubt what was meant: the animal or another drug bars it, but its amount is still asked for. */
const withoutDoubt: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'drying-drug-with-dry-eye',
  'excluded',
  'excluded-by-given',
  'kidney-drug-with-raised-creatinine',
  'local-anaesthetic-toxicity-suspected',
  'nsaid-after-blood-loss',
  'nsaid-with-steroid',
  'over-daily-maximum',
  'pair-forbidden',
  'repeat-too-soon',
  'two-nsaids',
  'unsafe-in-pregnancy',
])

function isMeasurable(draft: Draft): draft is Measurable {
  const { drug, row, dose, amount, body } = draft
  const isDoubtful = draft.findings.some((finding) => isBlock(finding) && !withoutDoubt.has(finding.code))
  return Boolean(drug && row && dose && amount && body) && !isDoubtful
}

function asMeasured(
  draft: Measurable,
  emergency: ScopedEmergency | undefined,
): MeasuredDraft & Pick<Measurable, 'body'> {
  return { ...draft, refused: liftDraft(draft, emergency).findings.some(isBlock) }
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

/**
 * The drug was given, or another line plans it, as a single dose: its infusion does not start from nothing. A line that
 * is refused loads nobody.
 */
function wasLoaded(
  drug: Drug,
  line: PlannedLine,
  drafts: readonly Draft[],
  request: DoseRequest,
  { drugs }: DosingKnowledge,
): boolean {
  const planned = drafts.some(
    (other) =>
      other.line.id !== line.id &&
      other.line.use !== line.use &&
      other.drug?.id === drug.id &&
      !other.findings.some(isBlock),
  )
  return planned || request.given.some((given) => drugsGiven(drugs, given.drug).some(({ id }) => id === drug.id))
}
