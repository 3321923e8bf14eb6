import type { Side } from '#core/animal/species.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Html, html } from '../render/markup.ts'
import type { OwnerPageInput } from './input.ts'

/** A part of the page under its own heading, which the list of contents leads to. */
export type Part = { readonly id: string; readonly title: string; readonly body: readonly Html[] }

export function partHtml({ id, title, body }: Part): Html {
  return html`<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${title}</h2>
${body}
</section>
`
}

export function lines(texts: readonly string[]): Html[] {
  return texts.map((text) => html`<p>${text}</p>\n`)
}

export function listOf(texts: readonly string[]): Html {
  return html`<ul>${texts.map((text) => html`<li>${text}</li>`)}</ul>\n`
}

export function nameOf({ file }: Pick<OwnerPageInput, 'file'>): string {
  return file.theCase.latest('identity')?.body.name ?? ''
}

/** "the LEFT ear", or both; null when nobody has written down which. */
export function earsInWords({ file, words: { page, plate } }: OwnerPageInput): string | null {
  const [one, other] = affectedEars(file.theCase)
  if (!one) return null
  return other ? page.bothEars : fill(page.oneEar, { side: plate.sides[one] })
}

/** The ear that the pictures show: the one asked for when it is one of them. */
export function earShown({ file, asked }: OwnerPageInput): Side | null {
  const ears = affectedEars(file.theCase)
  return ears.find((side) => side === asked.ear) ?? ears[0] ?? null
}
