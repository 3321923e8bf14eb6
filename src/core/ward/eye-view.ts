import type { Side } from '#core/animal/species.ts'
import { sides } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { type BlockDoubt, eyeStateOf } from '#core/owed/eye-state.ts'
import type { Why } from '#core/owed/owed-item.ts'
import { settingOf } from '#core/owed/setting.ts'
import { blinkLooks } from '#core/owed/ward-eyes.ts'
import type { OwedRules } from '#core/procedures/follow-up.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { Doubt } from './misleads.ts'
import type { Stay } from './stay.ts'

/** One eye of an animal in the ward, as the entries tell it. */
export type WardEye = {
  readonly side: Side
  readonly operated: boolean
  /** The last look at its blink in this stay; null: nobody looked. */
  readonly blink: { readonly said: 'normal' | 'weak' | 'absent'; readonly at: string } | null
  /** A missing blink that may be the block: not graded. Null once it was looked at after the block. */
  readonly block: BlockDoubt | null
  readonly risk: readonly Why[]
}

/**
 * Both eyes of an animal in the ward.
 *
 * @example wardEyes(file, stay, procedures, owedRules)[0]?.block?.wornOff // '2026-02-10T16:30:00.000Z'
 */
export function wardEyes(file: CaseFile, stay: Stay, procedures: readonly Procedure[], rules: OwedRules): WardEye[] {
  const setting = settingOf(file, procedures, { rules })
  return sides.map((side) => {
    const operation = stay.operations.findLast((one) => one.side === side)
    const last = blinkLooks(side, stay, setting).at(-1)
    const state = operation
      ? eyeStateOf({ ...operation, dayOfOperation: dayOf({ at: operation.moment.at, zone: setting.zone }) }, setting)
      : null
    return {
      side,
      operated: operation !== undefined,
      blink: last ? { said: last.said, at: last.line.at } : null,
      block: state?.block && state.block.settledBy === null ? state.block : null,
      risk: state?.risk ?? [],
    }
  })
}

/** What speaks against reading the face, the touch or the walk of this animal, as the last entries have it. */
export function doubtsOf({ theCase }: CaseFile, stay: Stay, eyes: readonly WardEye[]): Doubt[] {
  const checks = theCase.live('check').filter(({ at }) => at >= stay.since)
  const bandage = theCase
    .live('ward-score')
    .findLast(({ at, body }) => at >= stay.since && body.bandage !== 'not-assessed')?.body.bandage
  const tilt =
    checks.findLast(({ body }) => body.headTilt !== 'not-assessed')?.body.headTilt ??
    theCase.live('baseline').at(-1)?.body.headTilt
  const droops = (side: Side) =>
    checks.findLast(
      ({ header: { subject }, body }) =>
        subject.kind === 'ear' && subject.side === side && body.lipOrEarDroop !== 'not-assessed',
    )?.body.lipOrEarDroop === 'yes'
  return [
    ...eyes.flatMap(({ side, blink, block }): Doubt[] => [
      ...(block
        ? [{ because: 'block' as const, side }]
        : blink && blink.said !== 'normal'
          ? [{ because: blink.said === 'weak' ? ('blink-weak' as const) : ('blink-absent' as const), side }]
          : []),
      ...(droops(side) ? [{ because: 'droop' as const, side }] : []),
    ]),
    ...(bandage !== undefined && bandage !== 'none' ? [{ because: 'bandage' as const, side: null }] : []),
    ...(tilt === 'left' || tilt === 'right' || tilt === 'yes' ? [{ because: 'head-tilt' as const, side: null }] : []),
  ]
}
