import { fill } from '#core/outcome/finding.ts'
import { phonesHtml } from '../owner-page/frame.ts'
import { type Html, html } from '../render/markup.ts'
import { mostLetters, type QuestionsInput } from './input.ts'

/**
 * What of the answers is on this phone and not with us, for the script of the page; nothing on a tablet of the house. Where
 * the answers tell of what cannot wait, the telephone stands there at once: we cannot have read it.
 */
export function keptHereHtml(input: QuestionsInput): Html {
  const { link, use, words } = input
  const { asking: say } = words
  if (use !== 'private') return html``
  return html`<section id="kept-here" data-link="${link}" data-words="${wordsForPhone(words)}" class="screen" aria-labelledby="kept-here-title" hidden><h2 id="kept-here-title">${words.link.note.waiting}</h2>
<p id="kept-here-state" class="told" role="status"></p>
<div id="kept-here-now" class="now" hidden><h3>${say.nowTitle}</h3>
<p>${say.kept.now}</p>
${phonesHtml(input)}</div>
<p id="kept-here-buttons"></p>
</section>
`
}

/** What is said of it beside the questions: at their head when somebody comes back, and above the buttons. */
export function keptStateHtml({ use }: Pick<QuestionsInput, 'use'>, place: 'head' | 'foot'): Html {
  if (use !== 'private') return html``
  return place === 'head'
    ? html`<p class="told kept-state" hidden></p>
`
    : html`<p class="told kept-state" role="status" hidden></p>
`
}

/** The words of the script come with the page, in its language. */
function wordsForPhone({ asking: say, link: { note } }: QuestionsInput['words']): string {
  const { notSent, stillHere, waits, sending, over, closed, noRoom } = say.kept
  const tooLong = fill(say.tooLong, { letters: String(mostLetters) })
  const refused = { nothing: say.nothing, 'too-long': tooLong, 'not-kept': say.notKept }
  const buttons = { again: note.again, change: say.correct, drop: note.drop }
  return JSON.stringify({ notSent, stillHere, waits, sending, over, closed, noRoom, refused, ...buttons })
}
