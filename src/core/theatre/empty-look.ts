import type { BodyOf } from '#core/journal/fold.ts'

/** An observation in which nothing was measured or seen yet: where it was made and what it says are put over it. */
export const emptyLook: Omit<BodyOf<'observation'>, 'where'> = {
  values: [],
  pain: null,
  first: null,
  side: null,
  unmeasured: null,
  text: null,
}
