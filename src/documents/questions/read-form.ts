import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { givenAnswers, posedIn, type QuestionWords } from '#core/questionnaire/put-together.ts'
import type { LinkInput } from '../owner-link/destinations.ts'
import { mostLetters, type Spoilt } from './input.ts'
import { namingOf } from './naming.ts'

export type OwnerAnswers = BodyOf<'owner-answer'>
type Fields = { readonly get: (name: string) => string | null }

/**
 * What an owner sent, read strictly: only answers of our lists, and the text of what was written. A text that is too long
 * to be kept whole keeps nothing: the page stands again with all of it.
 */
export function answersSent(
  form: Fields,
  asking: Asking,
  { file, words, contact }: Pick<LinkInput, 'file' | 'words' | 'contact'>,
): OwnerAnswers | Spoilt['because'] {
  const species = file.theCase.latest('identity')?.body.species
  const posed = species ? posedIn(asking, species) : []
  const answers = givenAnswers(
    posed,
    (field) => form.get(field),
    words.questions as QuestionWords,
    namingOf(file, words),
  )
  if (answers.some(({ answer }) => answer.length > mostLetters)) return 'too-long'
  if (answers.length === 0) return 'nothing'
  return {
    questionnaire: asking.questionnaire.id,
    edition: asking.questionnaire.edition,
    occasion: asking.occasion.id,
    ears: [...asking.ears],
    by: 'owner-link',
    contact,
    language: words.page.language,
    // What was sent once stays sent, whichever button changes it.
    finished: form.get('do') !== 'save' || asking.state === 'answered',
    answers,
  }
}

/** Whether these answers say the same as those that stand: then nothing has to be written again. */
export function saysTheSame(body: OwnerAnswers, standing: Pick<Line<OwnerAnswers>, 'body'> | null): boolean {
  if (!standing || standing.body.finished !== body.finished) return false
  const plain = ({ answers }: OwnerAnswers) =>
    JSON.stringify(answers.map(({ question, side, answer }) => [question, side, answer]))
  return plain(standing.body) === plain(body)
}
