import { owedRules } from '#content/follow-up/owed-rules.ts'
import { ownerNoteLimits } from '#content/follow-up/owner-note-limits.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { type OwnerNote, type OwnerReply, ownerNotesOf } from '#core/owed/owner-notes.ts'
import { dayOf, instantAfter, sayStoredDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { phoneNow } from '../home-page/home-page.ts'
import type { Fields } from '../owner-page/asked.ts'
import { documentHtml, footerHtml, languageLinks } from '../owner-page/frame.ts'
import { nameOf } from '../owner-page/parts.ts'
import { blocksHtml } from '../render/html.ts'
import { type Html, html } from '../render/markup.ts'
import { type LinkInput, navHtml } from './destinations.ts'
import { keptLine, scriptsFor, translatedLine } from './kept.ts'
import { noteEars } from './note-sent.ts'

export type NoteTrouble = keyof LinkInput['words']['link']['note']['refused']

export type NotesInput = LinkInput & {
  /** The id under which a note sent from this page without a script is kept. */
  readonly entry: string
  /** Names the drafts of this link on the phone; never the token. */
  readonly link: string
  /** What became of what was sent just now. */
  readonly told: 'kept' | NoteTrouble | null
  /** What was typed into a note that was not kept: it stands in the form again. */
  readonly typed: Fields
}

/** The page on which an owner writes to the clinic from home, and reads the answers. Whole without a script. */
export function notesPage(input: NotesInput): string {
  const { file, on, words } = input
  const { link, dates } = words
  const { note } = link
  const title = fill(note.title, { name: nameOf(input) })
  return documentHtml(
    words,
    title,
    [
      html`<header>
<p class="clinic">${file.clinic.name}</p>
<h1>${title}</h1>
${keptLine(words)}<p class="as-of">${fill(link.asOf, { date: sayMoment(on, dates) })}</p>
${languageLinks(words, (language) => `?language=${language}`)}
</header>
${navHtml('notes', input)}<main>
${firstHtml(input)}
<section class="screen" aria-labelledby="write"><h2 id="write">${note.write}</h2>
${toldHtml(input)}${formHtml(input)}
</section>
<section id="waiting" class="screen" aria-labelledby="waiting-title" hidden><h2 id="waiting-title">${note.waiting}</h2><div id="waits" aria-live="polite"></div></section>
<section id="before" aria-labelledby="before-title"><h2 id="before-title">${note.before}</h2>
${sentHtml(input)}
</section>
</main>
${footerHtml(input, translatedLine(words))}`,
    ],
    scriptsFor(input, 'keep.js', 'note.js'),
  )
}

/** When to phone instead stands before the box to write in, in the words of the page for home. */
function firstHtml({ file, on, words }: LinkInput): Html {
  const { note } = words.link
  const by = instantAfter(on, owedRules.ownerNoteAnsweredWithin.value)
  const date = sayMoment({ ...on, at: by }, words.dates)
  return html`<div class="paper"><p><strong>${note.first}</strong></p>
${blocksHtml([phoneNow(file, words)])}</div>
<p class="live-only">${fill(note.notWatched, { date })}</p>`
}

function toldHtml({ told, words }: NotesInput): Html {
  if (told === null) return html``
  const { note } = words.link
  const text = told === 'kept' ? note.sent : fill(note.refused[told], limits)
  return html`<p class="told" role="status" id="told">${text}</p>
`
}

const limits = {
  letters: String(ownerNoteLimits.letters.value),
  pictures: String(ownerNoteLimits.pictures.value),
  size: String(ownerNoteLimits.pictureMegabytes.value),
  most: String(ownerNoteLimits.notesOfADay.value),
}

function formHtml({ entry, link, on, typed, words }: NotesInput): Html {
  const { note } = words.link
  const today = dayOf(on)
  const radio = (value: string, text: string) =>
    html`<label><input type="radio" name="ear" value="${value}"${(typed.get('ear') ?? '') === value ? html` checked` : html``}> ${text}</label>\n`
  return html`<form id="note" method="post" enctype="multipart/form-data" class="note" data-link="${link}" data-words="${wordsForPhone(words)}" data-pictures="${limits.pictures}" data-megabytes="${limits.size}" data-letters="${limits.letters}">
<input type="hidden" name="entry" value="${entry}">
<h3><label for="text">${note.text}</label></h3>
<textarea id="text" name="text" rows="7" maxlength="${limits.letters}" aria-describedby="text-help">${typed.get('text') ?? ''}</textarea>
<p id="text-help"><small>${fill(note.textHelp, limits)} <span id="as-typed" hidden>${note.asTyped}</span></small></p>
<fieldset class="when"><legend><h3>${note.seen}</h3></legend>
<p><small>${note.seenHelp}</small></p>
<label>${note.day} <input type="date" name="seen-day" max="${today}" value="${typed.get('seen-day') ?? ''}"></label>
<label>${note.time} <input type="time" name="seen-time" value="${typed.get('seen-time') ?? ''}"></label>
</fieldset>
<fieldset class="line"><legend><h3>${note.ear}</h3></legend>
${noteEars.map((ear) => radio(ear, note.ears[ear]))}${radio('', note.earNone)}</fieldset>
<h3><label for="pictures">${note.pictures}</label></h3>
<p id="pictures-help"><small>${fill(note.picturesHelp, limits)}</small></p>
<input type="file" id="pictures" name="picture" accept="image/jpeg,image/png,image/webp" multiple aria-describedby="pictures-help">
<ul id="chosen" class="chosen" hidden></ul>
<p id="trouble" class="told" role="alert" hidden></p>
<p class="screen"><button type="submit">${note.send}</button></p>
</form>`
}

/** What the script on the page says: its words come with the page, in the language of the page. */
function wordsForPhone({ link: { note } }: LinkInput['words']): string {
  const { stillHere, noRoom, waits, sending, sentAt, again, change, drop, remove, closed, refused } = note
  const filled = Object.fromEntries(Object.entries(refused).map(([code, text]) => [code, fill(text, limits)]))
  return JSON.stringify({
    stillHere,
    noRoom,
    waits,
    sending,
    sentAt,
    again,
    change,
    drop,
    remove,
    closed,
    refused: filled,
  })
}

function sentHtml(input: NotesInput): Html {
  const { contact, file, words } = input
  const mine = ownerNotesOf(file.theCase).filter(
    ({ note: { header } }) => header.author.kind === 'owner-link' && header.author.contact === contact,
  )
  if (mine.length === 0) return html`<p>${words.link.note.none}</p>`
  return html`${mine.reverse().map(({ note, replies }) => oneHtml(note, replies, input))}`
}

function oneHtml({ header, body }: OwnerNote, replies: readonly OwnerReply[], { file, words }: NotesInput): Html {
  const { link, dates } = words
  const { note } = link
  const seen = body.seen && `${sayStoredDay(body.seen.day, dates)}${body.seen.time ? `, ${body.seen.time}` : ''}`
  return html`<article class="sent" data-entry="${header.id}"><h3>${fill(note.onDate, { date: sayMoment(header.happenedAt, dates) })}</h3>
${body.text === null ? html`` : html`<p class="written" dir="auto">${body.text}</p>\n`}${seen ? html`<p class="quiet">${fill(note.seenOn, { date: seen })}</p>\n` : html``}${body.ear ? html`<p class="quiet">${fill(note.about, { ear: note.ears[body.ear] })}</p>\n` : html``}${header.attachments.map(
  ({ hash }, at) =>
    html`<a href="picture/${hash}"><img src="picture/${hash}" alt="${fill(note.picture, { number: String(at + 1) })}" loading="lazy"></a>\n`,
)}${replies.map((reply) => answerHtml(reply, file, words))}${replies.length === 0 ? html`<p><strong>${note.notYet}</strong></p>\n` : html``}</article>
`
}

function answerHtml({ header, body }: OwnerReply, file: LinkInput['file'], { link, dates }: LinkInput['words']): Html {
  const { author, happenedAt } = header
  const person = author.kind === 'person' ? personNamed(file, author.person) : file.clinic.name
  return html`<div class="answer"><p><strong>${fill(link.note.answered, { person, date: sayMoment(happenedAt, dates) })}</strong></p>
<p class="written" dir="auto">${body.text}</p></div>
`
}

/** For a browser without our script that sent more than can be read at all: its own form still holds what was typed. */
export function tooLargePage(words: LinkInput['words']): string {
  const { note } = words.link
  return documentHtml(words, note.write, [
    html`<main><h1>${note.write}</h1>
<p class="told">${fill(note.refused['too-large'], limits)}</p>
</main>`,
  ])
}
