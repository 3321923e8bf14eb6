import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type Html, html } from '../render/markup.ts'
import type { OwnerPageInput } from './input.ts'
import { type OwnerPageWords, ownerPageInLanguages } from './words.ts'

/** A whole page for a browser, around its body. `scripts` are names under `/o/`; the page is whole without them. */
export function documentHtml(
  { page }: OwnerPageWords,
  title: string,
  body: readonly Html[],
  scripts: readonly string[] = [],
): string {
  return html`<!doctype html>
<html lang="${page.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow, noarchive">
<meta name="referrer" content="no-referrer">
<meta name="format-detection" content="telephone=no">
<title>${title}</title>
<link rel="stylesheet" href="/o/page.css">
${scripts.map((name) => html`<script src="/o/${name}" defer></script>\n`)}</head>
<body>
${body}
</body>
</html>
`.text
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
    clinic.outOfHoursPhone === null ? html`` : html`<p>${phoneLine(page.phoneNight, clinic.outOfHoursPhone)}</p>`
  return html`<p>${phoneLine(page.phoneDay, clinic.phone)}</p>${night}`
}

function phoneLine(sentence: string, phone: string): Html {
  const [before = '', after = ''] = sentence.split('{phone}')
  return html`${before}<a href="tel:${phone.replaceAll(/[^\d+]/g, '')}">${phone}</a>${after}`
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
