import type { Side } from '../animal/species.ts'
import type { BodyOf, Case, Line } from '../journal/fold.ts'
import { plateVersion } from './parameters.ts'

/** A drawing that counts, and whether it can be shown as it was drawn. */
export type KeptDrawing = {
  readonly line: Line<BodyOf<'plate-drawing'>>
  /** `other-side`: drawn on one ear and filed to the other. `other-plate`: drawn on an older or newer plate. */
  readonly doubts: readonly ('other-side' | 'other-plate')[]
}

/**
 * The drawings of one ear in the order they were made. A doubt is said beside the drawing and hides nothing.
 *
 * @example drawingsOf(theCase, 'LEFT').at(-1)?.line.body.strokes
 */
export function drawingsOf(theCase: Case, side: Side): KeptDrawing[] {
  return theCase.live('plate-drawing').flatMap((line): KeptDrawing[] => {
    const { subject } = line.header
    if (subject.kind !== 'ear' || subject.side !== side) return []
    const { parameters, plate } = line.body
    return [
      {
        line,
        doubts: [
          ...(parameters.side === side ? [] : ['other-side' as const]),
          ...(plate === plateVersion ? [] : ['other-plate' as const]),
        ],
      },
    ]
  })
}
