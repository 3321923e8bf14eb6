import { ownerPageEdition } from '#content/wording/owner-page.ts'
import type { OptionId, OptionsInWords } from '#core/choice/option.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { animalMatters, householdMatters, leanings, matterWeights } from '#core/journal/kinds/owner-wishes.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type Html, html } from '../render/markup.ts'
import type { Fields } from './asked.ts'
import { choicesOf } from './choices.ts'
import type { OwnerPageInput } from './input.ts'
import { lines, nameOf, type Part } from './parts.ts'

export type Wishes = BodyOf<'owner-wishes'>

/** The longest question that is kept; an owner who needs more is better phoned. */
export const mostLetters = 4_000

/**
 * What an owner sent, read strictly: only words of our lists and the text of the question. Undefined when nothing was
 * marked or written, `too-long` when the text is too long to be kept whole.
 */
export function wishesOf(form: Fields, language: string): Wishes | 'too-long' | undefined {
  const oneOf = <Word extends string>(name: string, words: readonly Word[]) =>
    words.find((word) => word === form.get(name)) ?? null
  const matters = [...animalMatters, ...householdMatters].flatMap((matter) => {
    const weight = oneOf(`matter-${matter}`, matterWeights)
    return weight ? [{ matter, weight }] : []
  })
  const questions = (form.get('questions') ?? '').replaceAll('\r\n', '\n').trim()
  const leaning = oneOf('leaning', leanings)
  if (questions.length > mostLetters) return 'too-long'
  if (leaning === null && matters.length === 0 && questions === '') return undefined
  return { edition: ownerPageEdition, language, leaning, matters, questions: questions === '' ? null : questions }
}

/** The form, and what this person sent before. It works without a script, and can be sent again. */
export function wishesPart(input: OwnerPageInput): Part {
  const { asked, contact, entry, file, words } = input
  const { page, options } = words
  const about = { name: nameOf(input), letters: String(mostLetters) }
  const before = file.theCase
    .live('owner-wishes')
    .filter(({ header: { author } }) => author.kind === 'owner-link' && author.contact === contact)
    .at(-1)
  const told = { kept: page.sent, nothing: page.sentNothing, 'too-long': fill(page.sentTooLong, about) }
  return {
    id: 'wishes',
    title: page.wishes,
    body: [
      ...(asked.sent ? [html`<p class="told" role="status">${told[asked.sent]}</p>\n`] : []),
      ...lines([page.wishesIntro, fill(page.wishesTwo, about)]),
      ...(before
        ? [
            html`<p>${fill(page.sentBefore, { date: sayMoment(before.header.happenedAt, words.dates) })}</p>\n${saidHtml(before.body, input)}`,
          ]
        : []),
      html`<form method="post" class="wishes">
<input type="hidden" name="entry" value="${entry}">
${[[page.wishesAnimal, animalMatters] as const, [page.wishesHousehold, householdMatters] as const].map(
  ([title, matters]) => html`<fieldset><legend><h3>${fill(title, about)}</h3></legend>
${matters.map((matter) => weighed(matter, before?.body, input))}</fieldset>
`,
)}
<fieldset><legend><h3>${page.leaning}</h3></legend>
${[
  ['not-decided', page.notDecided] as const,
  ...choicesOf(input).map((id) => [id, options.options[id].name] as const),
].map(
  ([
    id,
    text,
  ]) => html`<p><label><input type="radio" name="leaning" value="${id}"${checkedIf(before?.body.leaning === id)}> ${text}</label></p>
`,
)}</fieldset>
<h3><label for="questions">${page.questions}</label></h3>
<p id="questions-help">${page.questionsHelp}</p>
<textarea id="questions" name="questions" rows="6" maxlength="${String(mostLetters)}" aria-describedby="questions-help"></textarea>
<p class="screen"><button type="submit">${page.send}</button></p>
</form>
`,
    ],
  }
}

type Matter = (typeof animalMatters | typeof householdMatters)[number]

function weighed(matter: Matter, before: Wishes | undefined, input: OwnerPageInput): Html {
  const { page } = input.words
  const was = before?.matters.find((one) => one.matter === matter)?.weight ?? ''
  const radio = (value: string, text: string) =>
    html`<label${value === '' ? html` class="unasked"` : html``}><input type="radio" name="matter-${matter}" value="${value}"${checkedIf(was === value)}> ${text}</label> `
  return html`<fieldset class="weighed"><legend>${fill(page.matters[matter], { name: nameOf(input) })}</legend>
${matterWeights.map((weight) => radio(weight, page.weights[weight]))}${radio('', page.weightNone)}</fieldset>
`
}

function checkedIf(is: boolean): Html {
  return is ? html` checked` : html``
}

/** What was sent, in the words of the form. */
function saidHtml({ leaning, matters, questions }: Wishes, input: OwnerPageInput): Html {
  const { page, options } = input.words
  const said = [
    ...(leaning === null ? [] : [`${page.leaning} ${leaningInWords(leaning, page.notDecided, options)}`]),
    ...matters.map(
      ({ matter, weight }) => `${fill(page.matters[matter], { name: nameOf(input) })}: ${page.weights[weight]}`,
    ),
    ...(questions === null ? [] : [`${page.questions}: ${questions}`]),
  ]
  return html`<ul>${said.map((text) => html`<li class="written">${text}</li>`)}</ul>\n`
}

function leaningInWords(
  leaning: NonNullable<Wishes['leaning']>,
  notDecided: string,
  { options }: OptionsInWords,
): string {
  const option: OptionId | undefined = optionIds.find((id) => id === leaning)
  return option ? options[option].name : notDecided
}
