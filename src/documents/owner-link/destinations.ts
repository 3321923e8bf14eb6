import { homePlanOf } from '#core/home/home-plan.ts'
import { fill } from '#core/outcome/finding.ts'
import { isPaper, type NotYet } from '../case/paper-input.ts'
import { ownerLeaflet } from '../leaflet/owner-leaflet.ts'
import type { OwnerPageInput } from '../owner-page/input.ts'
import type { OwnerPageWords } from '../owner-page/words.ts'
import { hasQuestions } from '../questions/askings-of-case.ts'
import { type Html, html } from '../render/markup.ts'
import type { Paper } from '../render/model.ts'

/** What every page behind a private link is made from. */
export type LinkInput = Pick<OwnerPageInput, 'file' | 'on' | 'contact' | 'use' | 'until' | 'words'> & {
  readonly asked: { readonly language: string | null }
}

/** A page behind the link: its last step of the address, its name, and whether it is there for this case now. */
export type Destination = {
  readonly path: string
  readonly name: (words: OwnerPageWords) => string
  readonly open: (input: LinkInput) => boolean
}

/**
 * The pages behind a link once the animal is at home, in the order they are offered. Each is served by a file of
 * `server/owner-link/`, and asks there again whether it is open.
 */
export const destinations: readonly Destination[] = [
  { path: 'home', name: ({ link }) => link.home, open: isHome },
  // On a tablet of the house nothing is kept or sent for somebody who hands it back.
  { path: 'notes', name: ({ link }) => link.notes, open: ({ use, file }) => use === 'private' && isHome({ file }) },
  { path: 'questions', name: ({ asking }) => asking.toQuestions, open: ({ file, on }) => hasQuestions(file, on.at) },
  { path: 'before', name: ({ link }) => link.before, open: () => true },
  { path: 'leaflet.pdf', name: ({ link }) => link.leaflet, open: (input) => isPaper(leafletBehindLink(input)) },
  { path: 'calendar.ics', name: ({ asking }) => asking.calendar, open: isHome },
]

/** The leaflet in the language of the household. */
export function leafletBehindLink({ file, on }: Pick<LinkInput, 'file' | 'on'>): Paper | NotYet {
  return ownerLeaflet.of({ file, on, operation: null, owed: [], doses: null })
}

/** From the day the animal goes home the link leads to the page for home; before it there is one page only. */
export function isHome({ file }: Pick<LinkInput, 'file'>): boolean {
  return homePlanOf(file.theCase) !== null
}

/** The ways from one page to the others; nothing before the animal is at home. Relative, so that no page holds its token. */
export function navHtml(here: string, input: LinkInput): Html {
  if (!isHome(input)) return html``
  const { words, file, asked } = input
  const language = asked.language === null ? '' : `?language=${asked.language}`
  const open = destinations.filter((one) => one.open(input))
  const name = file.theCase.latest('identity')?.body.name ?? ''
  return html`<nav class="screen pages" aria-label="${fill(words.link.pages, { name })}"><ul>
${open.map(({ path, name: named }) =>
  path === here
    ? html`<li><a href="${path}${language}" aria-current="page">${named(words)}</a></li>\n`
    : html`<li><a href="${path}${path.includes('.') ? '' : language}">${named(words)}</a></li>\n`,
)}</ul></nav>
`
}
