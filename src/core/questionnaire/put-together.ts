import { type Side, type Species, sides } from '#core/animal/species.ts'
import { fill } from '#core/outcome/finding.ts'
import type { GivenAnswer } from './answer-line.ts'
import type { Asking } from './askings.ts'
import { type Question, questionsFor } from './questionnaire.ts'

/** The sentences of the questions in one language, under the id of each question. */
export type QuestionWords = Readonly<
  Record<string, { readonly ask: string; readonly why: string; readonly choices: Readonly<Record<string, string>> }>
>

/** One question as it stands on a page: about one ear, or about the animal. */
export type Posed = { readonly question: Question; readonly side: Side | null }

/**
 * What is asked, in its order: every question about one ear, then about the other, then about the animal.
 *
 * @example posedIn(asking, 'dog').map(fieldOf) // ['ear-now.LEFT', …, 'hearing', …]
 */
export function posedIn({ questionnaire, ears }: Pick<Asking, 'questionnaire' | 'ears'>, species: Species): Posed[] {
  const fitting = questionsFor(questionnaire, species)
  const asked = sides.filter((side) => ears.some((ear) => ear.side === side))
  const ofEars = fitting.filter(({ about }) => about === 'ear')
  const ofAnimal = fitting.filter(({ about }) => about === 'animal')
  return [
    ...asked.flatMap((side) => ofEars.map((question) => ({ question, side }))),
    ...ofAnimal.map((question) => ({ question, side: null })),
  ]
}

/** The name of a question on a form. @example fieldOf({ question, side: 'LEFT' }) // 'swelling.LEFT' */
export function fieldOf({
  question,
  side,
}: Pick<Posed, 'side'> & { readonly question: { readonly id: string } }): string {
  return side === null ? question.id : `${question.id}.${side}`
}

/** How the sentences are filled: the name of the animal, and the sides in words. */
export type Naming = { readonly name: string; readonly sides: Readonly<Record<Side, string>> }

/**
 * A sentence about an ear or the animal with its places filled.
 *
 * @example sayPosed('Is the {side} eye sore?', 'LEFT', { name: 'Tansy', sides }) // 'Is the LEFT eye sore?'
 */
export function sayPosed(sentence: string, side: Side | null, { name, sides: said }: Naming): string {
  return fill(sentence, { name, side: side === null ? '' : said[side] })
}

/**
 * The answers that were picked or written, each with the words that were shown. What is none of the choices of its
 * question, or empty, is left out; `picked` is asked by the name of the field.
 *
 * @example givenAnswers(posed, (field) => form.get(field), words, naming)
 */
export function givenAnswers(
  posed: readonly Posed[],
  picked: (field: string) => string | null,
  words: QuestionWords,
  naming: Naming,
): GivenAnswer[] {
  return posed.flatMap((one): GivenAnswer[] => {
    const { question, side } = one
    const said = words[question.id]
    const answer = (picked(fieldOf(one)) ?? '').replaceAll('\r\n', '\n').trim()
    if (!said || answer === '') return []
    const asked = sayPosed(said.ask, side, naming)
    if (question.choices.length === 0) return [{ question: question.id, side, answer, asked, said: null }]
    const choice = said.choices[answer]
    if (!question.choices.includes(answer) || choice === undefined) return []
    return [{ question: question.id, side, answer, asked, said: sayPosed(choice, side, naming) }]
  })
}
