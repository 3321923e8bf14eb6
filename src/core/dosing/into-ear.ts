import type { PlannedLine } from './request.ts'

/** Whether a line goes into the ear itself; everything else reaches the inner ear only by the blood. */
export function goesIntoEar({ use, route }: Pick<PlannedLine, 'use' | 'route'>): boolean {
  return use === 'ear' || route === 'topical-ear'
}
