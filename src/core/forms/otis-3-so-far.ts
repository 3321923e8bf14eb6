import { type Otis3Sign, otis3Signs, otis3Total } from '#core/workup/otis3.ts'
import { type Draft, isRecord, textIn } from './draft.ts'

export type Otis3SoFar = {
  /** The sum of what was graded. It is the OTIS-3 total only when nothing is open and nothing was left unassessed. */
  readonly graded: number
  readonly open: readonly Otis3Sign[]
  readonly notAssessed: readonly Otis3Sign[]
}

/**
 * OTIS-3 while it is being filled in; null before the first sign is answered.
 *
 * @example otis3SoFar({ erythema: '3', swelling: '2', erosion: '', exudate: null }) // graded 5, erosion open
 */
export function otis3SoFar(draft: Draft | undefined): Otis3SoFar | null {
  const given = isRecord(draft) ? draft : {}
  const notAssessed = otis3Signs.filter((sign) => given[sign] === null)
  const open = otis3Signs.filter((sign) => given[sign] !== null && textIn(given[sign]) === '')
  if (open.length === otis3Signs.length) return null
  const grade = (sign: Otis3Sign) => Number(textIn(given[sign]) || '0')
  const [erythema, swelling, erosion, exudate] = otis3Signs.map(grade) as [number, number, number, number]
  const sum = otis3Total({ erythema, swelling, erosion, exudate })
  return { graded: sum.kind === 'answer' ? sum.answer : 0, open, notAssessed }
}
