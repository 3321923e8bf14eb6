import { isIP } from 'node:net'
import type { Context } from 'hono'
import { problem } from './problem.ts'

/** Names that the public name service never gives out: nobody can point one at this server from outside. */
const housePlaces = ['lan', 'local', 'localdomain', 'home', 'home.arpa', 'internal', 'intranet', 'corp']

/**
 * Turns away pages of other sites, and foreign names that were pointed at this server: what asks must have come from
 * this very host. Programs that are no browser send no Origin and must send JSON.
 */
export function onlySameHouse(names: readonly string[]) {
  return async (c: Context, next: () => Promise<void>) => {
    const host = c.req.header('host') ?? ''
    if (!isOurName(nameOf(host), names)) return refuse(c, 'This server does not go by that name; add it with --name.')
    const origin = c.req.header('origin')
    // The owner's page, and that of a referring practice, tells nobody where it was, so its own form comes as from nowhere (Fetch, "append a request Origin
    // header"). Whoever can send it holds the token, which no other site knows.
    const linkForm = origin === 'null' && /^\/[ov]\//.test(c.req.path)
    if (origin !== undefined && !linkForm && !sameHost(origin, host))
      return refuse(c, 'Another site may not use this server.')
    const site = c.req.header('sec-fetch-site')
    const asked = c.req.path.startsWith('/api/') && site !== undefined && site !== 'same-origin' && site !== 'none'
    if (asked) return refuse(c, 'Another site may not use this server.')
    return next()
  }
}

function refuse(c: Context, message: string) {
  return c.json(problem('other-site', '', message), 403)
}

function nameOf(host: string): string {
  return URL.canParse(`http://${host}`) ? new URL(`http://${host}`).hostname.replaceAll(/^\[|\]$/g, '') : ''
}

/** An address, a name of this house, or one the clinic named itself. */
function isOurName(name: string, names: readonly string[]): boolean {
  if (name === '') return false
  if (isIP(name) !== 0 || !name.includes('.') || names.includes(name)) return true
  return housePlaces.some((place) => name.endsWith(`.${place}`))
}

function sameHost(origin: string, host: string): boolean {
  if (!URL.canParse(origin)) return false
  const { protocol, host: from } = new URL(origin)
  if (protocol !== 'http:' && protocol !== 'https:') return false
  const here = `${protocol}//${host}`
  return URL.canParse(here) && new URL(here).host === from
}
