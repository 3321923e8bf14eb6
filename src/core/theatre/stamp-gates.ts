import type { SideDisagreement } from '#core/chapters/sides.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { baselineBefore } from '#core/owed/baseline-before.ts'
import { anaestheticOf, oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { pauseRunOf } from './pause-run.ts'
import type { SpokenPause } from './spoken-pause.ts'
import { doneAt } from './stamps.ts'
import { lacksConsent, type TheatreMissing } from './theatre-missing.ts'

/** What must stand before a mark of the clock; without it the mark is kept only together with a reason. */
export const gateCodes = ['baseline', 'side', 'consent', 'time-out', 'second-ear'] as const
export type GateCode = (typeof gateCodes)[number]

/** Where a stamp keeps which gates it was stamped in spite of. */
export const inSpiteOf = 'in-spite-of'

export type GateSetting = {
  readonly theCase: Case
  readonly operations: readonly OperationOnFile[]
  readonly sides: readonly SideDisagreement[]
  /** What the theatre list says is missing for this operation. */
  readonly missing: readonly TheatreMissing[]
  readonly pauses: readonly SpokenPause[]
  readonly now: string
}

/**
 * What stands open before a mark is stamped; empty for a checkpoint and for every mark that waits for nothing. What was
 * done can always be recorded: an open gate asks for a reason, it never refuses.
 *
 * @example gatesOf('premedication', operation, setting) // ['baseline']
 */
export function gatesOf(mark: string, operation: OperationOnFile, setting: GateSetting): GateCode[] {
  if (mark !== 'premedication' && mark !== 'anaesthesia-start' && mark !== 'incision') return []
  const { theCase, operations } = setting
  const pair = oneAnaesthetic(operation, operations, theCase)
  const isSecond = pair?.second.id === operation.id
  const together = anaestheticOf(operation, operations, theCase)
  const premedicated = together.some((one) => doneAt(theCase, one, 'premedication') !== null)
  const asksBaseline = mark === 'premedication' || (mark === 'anaesthesia-start' && !premedicated)
  const open = (pause: SpokenPause['pause']) => isOpen(pause, operation, setting)
  return [
    ...(asksBaseline && lacksBaseline(operation, setting) ? ['baseline' as const] : []),
    ...(setting.sides.some((one) => one.operation === operation.id) ? ['side' as const] : []),
    ...(lacksConsent(setting.missing) ? ['consent' as const] : []),
    ...(mark === 'incision' && isSecond && open('before-second-ear') ? ['second-ear' as const] : []),
    ...(mark === 'incision' && open('before-incision') ? ['time-out' as const] : []),
  ]
}

/** Whether nobody looked at face and eyes before sedation, or not at the blink of this ear. */
export function lacksBaseline(
  operation: OperationOnFile,
  { operations, theCase, now }: Pick<GateSetting, 'operations' | 'theCase' | 'now'>,
): boolean {
  const made = baselineBefore(operation, operations, theCase, now)
  return made === undefined || made.body[operation.side].blink === 'not-assessed'
}

/** A pause is whole when every item was answered, each with one YES. */
function isOpen(pause: SpokenPause['pause'], operation: OperationOnFile, { theCase, pauses }: GateSetting): boolean {
  const asked = pauses.find((one) => one.pause === pause)
  if (!asked) return false
  const { open, unsettled } = pauseRunOf(theCase, operation.id, asked)
  return open.length > 0 || unsettled.length > 0
}

/** Which gates a stamp was kept in spite of. */
export function gatesIn({ detail }: Pick<BodyOf<'theatre-stamp'>, 'detail'>): GateCode[] {
  const named = new Set((detail[inSpiteOf] ?? '').split(' '))
  return gateCodes.filter((code) => named.has(code))
}

export type GateWords = {
  readonly arrowOn: string
  readonly inSpiteOf: string
  readonly gates: Readonly<Record<GateCode, string>>
}

/**
 * What a mark of the clock says beside its moment: where the arrow is, what it went on without, and the words with it.
 *
 * @example sayMark(stamp.body, reportInEnglish) // ['The arrow is on the LEFT.']
 */
export function sayMark(
  { detail, text }: Pick<BodyOf<'theatre-stamp'>, 'detail' | 'text'>,
  words: GateWords,
): string[] {
  const { side, [inSpiteOf]: _, ...others } = detail
  const gates = sayGates(gatesIn({ detail }), words)
  return [
    ...(side === undefined ? [] : [fill(words.arrowOn, { side })]),
    ...Object.entries(others).map(([id, answer]) => `${id}: ${answer}.`),
    ...(gates === null ? [] : [gates]),
    ...(text === null ? [] : [text]),
  ]
}

/**
 * In words what a stamp went on without; null when it went on without nothing.
 *
 * @example sayGates(['baseline'], reportInEnglish) // 'Went on without: face and eyes looked at before sedation.'
 */
export function sayGates(gates: readonly GateCode[], words: GateWords): string | null {
  if (gates.length === 0) return null
  return fill(words.inSpiteOf, { what: gates.map((code) => words.gates[code]).join('; ') })
}
