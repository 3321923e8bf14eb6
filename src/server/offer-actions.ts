import type { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import type { Action, World } from '#actions/action.ts'
import { actions } from '#actions/index.ts'
import { readInput } from '#actions/input.ts'
import { Refused } from '#actions/refused.ts'
import { jsonOf, problem } from './problem.ts'
import { sendText } from './send-text.ts'
import type { MakeWorld } from './world.ts'

const usualLargest = 256 * 1024

/** Offers every action at `POST /api/actions/<name>`: who may, is asked before what was sent is read. */
export function offerActions(app: Hono, worldOf: MakeWorld): void {
  for (const action of actions) {
    app.post(`/api/actions/${action.name}`, limitedTo(action.largest ?? usualLargest), async (c) => {
      const world = await worldOf(c, action)
      refuseUnlessMay(action, world)
      const input = readInput(action.input, await jsonOf(c))
      if (action.text) return sendText(c, await action.text(input, world))
      const output = await action.run(input, world)
      return c.json(output as object, action.conflict?.(output) ? 409 : 200)
    })
  }
}

/** Turns a request away whose body is larger than it may be, before it is read. */
export function limitedTo(bytes: number) {
  const most = bytes < 1024 * 1024 ? `${bytes / 1024} KiB` : `${bytes / 1024 / 1024} MiB`
  const message = `A request here may hold ${most} at most: send less at a time.`
  return bodyLimit({ maxSize: bytes, onError: (c) => c.json(problem('too-large', '', message), 413) })
}

/** Who may use an action; a keeper may whatever a manager may. Throws the refusal. */
export function refuseUnlessMay({ name, may }: Pick<Action, 'name' | 'may'>, { caller }: Pick<World, 'caller'>): void {
  if (may === 'anyone') return
  if (!caller) throw new Refused(401, 'not-signed-in', 'Sign in first: nobody is signed in at this device.')
  if (may === 'signed-in' || may.includes(caller.role) || (may.includes('manager') && caller.keeper)) return
  const message = `${name} is for ${may.join(', ')}; ${caller.person} is ${caller.role}.`
  throw new Refused(403, 'not-allowed', message)
}
