import { vetFormInEnglish as words } from '#content/wording/vet-form.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, daysBetween, sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type Html, html } from '../render/markup.ts'
import { phoneHtml, privatePageHtml } from '../render/private-page.ts'
import { faultSentence, fieldsHtml } from './fields.ts'
import { askedBy, type VetFormInput } from './input.ts'

/**
 * The short form of a referring practice as HTML: name, species, ear and day, what is wanted, when to phone, and our coded
 * questions. Nothing on it needs a script, nothing else of the record stands on it, and no address of it holds its token.
 */
export function vetForm(input: VetFormInput): string {
  const { file, link } = input
  const { zone, name: clinic } = file.clinic
  const animal = file.theCase.latest('identity')?.body
  const about = {
    clinic,
    name: animal?.name ?? '',
    species: animal ? words.species[animal.species] : '',
    practice: file.contacts.get(link.contact)?.practice ?? contactNamed(file, link.contact),
  }
  const { ears, today } = askedBy(input)
  const until = link.dueBy === null ? null : dayOf({ at: link.dueBy, zone })
  const expires = sayMoment({ at: link.expiresAt, zone, precision: 'day', by: 'clock' })
  return documentHtml(fill(words.title, about), [
    html`<header>
<p class="clinic">${fill(words.from, about)}</p>
<h1>${fill(words.title, about)}</h1>
<p class="hello">${fill(words.about, about)}</p>
${ears.map(({ side, operated }) => html`<p>${fill(words.operated, { side: words.ears[side], day: String(daysBetween(operated, today)) })}</p>\n`)}
</header>
<main>
${sentHtml(input)}${faultsHtml(input)}<section aria-labelledby="want">
<h2 id="want">${words.wantTitle}</h2>
<ul class="want">${words.want[link.asked].map((text) => html`<li>${fill(text, about)}</li>`)}</ul>
${until === null ? html`` : html`<p>${fill(words.window, { until: sayCalendarDay(until) })}</p>`}
<div class="phone" role="group" aria-labelledby="phone"><h2 id="phone">${words.phoneTitle}</h2>
<ul>${words.phone.map((text) => html`<li>${text}</li>`)}</ul>
${phonesHtml(input)}</div>
</section>
<section aria-labelledby="answer">
<h2 id="answer">${words.form}</h2>
<p>${words.formLead}</p>
<form method="post" action="?">
${fieldsHtml(input, ears, about)}
<p><button type="submit">${fill(words.send, about)}</button></p>
</form>
${beforeHtml(input)}</section>
</main>
<footer>
<p>${fill(words.again, { date: expires })}</p>
<p><small>${words.privacy}</small></p>
</footer>`,
  ])
}

function sentHtml({ sent }: VetFormInput): Html {
  if (sent === null) return html``
  if (sent === 'kept')
    return html`<div class="kept" role="status" id="sent"><h2>${words.keptTitle}</h2><p>${words.kept}</p></div>\n`
  const why = sent === 'too-many' ? words.tooMany : words.notKept
  return html`<div class="faults" role="alert" id="sent"><h2>${words.faultsTitle}</h2><p>${why}</p></div>\n`
}

function faultsHtml({ faults }: VetFormInput): Html {
  if (faults.length === 0) return html``
  return html`<div class="faults" role="alert" id="faults"><h2>${words.faultsTitle}</h2>
<ul>${faults.map((one) => html`<li><a href="#${one.at}">${faultSentence(one)}</a></li>`)}</ul>
<p>${words.faultsLead}</p></div>
`
}

function phonesHtml({ file: { clinic } }: VetFormInput): Html {
  const night = clinic.outOfHoursPhone === null ? html`` : html` ${phoneHtml(words.phoneNight, clinic.outOfHoursPhone)}`
  return html`<p>${phoneHtml(words.phoneDay, clinic.phone)}${night}</p>`
}

/** Only what came through this very link: a second look is told from the first. */
function beforeHtml({ file, link }: VetFormInput): Html {
  const sent = file.theCase.live('vet-answer').filter(({ header }) => header.device.id === link.id)
  if (sent.length === 0) return html``
  const lines = sent.map(({ header, body }) => {
    const look = body.looks.flatMap((id) => file.theCase.line(id) ?? [])[0]
    const { zone } = file.clinic
    const day = sayCalendarDay(dayOf({ at: look?.header.happenedAt.at ?? header.writtenAt, zone }))
    return fill(look ? words.beforeLook : words.beforeNoLook, { day, by: body.examinedBy })
  })
  return html`<h3>${words.before}</h3>\n<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>\n`
}

/** What everybody sees whose link opens nothing: the same page for a wrong one, one that ran out and one that was ended. */
export function closedVetForm(
  clinic: { readonly name: string; readonly phone: string } | null,
  tooMany: boolean,
): string {
  const { closed } = words
  const phone =
    clinic &&
    html`<p class="hello">${phoneHtml(fill(closed.phone, { clinic: clinic.name, phone: '{phone}' }), clinic.phone)}</p>`
  return documentHtml(closed.title, [
    html`<main><h1>${closed.title}</h1>
<p>${closed.text}</p>
<p>${closed.whatToDo}</p>
${phone ?? html``}${tooMany ? html`<p>${closed.wait}</p>` : html``}
</main>`,
  ])
}

function documentHtml(title: string, body: readonly Html[]): string {
  return privatePageHtml({ language: 'en', title, style: '/v/page.css', body })
}
