import { type Html, html } from './markup.ts'

/**
 * A whole page for the browser of somebody without an account, around its body: no search engine keeps it, and its address
 * goes nowhere. The page is whole without its `scripts`.
 */
export function privatePageHtml(page: {
  readonly language: string
  readonly title: string
  /** The address of its style. */
  readonly style: string
  readonly body: readonly Html[]
  /** Addresses. */
  readonly scripts?: readonly string[]
}): string {
  const { language, title, style, body, scripts = [] } = page
  return html`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow, noarchive">
<meta name="referrer" content="no-referrer">
<meta name="format-detection" content="telephone=no">
<title>${title}</title>
<link rel="stylesheet" href="${style}">
${scripts.map((address) => html`<script type="module" src="${address}"></script>\n`)}</head>
<body>
${body}
</body>
</html>
`.text
}

/** A sentence with `{phone}` in it, whose number a touch calls. */
export function phoneHtml(sentence: string, phone: string): Html {
  const [before = '', after = ''] = sentence.split('{phone}')
  return html`${before}<a href="tel:${phone.replaceAll(/[^\d+]/g, '')}">${phone}</a>${after}`
}
