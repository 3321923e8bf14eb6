/**
 * Whether a version of the method counts by the main reason of the operation. The first one did not, and what was frozen
 * by it is made as it was, for ever.
 *
 * @example countsReasons('1') // false
 */
export function countsReasons(method: string): boolean {
  return method !== '1'
}

/**
 * Whether a version of the method takes what was seen up to a day that somebody chose. The first one took what was on
 * record when the year was frozen, and that day was always the one of looking.
 */
export function looksUpToADay(method: string): boolean {
  return method !== '1'
}
