import { promisify } from 'node:util'
import { constants, gzip } from 'node:zlib'
import type { Context } from 'hono'
import { accepts } from './accepts.ts'

const smaller = promisify(gzip)
/** Below this the network is no slower than the packing. */
const worthIt = 64 * 1024

/** JSON that is ready as text; a large one is packed for the air, away from the thread that answers everybody else. */
export async function sendText(c: Context, text: string): Promise<Response> {
  const headers = { 'content-type': 'application/json', vary: 'accept-encoding' }
  if (text.length < worthIt || !accepts(c, 'gzip')) return c.body(text, 200, headers)
  const packed = await smaller(text, { level: constants.Z_BEST_SPEED })
  return c.body(new Uint8Array(packed), 200, { ...headers, 'content-encoding': 'gzip' })
}
