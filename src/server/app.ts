import { type Context, Hono } from 'hono'
import { matchedRoutes } from 'hono/route'
import { secureHeaders } from 'hono/secure-headers'
import { type Connecting, offerConnect } from './connect/offer-connect.ts'
import type { Live } from './live.ts'
import { offerActions } from './offer-actions.ts'
import { fileHeaders, offerFiles } from './offer-files.ts'
import { offerLive } from './offer-live.ts'
import { offerOwnerPage } from './offer-owner-page.ts'
import { offerPapers } from './offer-papers.ts'
import { offerReports } from './offer-reports.ts'
import { offerVetForm } from './offer-vet-form.ts'
import { offerWeb } from './offer-web.ts'
import { openApi } from './openapi.ts'
import type { Press } from './press.ts'
import { answerError, problem } from './problem.ts'
import { onlySameHouse } from './same-house.ts'
import type { WebFile } from './web-files.ts'
import { connectionOf, type WorldParts, worldMaker } from './world.ts'

export type AppParts = {
  readonly world: WorldParts
  /** What health tells: which program and which store this is. */
  readonly about: { readonly store: 'sqlite' | 'postgres'; readonly schema: number }
  /** Further names this server goes by, beside addresses and names of the house. */
  readonly names: readonly string[]
  readonly log: (line: string) => void
  readonly live: Live
  readonly press: Pick<Press, 'set'>
  /** The built screens; undefined when they are not built. */
  readonly web: ReadonlyMap<string, WebFile> | undefined
  /** What the page for connecting a tablet says of this server. */
  readonly connecting: Pick<Connecting, 'addresses' | 'tls' | 'here'>
}

/** The program as HTTP: health, and every action by its name. Holds no rule of its own. */
export function app({ world, about, log, names, live, press, web, connecting }: AppParts): Hono {
  const app = new Hono()
  const worldOf = worldMaker(world)
  const { store, version } = world
  app.use(writtenDown(log))
  app.use('/api/files/*', fileHeaders)
  app.use('/api/papers/*', fileHeaders)
  app.use('/api/reports/*', fileHeaders)
  app.use(quietOverPlain)
  app.use(secureHeaders(headers))
  app.use(onlySameHouse(names))
  app.use('/api/*', async (c, next) => {
    await next()
    if (!c.res.headers.has('cache-control')) c.header('cache-control', 'no-store')
  })

  app.get('/api/health', async (c) => c.json({ version, ...about, clinics: (await store.clinics()).length }))
  app.get('/api/openapi.json', (c) => c.json(openApi(version)))
  offerActions(app, worldOf)
  offerFiles(app, worldOf)
  offerPapers(app, worldOf, press)
  offerReports(app, worldOf, press)
  offerLive(app, worldOf, live)
  offerConnect(app, { ...connecting, modeOf: connectionOf, files: web })
  offerOwnerPage(app, worldOf, { press, web })
  offerVetForm(app, worldOf)
  offerWeb(app, web)

  app.notFound((c) => c.json(problem('not-found', '', `There is nothing at ${c.req.method} ${c.req.path}.`), 404))
  app.onError((error, c) => answerError(error, c, log))
  return app
}

/** Two headers that browsers obey only where they hold a page for secure; elsewhere each page would complain of them. */
async function quietOverPlain(c: Context, next: () => Promise<void>): Promise<void> {
  await next()
  if (connectionOf(c) !== 'plain') return
  c.res.headers.delete('cross-origin-opener-policy')
  c.res.headers.delete('origin-agent-cluster')
}

/** Nothing from elsewhere, no script or style within a page, no page of ours inside another. */
const headers: NonNullable<Parameters<typeof secureHeaders>[0]> = {
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    scriptSrc: ["'self'"],
    styleSrc: ["'self'"],
    fontSrc: ["'self'"],
    imgSrc: ["'self'", 'blob:', 'data:'],
    connectSrc: ["'self'"],
    manifestSrc: ["'self'"],
    workerSrc: ["'self'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  xFrameOptions: 'DENY',
  permissionsPolicy: { camera: ['self'], geolocation: [], microphone: [], payment: [], usb: [] },
  // A clinic that goes back to plain HTTP must not be locked out by its own browsers.
  strictTransportSecurity: false,
}

/**
 * One line per request to the API and to a page behind a private link: what was asked and how it ended, never who, about whom, from
 * where or with which link.
 */
function writtenDown(log: (line: string) => void) {
  return async (c: Context, next: () => Promise<void>) => {
    const began = performance.now()
    await next()
    if (!c.req.path.startsWith('/api/') && !isLink(c.req.path)) return
    log(`${c.req.method} ${routeOf(c)} ${c.res.status} ${Math.round(performance.now() - began)} ms`)
  }
}

/** A private link, of an owner or of a referring practice: what follows is its token. */
function isLink(path: string): boolean {
  return path.startsWith('/o/') || path.startsWith('/v/')
}

/** The route as it is written in the program: a path itself may hold the id of a case. */
function routeOf(c: Context): string {
  if (isLink(c.req.path)) return `${c.req.path.slice(0, 3)}…`
  return matchedRoutes(c).findLast(({ path }) => path.startsWith('/api/') && path !== '/api/*')?.path ?? '/api/…'
}
