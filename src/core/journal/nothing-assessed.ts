import type { BodyOf } from './fold.ts'

const no = 'not-assessed'

/** A check at which nothing was assessed, whoever looked: what a look elsewhere does not say is never "normal". */
export const nothingAssessed: Omit<BodyOf<'check'>, 'seenBy'> = {
  wound: no,
  woundNeeded: no,
  sutures: no,
  blink: no,
  lipOrEarDroop: no,
  nostril: no,
  possibleBlockEffect: false,
  horner: no,
  headTilt: no,
  nystagmus: no,
  unsteady: no,
  gag: no,
  hears: no,
  tearTest: null,
  fluorescein: no,
  painful: no,
  text: null,
}
