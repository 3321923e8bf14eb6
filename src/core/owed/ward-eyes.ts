import type { Side } from '#core/animal/species.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { type Stay, stayOf } from '#core/ward/stay.ts'
import type { EyeState } from './eye-state.ts'
import { type DoneOperation, windowOf } from './follow-up.ts'
import type { Draft, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'
import { type Look, roundOf, sayInstant } from './ward-item.ts'

/** The stay that this operation belongs to, while the animal still lies in the ward. */
export function presentStay(operation: DoneOperation, setting: Setting): Stay | null {
  const stay = stayOf(setting.file.theCase, setting.operations)
  return stay && !stay.ended && stay.operations.some(({ id }) => id === operation.id) ? stay : null
}

/**
 * The blink of an operated side: looked for from the end of the operation until it is seen, and again while it is
 * missing. While the local anaesthetic may still act, the look after it has worn off stands instead.
 */
export function blinkInWard(state: EyeState, operation: DoneOperation, setting: Setting): Draft[] {
  const stay = presentStay(operation, setting)
  if (!stay) return []
  const last = blinkLooks(operation.side, stay, setting).at(-1) ?? null
  if ((last && last.said !== 'absent') || (state.block && state.block.settledBy === null)) return []
  const why: Why = last ? { code: 'blink-still-absent', about: {} } : { code: 'blink-not-seen-yet', about: {} }
  const blink = { what: 'first-blink', who: 'nurse', way: 'task', side: operation.side, of: operation.side } as const
  return [
    roundOf(
      { ...blink, every: last ? 'blink-again' : 'first-blink', last: last?.line ?? null, why: [why] },
      stay,
      setting,
    ),
  ]
}

export type BlinkLook = { readonly line: Look; readonly said: 'normal' | 'weak' | 'absent' }

/** Every look at the blink of one side in this stay, oldest first. */
export function blinkLooks(
  side: Side,
  { since, operations }: Pick<Stay, 'since' | 'operations'>,
  { file: { theCase } }: Pick<Setting, 'file'>,
): BlinkLook[] {
  const operated = new Set(operations.map((one) => one.side))
  // A first blink without its side is this side's only where no other was operated.
  const isOnly = operated.size === 1 && operated.has(side)
  const checks = theCase
    .live('check')
    .filter(({ header: { subject } }) => subject.kind === 'ear' && subject.side === side)
  const firsts = theCase
    .live('observation')
    .filter(({ body }) => body.first === 'blink' && (body.side === null ? isOnly : body.side === side))
  return [
    ...theCase.live('ward-score').map((line) => ({ line, said: line.body[side].blink })),
    ...checks.map((line) => ({ line, said: line.body.blink })),
    ...firsts.map((line) => ({ line, said: 'normal' as const })),
  ]
    .flatMap(({ line, said }) => (line.at >= since && said !== 'not-assessed' ? [{ line, said }] : []))
    .sort((a, b) => (a.line.at < b.line.at ? -1 : 1))
}

export type Wetting = Pick<Draft['item'], 'dueFrom' | 'dueBy' | 'why' | 'facts'>

/** When an eye of the ward is kept wet next: counted from the last time, by what was used; unsaid counts as gel. */
export function wettingInWard(side: Side, stay: Stay, setting: Setting): Wetting {
  const { theCase } = setting.file
  const { wetsEye } = setting.rules.ward
  const drops = theCase
    .live('drug-given')
    .filter(({ at, body }) => at >= stay.since && wetsEye[body.drug] !== undefined)
  const rounds = theCase
    .live('ward-score')
    .filter(({ at, body }) => at >= stay.since && body[side].lubricated === 'yes')
  const last = [...drops, ...rounds].sort((a, b) => (a.at < b.at ? -1 : 1)).at(-1)
  const used = wetsEye[drops.at(-1)?.body.drug ?? ''] ?? 'eye-gel'
  const window = windowOf({ window: setting.rules.ward.every[used] }, `owed.ward.${used}`, setting)
  const start = { at: last?.at ?? stay.since, zone: setting.zone }
  const dueBy = instantAfter(start, window.span.until)
  const counted: Why = last
    ? { code: 'wet-last', about: { when: sayInstant(last.at, setting) } }
    : { code: 'wet-never', about: {} }
  return {
    dueFrom: earlierOf(last ? instantAfter(start, window.span.from) : start.at, dueBy),
    dueBy,
    why: [counted, ...window.why],
    facts: [window.fact],
  }
}
