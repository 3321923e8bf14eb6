import type { Context, Hono } from 'hono'
import { compress } from 'hono/compress'
import type { World } from '#actions/action.ts'
import { Refused } from '#actions/refused.ts'
import { keepVetAnswer } from '#actions/vet/keep-vet-answer.ts'
import { type OpenedVetLink, openVetLink } from '#actions/vet/open-vet-link.ts'
import { clinicRow } from '#core/journal/registers.ts'
import { readAnswer } from '#core/vet/read-answer.ts'
import { askedBy, type VetFormInput } from '#documents/vet-form/input.ts'
import { vetFormStyle } from '#documents/vet-form/style.ts'
import { closedVetForm, vetForm } from '#documents/vet-form/vet-form.ts'
import { limitedTo } from './offer-actions.ts'
import type { MakeWorld } from './world.ts'

/**
 * Offers the short form of a referring practice at `/v/<token>`, to whoever has the token. Nothing else of the clinic is
 * behind it, and a wrong token, one that ran out and one that was ended look the same. Must stand before the web app.
 */
export function offerVetForm(app: Hono, worldOf: MakeWorld): void {
  const turns = new Turns()
  app.use('/v/*', compress())
  app.use('/v/*', async (c, next) => {
    await next()
    c.header('x-robots-tag', 'noindex, nofollow, noarchive')
    if (c.req.path !== '/v/page.css') c.header('cache-control', 'no-store')
  })
  app.get('/v/page.css', (c) =>
    c.body(vetFormStyle, 200, { 'content-type': 'text/css; charset=utf-8', 'cache-control': 'no-cache' }),
  )
  app.get('/v/:token', (c) =>
    behindLink(c, worldOf, (opened) => {
      const sent = new URL(c.req.url).searchParams.get('sent') === 'kept' ? 'kept' : null
      return c.html(vetForm({ ...opened, ...nothingTyped, sent }))
    }),
  )
  app.post('/v/:token', limitedTo(64 * 1024), (c) =>
    // One after the other: what was sent twice finds what was kept the first time.
    turns.take(c.req.param('token'), () =>
      behindLink(c, worldOf, async (opened, world) => {
        const typed = new URLSearchParams(await c.req.text())
        const read = readAnswer(typed, askedBy(opened))
        if ('faults' in read) return c.html(vetForm({ ...opened, typed, faults: read.faults, sent: null }), 422)
        const kept = await keepVetAnswer(opened, read, world)
        // Asked for again with another address, so that going back or reading anew sends nothing twice.
        if (kept === 'kept') return c.redirect('?sent=kept#sent', 303)
        return c.html(vetForm({ ...opened, typed, faults: [], sent: kept }), kept === 'too-many' ? 429 : 409)
      }),
    ),
  )
  app.all('/v/*', async (c) => c.html(await closedFor(await worldOf(c, { may: 'anyone' }), false), 404))
}

const nothingTyped: Pick<VetFormInput, 'typed' | 'faults'> = { typed: null, faults: [] }

type Then = (opened: OpenedVetLink, world: World) => Response | Promise<Response>

async function behindLink(c: Context, worldOf: MakeWorld, then: Then): Promise<Response> {
  const world = await worldOf(c, { may: 'anyone' })
  try {
    const opened = await openVetLink(c.req.param('token') ?? '', world)
    if (opened) return await then(opened, world)
    return c.html(await closedFor(world, false), 404)
  } catch (error) {
    if (!(error instanceof Refused) || error.again === null) throw error
    c.header('retry-after', new Date(Date.parse(error.again) + 999).toUTCString())
    return c.html(await closedFor(world, true), 429)
  }
}

/** With the phone of the clinic where there is only one: a wrong token says nothing of which it was meant for. */
async function closedFor({ store, clinic }: World, tooMany: boolean): Promise<string> {
  const row = clinic === null ? undefined : (await store.current(clinic, 'clinic'))[0]
  return closedVetForm(row ? clinicRow.parse(row.body) : null, tooMany)
}

/** One at a time for each key. */
class Turns {
  readonly #last = new Map<string, Promise<unknown>>()

  async take<Result>(key: string, work: () => Promise<Result>): Promise<Result> {
    const before = this.#last.get(key)
    const mine = (before ?? Promise.resolve()).then(work, work)
    this.#last.set(key, mine)
    try {
      return await mine
    } finally {
      if (this.#last.get(key) === mine) this.#last.delete(key)
    }
  }
}
