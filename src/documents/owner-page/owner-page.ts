import { fill } from '#core/outcome/finding.ts'
import { numberSources } from '../leaflet/numbered-sources.ts'
import { navHtml } from '../owner-link/destinations.ts'
import { html } from '../render/markup.ts'
import { afterPart, decidePart, decisionPart, estimatePart, sourcesPart } from './around.ts'
import { hrefOf } from './asked.ts'
import { choicesPart, twoPart } from './choices.ts'
import { documentHtml, footerHtml, languageLinks } from './frame.ts'
import type { OwnerPageInput } from './input.ts'
import { foundPart, stepsPart } from './inside.ts'
import { earsInWords, nameOf, type Part, partHtml } from './parts.ts'
import { wishesPart } from './wishes.ts'
import type { OwnerPageWords } from './words.ts'

/** The parts of the page in their order; two choices stand side by side only when they were asked for. */
function partsOf(input: OwnerPageInput): Part[] {
  const species = input.file.theCase.latest('identity')?.body.species
  const sources = numberSources(input.words)
  const { numbered } = sources
  const two = species && twoPart(input, species)
  return [
    decisionPart(input),
    foundPart(input),
    stepsPart(input),
    ...(two ? [two] : []),
    ...(species ? [choicesPart(input, species, numbered)] : []),
    afterPart(input, numbered),
    estimatePart(input),
    decidePart(input),
    wishesPart(input),
    sourcesPart(input, sources),
  ]
}

/** The owner's page as HTML: nothing on it needs a script, and no address of it holds the token that opens it. */
export function ownerPage(input: OwnerPageInput): string {
  const { file, contact, use, words } = input
  const { page } = words
  const ears = earsInWords(input)
  const about = { owner: file.contacts.get(contact)?.name ?? '', name: nameOf(input), ears: ears ?? '' }
  const parts = partsOf(input)
  return documentHtml(words, fill(page.title, about), [
    html`<header>
<p class="clinic">${file.clinic.name}</p>
<h1>${fill(page.title, about)}</h1>
<p class="hello">${fill(ears === null ? page.helloNoEar : page.hello, about)}</p>
<p>${use === 'in-room' ? `${page.inRoom} ` : ''}${page.howToRead}</p>
${languageLinks(words, (language) => hrefOf(input.asked, { language }, ''))}
</header>
${navHtml('before', input)}<nav aria-labelledby="contents" class="screen"><h2 id="contents">${page.contents}</h2>
<ol>${parts.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>`)}</ol></nav>
<main>
${parts.map(partHtml)}</main>
${footerHtml(input, [html`<p class="screen">${page.print}</p>\n`])}`,
  ])
}

/** What everybody sees whose link opens nothing: the same page for a wrong one, one that ran out and one that was ended. */
export function closedPage(
  words: OwnerPageWords,
  clinic: { readonly name: string; readonly phone: string } | null,
  tooMany: boolean,
): string {
  const { closed } = words.page
  const [before = '', after = ''] = closed.phone.split('{phone}')
  const phone =
    clinic &&
    html`<p class="hello">${fill(before, { clinic: clinic.name })}<a href="tel:${clinic.phone.replaceAll(/[^\d+]/g, '')}">${clinic.phone}</a>${after}</p>`
  return documentHtml(words, closed.title, [
    html`<main><h1>${closed.title}</h1>
<p>${closed.text}</p>
<p>${closed.whatToDo}</p>
${phone ?? html``}${tooMany ? html`<p>${closed.wait}</p>` : html``}
</main>`,
  ])
}
