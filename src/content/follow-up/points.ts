import type { Checkpoint } from '#core/procedures/procedure.ts'
import { commonPractice } from './provenance.ts'

/** Whether swabs and instruments agreed; asked at the end of every operation. */
export const countsAgree = {
  id: 'counts',
  asks: 'Counts',
  kind: 'coded',
  answers: { agree: 'Swabs and instruments agreed.', differ: 'Swabs or instruments did not agree.' },
} as const satisfies Checkpoint['details'][number]

/** Where the throat pack is at the end. */
export const throatPackOut = {
  id: 'throat-pack',
  asks: 'Throat pack',
  kind: 'coded',
  answers: {
    out: 'The throat pack was taken out.',
    'none-used': 'No throat pack was used.',
    in: 'The throat pack was still in.',
  },
} as const satisfies Checkpoint['details'][number]

/** Counts as the last point of an operation, which names it; where the throat pack is, the count itself asks. */
export const countsMade = {
  title: 'Counts and throat pack',
  mind: 'counts agree; throat pack out; specimens labelled',
  details: [countsAgree],
  done: 'The counts were made.',
  notDone: 'The counts were not made: {because}.',
  because: [],
} as const satisfies Omit<Checkpoint, 'id'>

/** A canal that was opened to the side is looked into; the procedure names the point. */
export const openingSeen = {
  title: 'Opening',
  mind: 'look into the horizontal canal; it stands open',
  details: [
    {
      id: 'opening',
      asks: 'Horizontal canal',
      kind: 'coded',
      answers: {
        open: 'The horizontal canal stood open.',
        narrow: 'The horizontal canal was narrow.',
      },
    },
  ],
  done: 'The new opening was looked into.',
  notDone: 'The new opening was not looked into: {because}.',
  because: [{ value: 'A narrow horizontal canal is a reason for another operation.', ...commonPractice }],
} as const satisfies Omit<Checkpoint, 'id'>
