import { isFreeStamp } from './free-stamp.ts'
import { isLabelTap } from './specimens.ts'

/** The words of stamps that belong to no procedure: marks of the clock, those that are counted, `retraction-on-2`, and the label of a pot. */
export type MarkWords = {
  readonly clockMarks: Readonly<Record<string, string>>
  readonly countedMarks: Readonly<Record<string, string>>
}

/**
 * What a mark is called; undefined for one that nobody gave words.
 *
 * @example markName('retraction-on-2', words) // 'Nerve held aside, 2'
 */
export function markName(id: string, { clockMarks, countedMarks }: MarkWords): string | undefined {
  const known = clockMarks[id]
  if (known !== undefined) return known
  if (isLabelTap(id)) return countedMarks.labelled
  if (isFreeStamp(id)) return countedMarks.free
  const [, base = '', number = ''] = /^(.*)-(\d+)$/.exec(id) ?? []
  const counted = countedMarks[base]
  return counted === undefined ? undefined : `${counted}, ${number}`
}
