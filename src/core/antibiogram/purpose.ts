/** Why a sample was taken; only what was taken to treat an ill animal tells what grows in ill ears. */
export const purposes = ['clinical', 'screening', 'environment', 'repeat-check'] as const
export type Purpose = (typeof purposes)[number]

export const reportStates = ['preliminary', 'final', 'corrected'] as const
export type ReportState = (typeof reportStates)[number]

export type NotCounted = Exclude<Purpose, 'clinical'> | 'preliminary'

/**
 * Why a row does not count: samples of carriers, of rooms, of a cure, and reports that are not final (after CLSI M39).
 * Null when it counts.
 *
 * @example notCounted('screening', 'final') // 'screening'
 */
export function notCounted(purpose: Purpose, state: ReportState): NotCounted | null {
  if (purpose !== 'clinical') return purpose
  return state === 'preliminary' ? 'preliminary' : null
}
