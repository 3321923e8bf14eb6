import type { QuestionnaireResponseItem } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { Around, Mapping, OfLine } from './around.ts'
import { answer } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { derivedUuid, entryUuid } from './naming.ts'
import { coded } from './observations.ts'
import { sideOf } from './side.ts'
import type { ResourceOf } from './written.ts'

type Form = { readonly id?: string; readonly name: string; readonly edition?: string }

/** A form of ours with its answers, whoever filled it in. */
export function answers(
  line: OfLine,
  around: Around,
  form: Form,
  item: QuestionnaireResponseItem[],
): ResourceOf<'QuestionnaireResponse'> {
  const edition = form.edition === undefined ? '' : `|${encodeURIComponent(form.edition)}`
  return {
    resourceType: 'QuestionnaireResponse',
    id: form.id ?? entryUuid(line.header.id),
    questionnaire: `urn:quiet-ear:questionnaire:${encodeURIComponent(form.name)}${edition}`,
    status: 'completed',
    subject: around.patient(line),
    authored: dateTime(line.header.happenedAt),
    author: around.author(line),
    item,
  }
}

export function textAnswer(linkId: string, text: string, value: string): QuestionnaireResponseItem {
  return { linkId, text, answer: [{ valueString: value }] }
}

/** An answer of our list; "not asked" is the public code for it. */
export function codedAnswer(linkId: string, text: string, code: string): QuestionnaireResponseItem {
  const { valueCodeableConcept: given, dataAbsentReason: reason } = coded(code)
  const coding = (reason ?? given)?.coding?.[0] ?? { system: systems.local, code }
  return {
    linkId,
    text,
    answer: [{ valueCoding: { ...coding, display: code.replaceAll('-', ' ') } }],
  } as QuestionnaireResponseItem
}

export const ownerAnswer: Mapping<'owner-answer'> = (line, around) => {
  const { questionnaire, edition, answers: given } = line.body
  const items = given.map(({ question, side, asked, answer: text, said }) =>
    textAnswer(side === null ? question : `${question}.${side}`, asked ?? question.replaceAll('-', ' '), said ?? text),
  )
  return [answers(line, around, { name: questionnaire, edition }, items)]
}

/** What matters to the owner, in the codes of the owner's page. */
export const ownerWishes: Mapping<'owner-wishes'> = (line, around) => {
  const { edition, leaning, matters, questions } = line.body
  const items = [
    ...(leaning === null ? [] : [codedAnswer('leaning', 'leaning', leaning)]),
    ...matters.map(({ matter, weight }) => codedAnswer(matter, matter.replaceAll('-', ' '), weight)),
    ...(questions === null ? [] : [textAnswer('questions', 'questions', questions)]),
  ]
  return [answers(line, around, { name: 'owner-wishes', edition }, items)]
}

/** The answer of the referring practice; what it saw of an ear is an observation of its own. */
export const vetAnswer: Mapping<'vet-answer'> = (line, around) => {
  const { asked, examinedBy, saysDied, text } = line.body
  return [
    answers(line, around, { name: 'vet-answer' }, [
      codedAnswer('asked', 'asked', asked),
      textAnswer('examined-by', 'examined by', examinedBy),
      codedAnswer('says-died', 'says that the animal has died', saysDied ? 'yes' : 'no'),
      ...(text === null ? [] : [textAnswer('text', 'text', text)]),
    ]),
  ]
}

/** What was offered for this ear, chosen or declined, and why. */
export const choice: Mapping<'choice'> = (line, around) => {
  const { body } = line
  const side = sideOf(line)
  const ask = say.questions
  return [
    answers(line, around, { id: entryUuid(line.header.id), name: 'choice' }, [
      ...(side === undefined ? [] : [codedAnswer('side', say.sides[side], side)]),
      ...body.options.map(({ option, answer: decided, because }) => ({
        ...codedAnswer(option, answer(option).text ?? option, decided),
        item: [textAnswer(`${option}.because`, 'because', because)],
      })),
      codedAnswer('session', ask.session, body.session),
      ...body.for.map((text, place) => textAnswer(`for.${place + 1}`, ask.for, text)),
      ...body.against.map((text, place) => textAnswer(`against.${place + 1}`, ask.against, text)),
      ...body.missing.map((text, place) => textAnswer(`missing.${place + 1}`, ask.missing, text)),
    ]),
  ]
}

/** The id of the form that stands behind an agreement. */
export function formBehind(entry: string): string {
  return derivedUuid(entry, 'form')
}
