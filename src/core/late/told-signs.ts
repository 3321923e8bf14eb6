import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { rootOf } from '#core/owed/operations.ts'
import type { LateSign } from './late-sign-names.ts'
import { type LateSignRules, lateSignsIn } from './late-signs.ts'

/** A late sign as it was told in a file, and what somebody said of where it belongs. */
export type ToldSign = {
  /** The first version of the entry it was told in. */
  readonly told: string
  readonly line: Line<BodyOf<'referral'>> | Line<BodyOf<'call'>>
  readonly signs: readonly LateSign[]
  /** What was said last of where it belongs; null while nobody has said anything. */
  readonly answer: Line<BodyOf<'late-sign'>> | null
}

/**
 * Every first call and every call of a file in which a late sign can be heard, oldest first.
 *
 * @example toldSignsOf(file.theCase, lateSignRules).filter(isOpen)
 */
export function toldSignsOf(theCase: Case, rules: LateSignRules): ToldSign[] {
  const answers = theCase.live('late-sign')
  const heard = [
    ...theCase.live('referral').map((line) => ({ line, said: saidAtReferral(line.body) })),
    ...theCase.live('call').map((line) => ({ line, said: { text: line.body.text ?? '', flags: [] } })),
  ]
  const found = heard.flatMap(({ line, said }): ToldSign[] => {
    const signs = lateSignsIn(said, rules)
    const told = rootOf(theCase, line.header.id)
    const answer = answers.findLast(({ body }) => rootOf(theCase, body.told) === told) ?? null
    return signs.length === 0 && answer === null ? [] : [{ told, line, signs, answer }]
  })
  return found.sort((a, b) => (a.line.at < b.line.at ? -1 : 1))
}

/** Whether it is still to be said to which ear it belongs: nobody has, or whoever did was not sure. */
export function isOpen({ answer }: Pick<ToldSign, 'answer'>): boolean {
  return answer === null || answer.body.belongs === 'unsure' || answer.body.belongs === 'not-looked'
}

/** What a first call told: the complaint, and the red flags that were answered with yes. */
export function saidAtReferral({ complaint, signs }: Pick<BodyOf<'referral'>, 'complaint' | 'signs'>) {
  return { text: complaint, flags: signs.flatMap(({ sign, answer }) => (answer === 'yes' ? [sign] : [])) }
}
