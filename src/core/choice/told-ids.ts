import { optionIds } from '#core/journal/kinds/choice.ts'

/** Both ears at once or one after the other: told beside the options, in the same way, when both ears are ill. */
export const sessionIds = ['both-in-one-session', 'staged'] as const
/** Everything that is told under the same headings. */
export const toldIds = [...optionIds, ...sessionIds] as const
