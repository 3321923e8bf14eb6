import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { rootOf } from '#core/owed/operations.ts'
import type { LateSign } from './late-sign-names.ts'
import { type LateSignRules, lateSignsIn, type Said } from './late-signs.ts'

type ToldLine = { [Kind in 'referral' | 'call' | 'owner-answer' | 'vet-answer']: Line<BodyOf<Kind>> }[
  | 'referral'
  | 'call'
  | 'owner-answer'
  | 'vet-answer']

/** A late sign as it was told in a file, and what somebody said of where it belongs. */
export type ToldSign = {
  /** The first version of the entry it was told in. */
  readonly told: string
  readonly line: ToldLine
  /** As it was said: of answers to our questions only those that tell of it. */
  readonly said: string
  /** The ear as it was told, never as a fact. */
  readonly side: Side | 'BOTH' | 'unknown'
  readonly signs: readonly LateSign[]
  /** What was said last of where it belongs; null while nobody has said anything. */
  readonly answer: Line<BodyOf<'late-sign'>> | null
}

/**
 * Every first call, call, set of answers of the owner and answer of a practice in which a late sign can be heard, oldest
 * first.
 *
 * @example toldSignsOf(file.theCase, lateSignRules).filter(isOpen)
 */
export function toldSignsOf(theCase: Case, rules: LateSignRules): ToldSign[] {
  const answers = theCase.live('late-sign')
  const heard: readonly Heard[] = [
    ...theCase
      .live('referral')
      .map((line) => ({ line, said: saidAtReferral(line.body), side: line.body.reportedSide })),
    ...theCase.live('call').map((line) => ({ line, ...inText(line.body.text) })),
    ...theCase.live('vet-answer').map((line) => ({ line, ...inText(line.body.text) })),
    ...theCase.live('owner-answer').map((line) => ({ line, ...saidInAnswers(line.body, rules) })),
  ]
  const found = heard.flatMap(({ line, said, side }): ToldSign[] => {
    const signs = lateSignsIn({ ...said, text: said.heard ?? said.text }, rules)
    const told = rootOf(theCase, line.header.id)
    const answer = answers.findLast(({ body }) => rootOf(theCase, body.told) === told) ?? null
    return signs.length === 0 && answer === null ? [] : [{ told, line, said: said.text, side, signs, answer }]
  })
  return found.sort((a, b) => (a.line.at < b.line.at ? -1 : 1))
}

/** Whether it is still to be said to which ear it belongs: nobody has, or whoever did was not sure. */
export function isOpen({ answer }: Pick<ToldSign, 'answer'>): boolean {
  return answer === null || answer.body.belongs === 'unsure' || answer.body.belongs === 'not-looked'
}

/** What a first call told: the complaint, and the red flags that were answered with yes. */
export function saidAtReferral({ complaint, signs }: Pick<BodyOf<'referral'>, 'complaint' | 'signs'>) {
  return {
    text: complaint,
    flags: signs.flatMap(({ sign, answer }) => (answer === 'yes' ? [sign] : [])),
    isComplaint: true,
  }
}

type Heard = {
  readonly line: ToldLine
  readonly said: Said & { readonly heard?: string }
  readonly side: ToldSign['side']
}

function inText(text: string | null): Omit<Heard, 'line'> {
  return { said: { text: text ?? '', flags: [] }, side: 'unknown' }
}

/** Of the answers to our questions those that tell of a late sign, in the words that were shown, and of which ear. */
function saidInAnswers({ answers }: BodyOf<'owner-answer'>, rules: LateSignRules): Omit<Heard, 'line'> {
  const codeOf = ({ question, answer }: (typeof answers)[number]) => `${question}:${answer}`
  const isChosen = (one: (typeof answers)[number]) =>
    lateSignsIn({ text: '', flags: [], answers: [codeOf(one)] }, rules).length > 0
  // A question names what it asks for: its words are shown and not heard, only those of the owner’s own are.
  const isInOwnWords = ({ answer, said }: (typeof answers)[number]) =>
    said === null && lateSignsIn({ text: answer, flags: [] }, rules).length > 0
  const late = answers.filter((one) => isChosen(one) || isInOwnWords(one))
  const sides = [...new Set(late.flatMap(({ side }) => side ?? []))]
  const shown = late.map((one) =>
    isChosen(one) ? `${one.asked ?? one.question} ${one.said ?? one.answer}` : one.answer,
  )
  const heard = late.filter(isInOwnWords).map(({ answer }) => answer)
  return {
    said: { text: shown.join(' '), heard: heard.join(' '), flags: [], answers: late.map(codeOf) },
    side: sides.length === 2 ? 'BOTH' : (sides[0] ?? 'unknown'),
  }
}
