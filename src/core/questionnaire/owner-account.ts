import type { Side } from '#core/animal/species.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { type AnswerLine, givenTo } from './answer-line.ts'

/** What the answers of an owner say of one ear after a year; `look-first`: it has to be seen before anything is said. */
export type OwnerAccount =
  | { readonly kind: 'look-first' }
  | {
      readonly kind: 'status'
      readonly status: BodyOf<'twelve-months'>['status']
      readonly wouldChooseAgain: BodyOf<'twelve-months'>['wouldChooseAgain']
    }

/** Without a "no" to each of these an owner's account says nothing of how the ear is: our counts would call it free. */
const mustBeNo = ['swelling', 'discharge', 'treated-elsewhere'] as const

const ofEarNow = { 'no-trouble': 'solved', better: 'improved', same: 'failed', worse: 'failed' } as const

/**
 * The status after a year by the owner's account alone, for a person of the house to keep or not. "I cannot tell" and
 * what was left out stay unknown, and the face is never graded from it. A swelling or a discharge is looked at first.
 *
 * @example ownerAccountOf(line.body, 'LEFT') // { kind: 'status', status: 'improved', wouldChooseAgain: 'yes' }
 */
export function ownerAccountOf({ answers }: Pick<AnswerLine['body'], 'answers'>, side: Side): OwnerAccount {
  const said = (question: string, of: Side | null) => givenTo(answers, question, of)?.answer
  if (mustBeNo.some((question) => said(question, side)?.startsWith('yes'))) return { kind: 'look-first' }
  const now = said('ear-now', side)
  const status = Object.entries(ofEarNow).find(([answer]) => answer === now)?.[1] ?? 'unknown'
  const isFree = mustBeNo.every((question) => said(question, side) === 'no')
  const again = said('choose-again', null)
  return {
    kind: 'status',
    status: isFree ? status : 'unknown',
    wouldChooseAgain: again === 'yes' || again === 'no' ? again : 'unknown',
  }
}
