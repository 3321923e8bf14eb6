import { fill } from '#core/outcome/finding.ts'
import { type Asking, isOpen } from '#core/questionnaire/askings.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { navHtml } from '../owner-link/destinations.ts'
import { keptLineOf, scriptsFor } from '../owner-link/kept.ts'
import { documentHtml, footerHtml, languageLinks } from '../owner-page/frame.ts'
import { type Html, html } from '../render/markup.ts'
import { formHtml, languageIn } from './form.ts'
import type { QuestionsInput } from './input.ts'
import { keptHereHtml } from './kept-here.ts'
import { namingOf } from './naming.ts'
import { sentHtml } from './sent.ts'

/**
 * The page of the questions behind a link: the form while they are asked, afterwards what was sent and what happens next.
 * It works without a script, and with one what is marked is kept on the phone. It can be saved and gone on with, and answers that were sent can be changed.
 */
export function questionsPage(input: QuestionsInput): string {
  const { asking, file, on, words } = input
  const { name } = namingOf(file, words)
  const { asking: say } = words
  const isSent = asking?.state === 'answered'
  const isForm = asking !== null && (isOpen(asking) || (isSent && asking.answers !== null && input.changing))
  const title = fill(asking ? (isSent && !isForm ? say.thanksTitle : say.titles[asking.occasion.id]) : say.none, {
    name,
  })
  const of = asking ? `of=${asking.key}&` : ''
  return documentHtml(
    words,
    title,
    [
      html`<header>
<p class="clinic">${file.clinic.name}</p>
<h1>${title}</h1>
${keptLineOf(words, on)}${languageLinks(words, (language) => `?${of}language=${language}`)}
</header>
${navHtml('questions', input)}<main>
${keptHereHtml(input)}${isForm && asking ? formHtml(input, asking) : html``}${
  isSent && !isForm && asking?.answers ? sentHtml(input, asking, asking.answers) : html``
}${isSent && asking.answers === null ? otherHtml(input) : html``}${asking === null ? noneHtml(input) : html``}${moreHtml(input, asking)}</main>
${footerHtml(input, words.aboutTranslation === null ? [] : [html`<p><small>${words.aboutTranslation}</small></p>\n`])}`,
    ],
    scriptsFor(input, 'keep.js', 'questions.js'),
  )
}

/** The time of asking a page is about: the one that was named, else the first that waits, else the last that was answered. */
export function askingFor(askings: readonly Asking[], wanted: string | null): Asking | null {
  const shown = askings.filter((one) => isOpen(one) || one.state === 'answered')
  return shown.find(({ key }) => key === wanted) ?? shown.find(isOpen) ?? shown.at(-1) ?? null
}

/** Answered by somebody else of the household: what they wrote is theirs. */
function otherHtml({ words }: QuestionsInput): Html {
  return html`<p class="hello">${words.asking.other}</p>
`
}

function noneHtml({ askings, file, words }: QuestionsInput): Html {
  const { asking: say } = words
  const later = askings.find(({ state }) => state === 'later')
  const date = later ? sayCalendarDay(dayOf({ at: later.from, zone: file.clinic.zone }), words.dates) : ''
  return html`<p class="hello">${say.noneText}</p>
${later ? html`<p>${fill(say.noneNext, { date })}</p>\n` : html``}`
}

/** Two ears that were operated on different days may be asked about at the same time. */
function moreHtml(input: QuestionsInput, asking: Asking | null): Html[] {
  const { askings, file, words } = input
  const { name } = namingOf(file, words)
  const { asking: say } = words
  return askings
    .filter((one) => isOpen(one) && one.key !== asking?.key)
    .map((one) => {
      const title = fill(say.titles[one.occasion.id], { name })
      return html`<p class="screen"><a href="?of=${one.key}${languageIn(input)}">${fill(say.more, { title })}</a></p>\n`
    })
}
