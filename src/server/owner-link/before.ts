import type { Context, Hono } from 'hono'
import { keepWishes } from '#actions/owner/keep-wishes.ts'
import { entryId } from '#core/journal/entry-id.ts'
import { isHome } from '#documents/owner-link/destinations.ts'
import { hrefOf } from '#documents/owner-page/asked.ts'
import { ownerPage } from '#documents/owner-page/owner-page.ts'
import { wishesOf } from '#documents/owner-page/wishes.ts'
import { limitedTo } from '../offer-actions.ts'
import type { MakeWorld } from '../world.ts'
import { type Behind, behindLink } from './behind-link.ts'

/** The page of the choice, and what an owner sends from it: where the link leads until the animal is at home. */
export function offerBefore(app: Hono, worldOf: MakeWorld): void {
  app.get('/o/:token', (c) =>
    behindLink(c, worldOf, (behind) =>
      isHome(behind.input) ? c.redirect(`/o/${c.req.param('token')}/home`, 302) : c.html(pageOf(behind)),
    ),
  )
  app.get('/o/:token/before', (c) => behindLink(c, worldOf, (behind) => c.html(pageOf(behind))))
  for (const path of ['/o/:token', '/o/:token/before'] as const) {
    app.post(path, limitedTo(64 * 1024), (c) => behindLink(c, worldOf, (behind) => keep(c, behind)))
  }
}

function pageOf({ input, opened: { now }, world: { secrets } }: Behind): string {
  return ownerPage({
    ...input,
    on: { ...input.on, precision: 'day' },
    entry: entryId(Date.parse(now), secrets.bytes(10)),
  })
}

async function keep(c: Context, { opened, asked, input, world }: Behind): Promise<Response> {
  const form = new URLSearchParams(await c.req.text())
  const body = wishesOf(form, input.words.page.language)
  const what = body === undefined ? 'nothing' : body === 'too-long' ? body : 'kept'
  const id = form.get('entry') ?? ''
  const kept = typeof body !== 'object' || (await keepWishes(opened, { id, body }, world))
  const [query = ''] = hrefOf(asked, {}, '').split('#')
  // Asked for again with another address, so that going back or reading anew sends nothing twice.
  return c.redirect(`${query === '?' ? '?' : `${query}&`}sent=${kept ? what : 'nothing'}#wishes`, 303)
}
