import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type Html, html } from '../render/markup.ts'
import { phoneHtml, privatePageHtml } from '../render/private-page.ts'
import type { OwnerPageInput } from './input.ts'
import { type OwnerPageWords, ownerPageInLanguages } from './words.ts'

/** A whole page for a browser, around its body. `scripts` are names under `/o/`; the page is whole without them. */
export function documentHtml(
  { page }: OwnerPageWords,
  title: string,
  body: readonly Html[],
  scripts: readonly string[] = [],
): string {
  const addresses = scripts.map((name) => `/o/${name}`)
  return privatePageHtml({ language: page.language, title, style: '/o/page.css', body, scripts: addresses })
}

/** At the foot of every page behind a link: whom to phone, and until when it opens. */
export function footerHtml(input: Pick<OwnerPageInput, 'file' | 'until' | 'words'>, more: readonly Html[] = []): Html {
  const { file, until, words } = input
  const { page } = words
  return html`<footer>
<h2>${fill(page.phone, { clinic: file.clinic.name })}</h2>
${phonesHtml(input)}
<p>${page.caution}</p>
<p>${fill(page.linkUntil, { date: sayMoment(until, words.dates) })}</p>
${more}</footer>`
}

export function phonesHtml({ file: { clinic }, words: { page } }: Pick<OwnerPageInput, 'file' | 'words'>): Html {
  const night =
    clinic.outOfHoursPhone === null ? html`` : html`<p>${phoneHtml(page.phoneNight, clinic.outOfHoursPhone)}</p>`
  return html`<p>${phoneHtml(page.phoneDay, clinic.phone)}</p>${night}`
}

/** The same page in the other languages, at the address that `hrefFor` gives. */
export function languageLinks({ page }: OwnerPageWords, hrefFor: (language: string) => string): Html[] {
  return Object.values(ownerPageInLanguages)
    .filter(({ page: { language } }) => language !== page.language)
    .map(({ page: other }) => {
      const text = fill(other.otherLanguage, { language: other.languageName })
      return html`<p class="screen"><a href="${hrefFor(other.language)}" lang="${other.language}" hreflang="${other.language}">${text}</a></p>`
    })
}
