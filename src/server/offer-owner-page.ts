import type { Context, Hono } from 'hono'
import { compress } from 'hono/compress'
import type { World } from '#actions/action.ts'
import { keepWishes } from '#actions/owner/keep-wishes.ts'
import { type OpenedLink, openOwnerLink } from '#actions/owner/open-owner-link.ts'
import { Refused } from '#actions/refused.ts'
import { entryId } from '#core/journal/entry-id.ts'
import { clinicRow } from '#core/journal/registers.ts'
import { type Asked, askedOf, hrefOf } from '#documents/owner-page/asked.ts'
import { closedPage, ownerPage } from '#documents/owner-page/owner-page.ts'
import { ownerPageStyle } from '#documents/owner-page/style.ts'
import { wishesOf } from '#documents/owner-page/wishes.ts'
import { languageFor, type OwnerPageWords, ownerPageInLanguages } from '#documents/owner-page/words.ts'
import { limitedTo } from './offer-actions.ts'
import type { MakeWorld } from './world.ts'

/**
 * Offers the owner's page at `/o/<token>`, to whoever has the token. Nothing else of the clinic is behind it, and a wrong
 * token, one that ran out and one that was ended look the same. Must stand before the web app, which takes every path.
 */
export function offerOwnerPage(app: Hono, worldOf: MakeWorld): void {
  app.use('/o/*', compress())
  app.use('/o/*', async (c, next) => {
    await next()
    c.header('x-robots-tag', 'noindex, nofollow, noarchive')
    if (c.req.path !== '/o/page.css') c.header('cache-control', 'no-store')
  })
  app.get('/o/page.css', (c) =>
    c.body(ownerPageStyle, 200, { 'content-type': 'text/css; charset=utf-8', 'cache-control': 'no-cache' }),
  )
  app.get('/o/:token', (c) => behindLink(c, worldOf, (opened, asked, world) => c.html(pageOf(opened, asked, world))))
  app.post('/o/:token', limitedTo(64 * 1024), (c) =>
    behindLink(c, worldOf, async (opened, asked, world) => {
      const form = new URLSearchParams(await c.req.text())
      const body = wishesOf(form, wordsFor(opened, asked).page.language)
      const what = body === undefined ? 'nothing' : body === 'too-long' ? body : 'kept'
      const id = form.get('entry') ?? ''
      const kept = typeof body !== 'object' || (await keepWishes(opened, { id, body }, world))
      const [query = ''] = hrefOf(asked, {}, '').split('#')
      // Asked for again with another address, so that going back or reading anew sends nothing twice.
      return c.redirect(`${query === '?' ? '?' : `${query}&`}sent=${kept ? what : 'nothing'}#wishes`, 303)
    }),
  )
  app.all('/o/*', async (c) => c.html(await closedFor(c, await worldOf(c, { may: 'anyone' }), false), 404))
}

type Then = (opened: OpenedLink, asked: Asked, world: World) => Response | Promise<Response>

async function behindLink(c: Context, worldOf: MakeWorld, then: Then): Promise<Response> {
  const world = await worldOf(c, { may: 'anyone' })
  try {
    const opened = await openOwnerLink(c.req.param('token') ?? '', world)
    if (opened) return await then(opened, askedOf(new URL(c.req.url).searchParams), world)
    return c.html(await closedFor(c, world, false), 404)
  } catch (error) {
    if (!(error instanceof Refused) || error.again === null) throw error
    c.header('retry-after', new Date(Date.parse(error.again) + 999).toUTCString())
    return c.html(await closedFor(c, world, true), 429)
  }
}

function wordsFor({ file }: OpenedLink, { language }: Asked): OwnerPageWords {
  const tag = languageFor(language, file.theCase.latest('household')?.body.language)
  return ownerPageInLanguages[tag]
}

function pageOf(opened: OpenedLink, asked: Asked, { secrets }: World): string {
  const { link, file, now } = opened
  const { zone } = file.clinic
  return ownerPage({
    file,
    on: { at: now, zone, precision: 'day', by: 'clock' },
    contact: link.contact,
    use: link.use,
    until: { at: link.expiresAt, zone, precision: 'minute', by: 'clock' },
    asked,
    words: wordsFor(opened, asked),
    entry: entryId(Date.parse(now), secrets.bytes(10)),
  })
}

/**
 * With the phone of the clinic where there is only one: a wrong token says nothing of which it was meant for. It is in the
 * language of the browser, because nobody knows whose link it was.
 */
async function closedFor(c: Context, { store, clinic }: World, tooMany: boolean): Promise<string> {
  const language = languageFor(null, c.req.header('accept-language')?.split(/[,;]/)[0])
  const row = clinic === null ? undefined : (await store.current(clinic, 'clinic'))[0]
  return closedPage(ownerPageInLanguages[language], row ? clinicRow.parse(row.body) : null, tooMany)
}
