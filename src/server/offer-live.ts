import type { Hono } from 'hono'
import { callerIn } from '#actions/caller.ts'
import type { Live } from './live.ts'
import type { MakeWorld } from './world.ts'

/** Offers `GET /api/live`: what changed in the caller's clinic, as server-sent events, while the session lasts. */
export function offerLive(app: Hono, worldOf: MakeWorld, live: Live): void {
  app.get('/api/live', async (c) => {
    const { clinic } = callerIn(await worldOf(c))
    const stillMay = async () => (await worldOf(c)).caller !== null
    return live.listen(clinic, stillMay)
  })
}
