import type { Hono } from 'hono'
import { isPaper } from '#documents/case/paper-input.ts'
import { leafletBehindLink } from '#documents/owner-link/destinations.ts'
import { homeBehindLink } from '#documents/owner-link/home.ts'
import type { Press } from '../press.ts'
import type { MakeWorld } from '../world.ts'
import { behindLink, closedFor } from './behind-link.ts'

/** The page for home, and the leaflet as a file to keep. */
export function offerHome(app: Hono, worldOf: MakeWorld, press: Pick<Press, 'set'>): void {
  app.get('/o/:token/home', (c) =>
    behindLink(c, worldOf, async ({ input, world }) => {
      const page = homeBehindLink(input)
      return page === null ? c.html(await closedFor(c, world, false), 404) : c.html(page)
    }),
  )
  app.get('/o/:token/leaflet.pdf', (c) =>
    behindLink(c, worldOf, async ({ input, world }) => {
      const leaflet = leafletBehindLink(input)
      if (!isPaper(leaflet)) return c.html(await closedFor(c, world, false), 404)
      return c.body((await press.set(leaflet)) as Uint8Array<ArrayBuffer>, 200, {
        'content-type': 'application/pdf',
        'content-disposition': 'inline; filename="leaflet.pdf"',
      })
    }),
  )
}
