import { fill } from '#core/outcome/finding.ts'
import { type Moment, sayMoment } from '#core/time/moment.ts'
import type { OwnerPageWords } from '../owner-page/words.ts'
import { type Html, html } from '../render/markup.ts'
import type { LinkInput } from './destinations.ts'

/** Hidden unless the phone itself gives the page, because no network did: what gives it then shows this line. */
export function keptLine({ link }: OwnerPageWords): Html {
  return html`<p class="kept-only" role="status" hidden>${link.kept}</p>
`
}

/** The same with the moment it was made, where the page does not say it anyway. */
export function keptLineOf({ link, dates }: OwnerPageWords, on: Moment): Html {
  const asOf = fill(link.asOf, { date: sayMoment(on, dates) })
  return html`<p class="kept-only" hidden>${link.kept} ${asOf}</p>
`
}

/** A tablet of the house keeps nothing of a page that it shows to the next owner too. */
export function scriptsFor({ use }: LinkInput, ...scripts: readonly string[]): readonly string[] {
  return use === 'private' ? scripts : []
}

export function translatedLine({ aboutTranslation }: OwnerPageWords): Html[] {
  return aboutTranslation === null ? [] : [html`<p><small>${aboutTranslation}</small></p>\n`]
}
