import type { Hono } from 'hono'
import { compress } from 'hono/compress'
import { ownerPageStyle } from '#documents/owner-page/style.ts'
import { offerBefore } from './owner-link/before.ts'
import { closedFor } from './owner-link/behind-link.ts'
import { offerCalendar } from './owner-link/calendar.ts'
import { offerHome } from './owner-link/home.ts'
import { offerNotes } from './owner-link/notes.ts'
import { offerQuestions } from './owner-link/questions.ts'
import { isOwnerScript, offerOwnerScripts } from './owner-link/scripts.ts'
import type { Press } from './press.ts'
import type { WebFile } from './web-files.ts'
import type { MakeWorld } from './world.ts'

/**
 * Offers the owner's pages behind `/o/<token>`, to whoever has the token. Nothing else of the clinic is behind it, and a
 * wrong token, one that ran out and one that was ended look the same. Must stand before the web app, which takes every
 * path. A page more: its name in `documents/owner-link/destinations.ts`, its file in `server/owner-link/`, its line here.
 */
export function offerOwnerPage(
  app: Hono,
  worldOf: MakeWorld,
  { press, web }: { readonly press: Pick<Press, 'set'>; readonly web: ReadonlyMap<string, WebFile> | undefined },
): void {
  app.use('/o/*', compress())
  app.use('/o/*', async (c, next) => {
    await next()
    c.header('x-robots-tag', 'noindex, nofollow, noarchive')
    if (c.req.path !== '/o/page.css' && !isOwnerScript(c.req.path)) c.header('cache-control', 'no-store')
  })
  app.get('/o/page.css', (c) =>
    c.body(ownerPageStyle, 200, { 'content-type': 'text/css; charset=utf-8', 'cache-control': 'no-cache' }),
  )
  offerOwnerScripts(app, web)
  offerBefore(app, worldOf)
  offerHome(app, worldOf, press)
  offerNotes(app, worldOf)
  offerQuestions(app, worldOf)
  offerCalendar(app, worldOf)
  app.all('/o/*', async (c) => c.html(await closedFor(c, await worldOf(c, { may: 'anyone' }), false), 404))
}
