import { type Draft, draftAt, withDraftAt } from './draft.ts'
import type { Section } from './form.ts'
import { isUnanswered } from './relevant.ts'

/**
 * The draft after one touch that says "looked at, and normal" of a section; null where the touch is not offered: the
 * section has none, everything is answered, or something was answered otherwise. It never takes an answer away.
 *
 * @example allNormal(balanceSection, {}) // { headTilt: 'no', nystagmus: 'no', unsteady: 'no' }
 */
export function allNormal({ normal }: Pick<Section, 'normal'>, draft: Draft): Draft | null {
  const answers = Object.entries(normal ?? {})
  const open = answers.filter(([field]) => isUnanswered(draftAt(draft, field)))
  const otherwise = answers.some(([field, answer]) => {
    const given = draftAt(draft, field)
    return !isUnanswered(given) && given !== answer
  })
  if (open.length === 0 || otherwise) return null
  return open.reduce((so, [field, answer]) => withDraftAt(so, field, answer), draft)
}
