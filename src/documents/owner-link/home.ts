import { type HomePlan, homePlanOf } from '#core/home/home-plan.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { sayDay } from '../case/case-words.ts'
import { homeBlocks, isHomePageHeld, phoneNow } from '../home-page/home-page.ts'
import { documentHtml, footerHtml, languageLinks, phonesHtml } from '../owner-page/frame.ts'
import { nameOf } from '../owner-page/parts.ts'
import { blocksHtml } from '../render/html.ts'
import { html } from '../render/markup.ts'
import { type LinkInput, navHtml } from './destinations.ts'
import { keptLine, scriptsFor, translatedLine } from './kept.ts'

/**
 * The page for home as it stands now, behind the link. While a check has something against the medicines, only when to
 * phone is said: the paper that a person handed out counts until then. Null when the animal is not at home.
 */
export function homeBehindLink(input: LinkInput): string | null {
  const plan = homePlanOf(input.file.theCase)
  return plan && pageOf(input, plan)
}

function pageOf(input: LinkInput, plan: HomePlan): string {
  const { file, on, words } = input
  const { home, link, dates } = words
  const title = fill(home.title, { name: nameOf(input) })
  const said = isHomePageHeld(file, plan)
    ? html`${blocksHtml([phoneNow(file, words)])}
<h2>${link.checking}</h2>
<p>${link.checkingText}</p>`
    : blocksHtml(homeBlocks(file, plan, words, on))
  return documentHtml(
    words,
    title,
    [
      html`<header>
<p class="clinic">${file.clinic.name}</p>
<h1>${title}</h1>
<p>${fill(link.wentHome, { name: nameOf(input), date: sayDay(plan.discharge.header.happenedAt, dates) })}</p>
${keptLine(words)}<p class="as-of">${fill(link.asOf, { date: sayMoment(on, dates) })}</p>
${languageLinks(words, (language) => `?language=${language}`)}
</header>
${navHtml('home', input)}<main class="paper">
${said}
</main>
${footerHtml(input, translatedLine(words))}`,
    ],
    scriptsFor(input, 'keep.js'),
  )
}

/** What a good link shows once the animal has died: a sentence, the telephone, and nothing that asks. */
export function quietPage(input: Pick<LinkInput, 'file' | 'words'>): string {
  const { quiet } = input.words.link
  const about = { name: nameOf(input) }
  return documentHtml(input.words, fill(quiet.title, about), [
    html`<main><p class="clinic">${input.file.clinic.name}</p>
<h1>${fill(quiet.title, about)}</h1>
<p class="hello">${fill(quiet.text, about)}</p>
<p>${quiet.talk}</p>
${phonesHtml(input)}
</main>`,
  ])
}
