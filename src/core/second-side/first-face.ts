import type { NerveCourse } from '#core/nerve-course/nerve-course.ts'
import type { SignPoint } from '#core/nerve-course/sign-course.ts'

/** How the first operation left the blink of its side: what a second nerve at risk is held against. */
export type FirstFace =
  | { readonly kind: 'not-normal'; readonly point: SignPoint }
  | { readonly kind: 'normal'; readonly point: SignPoint }
  /** Never examined since the first operation in a way that counts. */
  | { readonly kind: 'not-known' }

/**
 * The blink of the first side by its last examination. A blink that was weak before it counts here as well: two eyes
 * without a blink are two, whoever did it.
 *
 * @example firstFaceOf(course).kind // 'not-normal'
 */
export function firstFaceOf(course: NerveCourse): FirstFace {
  const last = course.signs.find(({ sign }) => sign === 'blink')?.last ?? null
  if (!last) return { kind: 'not-known' }
  return { kind: last.reading.step === 0 ? 'normal' : 'not-normal', point: last }
}
