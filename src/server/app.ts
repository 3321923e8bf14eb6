import { type Context, Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { secureHeaders } from 'hono/secure-headers'
import { actions } from '#actions/index.ts'
import { InputError } from '#actions/input.ts'
import { type Clock, type Store, StoreError } from '#actions/store.ts'

export type AppParts = {
  readonly store: Store
  readonly clock: Clock
  /** What health tells: which program and which store this is. */
  readonly about: { readonly version: string; readonly store: 'sqlite' | 'postgres'; readonly schema: number }
  readonly log: (line: string) => void
}

const largestBody = 8 * 1024 * 1024

/** The program as HTTP: health, and every action by its name. Holds no rule of its own. */
export function app({ store, clock, about, log }: AppParts): Hono {
  const app = new Hono()
  app.use(secureHeaders())
  app.use(onlyThisMachine)
  const tooLarge = (c: Context) =>
    c.json(problem('too-large', '', 'A request may hold 8 MiB at most: send fewer entries at a time.'), 413)
  app.use('/api/*', bodyLimit({ maxSize: largestBody, onError: tooLarge }))

  app.get('/api/health', async (c) => c.json({ ...about, clinics: (await store.clinics()).length }))

  app.post('/api/actions/accept-entries', async (c) => {
    const entries = await actions['accept-entries'](await jsonOf(c), { store, clock })
    const all = entries.every(({ outcome }) => outcome === 'accepted' || outcome === 'already')
    return c.json({ entries }, all ? 200 : 409)
  })

  app.notFound((c) => c.json(problem('not-found', '', `There is nothing at ${c.req.method} ${c.req.path}.`), 404))
  app.onError((error, c) => answerError(error, c, log))
  return app
}

/**
 * There are no accounts yet, so only this machine may speak: the server listens on the loopback address, and a page of
 * another site, or a foreign name that points here, is turned away.
 */
async function onlyThisMachine(c: Context, next: () => Promise<void>) {
  const host = (c.req.header('host') ?? '').replace(/:\d+$/, '')
  const origin = c.req.header('origin')
  const local = ['127.0.0.1', 'localhost', '[::1]']
  const foreign = origin !== undefined && !local.includes(hostOf(origin))
  if (local.includes(host) && !foreign) return next()
  return c.json(problem('not-this-machine', '', 'Only programs on this machine may use this server.'), 403)
}

function hostOf(origin: string): string {
  return URL.canParse(origin) ? new URL(origin).hostname : ''
}

async function jsonOf(c: Context): Promise<unknown> {
  if (!/^application\/json\b/.test(c.req.header('content-type') ?? '')) {
    throw new InputError('not-json', '', 'The request must be JSON, with the header content-type: application/json.')
  }
  try {
    return await c.req.json()
  } catch (error) {
    if (error instanceof SyntaxError) throw new InputError('not-json', '', `The request is not JSON: ${error.message}`)
    throw error
  }
}

function answerError(error: Error, c: Context, log: (line: string) => void) {
  if (error instanceof InputError) return c.json(problem(error.code, error.path, error.message), 400)
  if (error instanceof StoreError) {
    log(`${error.code}: ${error.message}`)
    return c.json(problem(`store-${error.code}`, '', error.message), error.code === 'full' ? 507 : 503)
  }
  log(error.stack ?? error.message)
  return c.json(problem('fault', '', 'The program failed; nothing of this request was kept. The log says more.'), 500)
}

function problem(code: string, path: string, message: string) {
  return { error: { code, path, message } }
}
