import type { Context } from 'hono'
import type { World } from '#actions/action.ts'
import { type OpenedLink, openOwnerLink } from '#actions/owner/open-owner-link.ts'
import { Refused } from '#actions/refused.ts'
import { clinicRow } from '#core/journal/registers.ts'
import type { LinkInput } from '#documents/owner-link/destinations.ts'
import { quietPage } from '#documents/owner-link/home.ts'
import { type Asked, askedOf } from '#documents/owner-page/asked.ts'
import { closedPage } from '#documents/owner-page/owner-page.ts'
import { languageFor, type OwnerPageWords, ownerPageInLanguages } from '#documents/owner-page/words.ts'
import type { MakeWorld } from '../world.ts'

/** What a page behind a link is given: the link that opened it, what its address asks, and what pages are made from. */
export type Behind = {
  readonly opened: OpenedLink
  readonly asked: Asked
  readonly input: LinkInput & { readonly asked: Asked }
  readonly world: World
}

/**
 * Opens the link of the address and lets `then` answer. A link that opens nothing gets the closed page, whatever it was;
 * a good one whose animal has died gets the quiet page, wherever it was to lead, unless `then` answers for that too.
 */
export async function behindLink(
  c: Context,
  worldOf: MakeWorld,
  then: (behind: Behind) => Response | Promise<Response>,
  after: 'quiet-after-death' | 'also-after-death' = 'quiet-after-death',
): Promise<Response> {
  const world = await worldOf(c, { may: 'anyone' })
  try {
    const opened = await openOwnerLink(c.req.param('token') ?? '', world)
    if (!opened) return c.html(await closedFor(c, world, false), 404)
    const asked = askedOf(new URL(c.req.url).searchParams)
    const input = inputOf(opened, asked)
    if (opened.died && after === 'quiet-after-death') return c.html(quietPage(input), 410)
    return await then({ opened, asked, input, world })
  } catch (error) {
    if (!(error instanceof Refused) || error.again === null) throw error
    c.header('retry-after', new Date(Date.parse(error.again) + 999).toUTCString())
    return c.html(await closedFor(c, world, true), 429)
  }
}

function inputOf({ link, file, now }: OpenedLink, asked: Asked): Behind['input'] {
  const { zone } = file.clinic
  return {
    file,
    on: { at: now, zone, precision: 'minute', by: 'clock' },
    contact: link.contact,
    use: link.use,
    until: { at: link.expiresAt, zone, precision: 'minute', by: 'clock' },
    asked,
    words: wordsFor(file, asked),
  }
}

function wordsFor({ theCase }: OpenedLink['file'], { language }: Asked): OwnerPageWords {
  return ownerPageInLanguages[languageFor(language, theCase.latest('household')?.body.language)]
}

/**
 * With the phone of the clinic where there is only one: a wrong token says nothing of which it was meant for. It is in the
 * language of the browser, because nobody knows whose link it was.
 */
export async function closedFor(c: Context, { store, clinic }: World, tooMany: boolean): Promise<string> {
  const language = languageFor(null, c.req.header('accept-language')?.split(/[,;]/)[0])
  const row = clinic === null ? undefined : (await store.current(clinic, 'clinic'))[0]
  return closedPage(ownerPageInLanguages[language], row ? clinicRow.parse(row.body) : null, tooMany)
}
