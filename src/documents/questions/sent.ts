import { fill } from '#core/outcome/finding.ts'
import { type AnswerLine, givenTo } from '#core/questionnaire/answer-line.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { posedIn, type QuestionWords, sayPosed } from '#core/questionnaire/put-together.ts'
import { asksForAnswer, type Report, reportsIn } from '#core/questionnaire/reports.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { phonesHtml } from '../owner-page/frame.ts'
import { type Html, html } from '../render/markup.ts'
import { languageIn } from './form.ts'
import type { QuestionsInput } from './input.ts'
import { namingOf } from './naming.ts'

/** What an owner sees of answers that were sent: when to phone now, what happens next, what was said, and how to change it. */
export function sentHtml(input: QuestionsInput, asking: Asking, line: AnswerLine): Html {
  const { done, rules, words } = input
  const { asking: say, home } = words
  const reports = reportsIn(line.body, rules)
  const isUrgent = reports.some(({ report }) => rules.reports[report].phoneNow)
  const saidReports = html`<ul>${reports.map((one) => html`<li>${sayReport(one, input)}</li>`)}</ul>\n`
  return html`${done === 'sent' ? html`<p class="told" role="status">${say.thanks}</p>\n` : html``}${
    isUrgent
      ? html`<section class="now" aria-labelledby="now"><h2 id="now">${say.nowTitle}</h2>
<p>${say.youTold}:</p>
${saidReports}<p>${say.nowText}</p>
${phonesHtml(input)}</section>
`
      : html``
  }<section aria-labelledby="next"><h2 id="next">${say.next}</h2>
${reports.length > 0 && !isUrgent ? html`<p>${say.youTold}:</p>\n${saidReports}` : html``}${nextLines(
  input,
  line,
  reports,
).map((text) => html`<p>${text}</p>\n`)}<h3>${say.watch}</h3>
<ul>${home.phoneNowItems.value.map((text) => html`<li>${text}</li>`)}</ul>
</section>
<section aria-labelledby="said"><h2 id="said">${fill(titleOf(input, line), { date: sayMoment(line.header.happenedAt, words.dates) })}</h2>
${saidHtml(input, asking, line)}<p class="screen"><a href="?of=${asking.key}&amp;change=1${languageIn(input)}">${say.correct}</a></p>
<p class="quiet">${say.noLook}</p>
</section>
`
}

/** One report in the words of the owner. */
export function sayReport({ report, side }: Report, { file, words }: Pick<QuestionsInput, 'file' | 'words'>): string {
  return sayPosed(words.asking.reports[report], side, namingOf(file, words))
}

function titleOf({ words: { asking: say } }: QuestionsInput, { body }: AnswerLine): string {
  return body.by === 'phone' || body.by === 'in-person' ? say.saidBy[body.by] : say.said
}

function nextLines(input: QuestionsInput, line: AnswerLine, reports: readonly Report[]): string[] {
  const { askings, file, rules, words } = input
  const { asking: say } = words
  const later = askings.find(({ state }) => state === 'later')
  const isAsked = asksForAnswer(line.body, rules)
  const date = later ? sayCalendarDay(dayOf({ at: later.from, zone: file.clinic.zone }), words.dates) : ''
  return [
    ...(reports.length > 0 ? [say.nextPhone] : []),
    ...(isAsked ? [say.nextCall] : []),
    ...(reports.length === 0 && !isAsked ? [fill(say.nextNone, { name: namingOf(file, words).name })] : []),
    say.nextVisit,
    ...(later ? [fill(say.nextAsked, { date })] : []),
  ]
}

/** Every question with what was answered; what was left out says so. */
function saidHtml({ file, words }: QuestionsInput, asking: Asking, { body }: AnswerLine): Html {
  const species = file.theCase.latest('identity')?.body.species
  const naming = namingOf(file, words)
  const rows = (species ? posedIn(asking, species) : []).flatMap(({ question, side }) => {
    const said = (words.questions as QuestionWords)[question.id]
    if (!said) return []
    const given = givenTo(body.answers, question.id, side)?.answer
    const answer = given === undefined ? words.asking.leftOut : sayPosed(said.choices[given] ?? given, side, naming)
    return [html`<div><dt>${sayPosed(said.ask, side, naming)}</dt><dd class="written">${answer}</dd></div>\n`]
  })
  return html`<dl class="answers">${rows}</dl>\n`
}
