import type { Side } from '#core/animal/species.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { TroubleEvent } from './trouble-codes.ts'

/** What the baseline says of a sign: there, known not to be there, or nothing. */
export type OnBaseline = 'present' | 'absent' | 'not-known'

type Answer = 'yes' | 'no' | 'not-assessed'

/** Signs that may have been there before any operation; everything else begins with it. */
export const signsOfBefore = ['facial-weakness', 'horner', 'vestibular', 'corneal-ulcer', 'deafness'] as const
export type SignOfBefore = (typeof signsOfBefore)[number]

export function isSignOfBefore(event: TroubleEvent): event is SignOfBefore {
  return signsOfBefore.some((one) => one === event)
}

/**
 * Whether the baseline of that side had the sign. Not assessed is never "no".
 *
 * @example onBaseline('horner', baseline, 'LEFT') // 'absent'
 */
export function onBaseline(event: SignOfBefore, before: BodyOf<'baseline'> | null, side: Side): OnBaseline {
  if (before === null) return 'not-known'
  const face = before[side]
  switch (event) {
    case 'facial-weakness':
      return together([weak(face.blink), face.lipOrEarDroop])
    case 'horner':
      return together([small(face.pupil), face.thirdEyelidUp])
    case 'vestibular':
      return together([tilt(before.headTilt), before.nystagmus, before.unsteady])
    case 'corneal-ulcer':
      return together([face.fluorescein === 'not-assessed' ? 'not-assessed' : yesIf(face.fluorescein === 'positive')])
    case 'deafness':
      return together([before.hears === 'not-assessed' ? 'not-assessed' : yesIf(before.hears === 'no')])
  }
}

function yesIf(there: boolean): Answer {
  return there ? 'yes' : 'no'
}

function weak(blink: BodyOf<'baseline'>['LEFT']['blink']): Answer {
  return blink === 'not-assessed' ? blink : yesIf(blink !== 'normal')
}

function small(pupil: BodyOf<'baseline'>['LEFT']['pupil']): Answer {
  return pupil === 'not-assessed' ? pupil : yesIf(pupil === 'small')
}

function tilt(head: BodyOf<'baseline'>['headTilt']): Answer {
  return head === 'not-assessed' ? head : yesIf(head !== 'none')
}

/** There when one part of it is; absent only when every part was looked at. */
function together(parts: readonly Answer[]): OnBaseline {
  if (parts.includes('yes')) return 'present'
  return parts.every((part) => part === 'no') ? 'absent' : 'not-known'
}
