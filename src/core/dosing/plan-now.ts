import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { Decimal } from '#core/units/quantity.ts'
import { type DoseResult, doseLines } from './dose-lines.ts'
import { inPlanOrder } from './in-plan-order.ts'
import { waitingElsewhere, waitingOf } from './plan-for-operation.ts'
import { isDrawnOtherwise } from './planned-body.ts'
import type { DosedAnimal, DoseLine, DosingKnowledge, Emergency, PlannedLine } from './request.ts'
import { requestOfCase } from './request-of-case.ts'
import { type CheckState, checkStates } from './second-check.ts'

type Planned = Line<BodyOf<'planned-line'>>

/** One planned line as it stands at this moment. */
export type LineNow = {
  readonly entry: Planned
  /** As the engine judges it now; null once it was given, or when its words are no longer in the formulary. */
  readonly now: DoseLine | null
  /** The engine would draw something else now than what was written: the line is planned again before anybody draws. */
  readonly isOld: boolean
  readonly given: readonly Line<BodyOf<'drug-given'>>[]
  readonly check: CheckState
  /** The share of the animal's one limit that is used once this line is given too, in the order of the plan. */
  readonly ceilingAfter: Decimal | null
}

export type PlanNow = {
  readonly animal: DosedAnimal | null
  /** The declared emergency that lifts blocks at this instant. */
  readonly emergency: Emergency | null
  readonly lines: readonly LineNow[]
  readonly findings: DoseResult['findings']
  readonly ceilings: DoseResult['ceilings']
}

/**
 * The instant at which a plan is judged: now, or the last entry where the clock of another device is a little ahead, so
 * that a weight counts from the moment it is on record.
 */
export function judgedAt({ lines }: CaseFile['theCase'], now: string): string {
  const last = lines.at(-1)?.at ?? now
  return last > now ? last : now
}

/**
 * The dose plan of one operation as it stands at an instant: every line that still waits judged for the weight, species
 * and doses given of that instant, together with what waits for other operations of the day; what was given stands as
 * given. Never changes an entry and never picks a dose.
 *
 * @example planNow(file, operation, '2026-03-10T08:00:00.000Z', knowledge).lines[0]?.now?.verdict // 'ok'
 */
export function planNow(file: CaseFile, operation: OperationOnFile, at: string, knowledge: DosingKnowledge): PlanNow {
  const { theCase } = file
  const planned = inPlanOrder(linesAbout(theCase, 'planned-line', operation.id), file.house)
  const place = new Map(planned.map(({ body }, index) => [body.line, index]))
  const waiting = waitingOf(file, operation.id).sort((a, b) => (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0))
  const elsewhere = waitingElsewhere(file, operation.id)
  const lines = [...elsewhere.before, ...waiting, ...elsewhere.after]
  const request = requestOfCase(file, { operation: operation.id, at }, lines, knowledge.rules)
  const result = request && doseLines(request, knowledge)
  const states = checkStates(theCase, planned, operation.done?.moment.at ?? null)
  const given = linesAbout(theCase, 'drug-given', operation.id)
  const judged = new Map(result?.lines.map((line) => [line.id, line]))
  const shares = sharesAfter(result?.ceilings[0])
  const linesNow = planned.map((entry): LineNow => {
    const { line, drug } = entry.body
    const now = judged.get(line) ?? null
    return {
      entry,
      now,
      isOld: now !== null && isDrawnOtherwise(entry.body, now),
      given: given.filter(({ body }) => body.line === line && body.drug === drug),
      check: states.get(entry.header.id) ?? { kind: 'none' },
      ceilingAfter: shares.get(line) ?? null,
    }
  })
  return {
    animal: request?.animal ?? null,
    emergency: request?.emergency ?? null,
    lines: linesNow,
    findings: result?.findings ?? [],
    ceilings: result?.ceilings ?? [],
  }
}

/**
 * One line judged among the others of its plan before it is kept, in the place of the line whose name it has, otherwise
 * after them: a ceiling belongs to the animal, so the one that is added gives way. Null without an animal.
 *
 * @example judgeAmong(file, operation.id, { id: 'splash', drug: 'bupivacaine', … }, at, knowledge)?.verdict // 'refused'
 */
export function judgeAmong(
  file: CaseFile,
  operation: string,
  line: PlannedLine,
  at: string,
  knowledge: DosingKnowledge,
): { readonly line: DoseLine; readonly result: DoseResult } | null {
  const waiting = waitingOf(file, operation)
  const { before, after } = waitingElsewhere(file, operation)
  const lines = waiting.some(({ id }) => id === line.id)
    ? [...before, ...waiting.map((one) => (one.id === line.id ? line : one)), ...after]
    : [...before, ...waiting, ...after, line]
  const request = requestOfCase(file, { operation, at }, lines, knowledge.rules)
  if (!request) return null
  const result = doseLines(request, knowledge)
  const judged = result.lines.find(({ id }) => id === line.id)
  return judged ? { line: judged, result } : null
}

/** The running sum: everything given first, then each planned line in its order. An infusion into a vein is counted apart. */
function sharesAfter(ceiling: DoseResult['ceilings'][number] | undefined): ReadonlyMap<string, Decimal> {
  const after = new Map<string, Decimal>()
  let sum = new Decimal(0)
  for (const part of ceiling?.parts ?? []) {
    if (part.kind === 'infusion' || !part.counted) continue
    sum = sum.plus(part.fraction)
    if (part.line !== undefined) after.set(part.line, sum)
  }
  return after
}
