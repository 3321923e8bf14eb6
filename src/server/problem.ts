import type { Context } from 'hono'
import { InputError } from '#actions/input.ts'
import { Refused } from '#actions/refused.ts'
import { StoreError } from '#actions/store.ts'

/** Every error leaves in one shape: a stable code, the field, a sentence. */
export function problem(code: string, path: string, message: string) {
  return { error: { code, path, message } }
}

/** Gives what was thrown its status and its sentence. Only faults of the program are written to the log in full. */
export function answerError(error: Error, c: Context, log: (line: string) => void) {
  if (error instanceof InputError) return c.json(problem(error.code, error.path, error.message), 400)
  if (error instanceof Refused) return answerRefused(error, c)
  if (error instanceof StoreError) {
    log(`${error.code}: ${error.message}`)
    return c.json(problem(`store-${error.code}`, '', error.message), error.code === 'full' ? 507 : 503)
  }
  log(error.stack ?? error.message)
  return c.json(problem('fault', '', 'The program failed; nothing of this request was kept. The log says more.'), 500)
}

function answerRefused({ code, path, message, status, again }: Refused, c: Context) {
  if (again === null) return c.json(problem(code, path, message), status)
  // As a date, so that no second clock is asked; whole seconds, never too early.
  c.header('retry-after', new Date(Date.parse(again) + 999).toUTCString())
  return c.json({ error: { code, path, message, again } }, status)
}

/** Reads a body that must be JSON: no page of another site can send one without asking first. */
export async function jsonOf(c: Context): Promise<unknown> {
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
