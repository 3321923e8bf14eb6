import { fill } from '#core/outcome/finding.ts'
import { givenTo } from '#core/questionnaire/answer-line.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { fieldOf, type Posed, posedIn, type QuestionWords, sayPosed } from '#core/questionnaire/put-together.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type Html, html } from '../render/markup.ts'
import { mostLetters, type QuestionsInput } from './input.ts'
import { keptStateHtml } from './kept-here.ts'
import { namingOf } from './naming.ts'

/** The questions as a form: one page, whole without a script. What was saved, sent before or could not be kept stands in it. */
export function formHtml(input: QuestionsInput, asking: Asking): Html {
  const { entry, file, spoilt, words } = input
  const { asking: say } = words
  const species = file.theCase.latest('identity')?.body.species
  const posed = species ? posedIn(asking, species) : []
  const groups = [...new Set(posed.map(({ side }) => side))]
  const naming = namingOf(file, words)
  return html`<form method="post" class="ask">
${introHtml(input, asking)}${keptStateHtml(input, 'head')}<input type="hidden" name="entry" value="${entry}">
<input type="hidden" name="of" value="${asking.key}">
${groups.map((side) => {
  const title = side === null ? fill(say.animal, { name: naming.name }) : fill(say.ears, { side: naming.sides[side] })
  const id = `about-${side ?? 'animal'}`
  return html`<section aria-labelledby="${id}">
<h2 id="${id}">${title}</h2>
${posed.filter((one) => one.side === side).map((one) => questionHtml(one, input, asking))}</section>
`
})}<section class="screen">
<p id="as-marked" class="quiet" hidden>${say.kept.asMarked}</p>
${keptStateHtml(input, 'foot')}${spoilt ? html`<p class="told" role="status">${sayTrouble(spoilt.because, input)}</p>\n` : html``}<p><button type="submit" name="do" value="send">${say.send}</button></p>
${
  asking.state === 'answered'
    ? html`<p><a href="?of=${asking.key}${languageIn(input)}">${say.back}</a></p>`
    : html`<p class="second"><button type="submit" name="do" value="save" aria-describedby="save-help">${say.later}</button></p>
<p id="save-help" class="quiet">${say.laterHelp}</p>`
}
</section>
</form>
`
}

/** The language that was asked for goes on to the next address. */
export function languageIn({ asked: { language } }: Pick<QuestionsInput, 'asked'>): string {
  return language === null ? '' : `&language=${language}`
}

function introHtml(input: QuestionsInput, asking: Asking): Html {
  const { contact, done, file, spoilt, words } = input
  const { asking: say } = words
  const { name } = namingOf(file, words)
  const about = { name, owner: file.contacts.get(contact)?.name ?? '' }
  const before = asking.answers
  const date = before ? sayMoment(before.header.happenedAt, words.dates) : ''
  const standing = before && fill(before.body.finished ? say.correcting : say.savedNotSent, { date })
  return html`<p class="hello">${fill(say.hello, about)}</p>
${done === 'saved' ? html`<p class="told" role="status">${say.saved}</p>\n` : html``}${
  spoilt ? html`<p class="told" role="alert">${sayTrouble(spoilt.because, input)}</p>\n` : html``
}${standing && done === null ? html`<p class="told">${standing}</p>\n` : html``}<p>${say.intro}</p>
<p>${say.noLook}</p>
<p class="worry">${say.worry} <a href="tel:${file.clinic.phone.replaceAll(/[^\d+]/g, '')}">${file.clinic.phone}</a></p>
<p class="quiet">${say.about}</p>
`
}

function sayTrouble(because: NonNullable<QuestionsInput['spoilt']>['because'], { words }: QuestionsInput): string {
  const { asking: say } = words
  switch (because) {
    case 'nothing':
      return say.nothing
    case 'too-long':
      return fill(say.tooLong, { letters: String(mostLetters) })
    case 'not-kept':
      return say.notKept
  }
}

function questionHtml(one: Posed, input: QuestionsInput, asking: Asking): Html {
  const { question, side } = one
  const { file, rules, spoilt, words } = input
  const said = (words.questions as QuestionWords)[question.id]
  if (!said) return html``
  const naming = namingOf(file, words)
  const field = fieldOf(one)
  const ask = sayPosed(said.ask, side, naming)
  const why = html`<p id="${field}-why" class="why"><b>${words.asking.why}:</b> ${sayPosed(said.why, side, naming)}</p>`
  const was = spoilt
    ? spoilt.picked(field)
    : (givenTo(asking.answers?.body.answers ?? [], question.id, side)?.answer ?? null)
  if (question.choices.length === 0) {
    return html`<div class="one">
<h3><label for="${field}">${ask}</label></h3>
${why}
<p id="${field}-help">${words.asking.words}</p>
<textarea id="${field}" name="${field}" rows="5" maxlength="${String(mostLetters)}" aria-describedby="${field}-why ${field}-help">${was ?? ''}</textarea>
</div>
`
  }
  return html`<fieldset class="one" aria-describedby="${field}-why">
<legend><h3>${ask}</h3></legend>
${why}
${question.choices.map((choice) => {
  const is = was === choice ? html` checked` : html``
  const text = sayPosed(said.choices[choice] ?? choice, side, naming)
  const report = question.reports[choice]
  const now = report && rules.reports[report].phoneNow ? html` data-now` : html``
  return html`<label><input type="radio" name="${field}" value="${choice}"${now}${is}> <span>${text}</span></label>\n`
})}</fieldset>
`
}
