import type { Context, Hono } from 'hono'
import { callerIn } from '#actions/caller.ts'
import { InputError } from '#actions/input.ts'
import { attachFile, largestFile } from '#actions/journal/attach-file.ts'
import { Refused } from '#actions/refused.ts'
import { limitedTo } from './offer-actions.ts'
import type { MakeWorld } from './world.ts'

/** What a browser may show; everything else is saved. A picture or paper runs nothing. */
const shown: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'application/pdf': 'pdf',
}
const saved: Readonly<Record<string, string>> = { 'text/plain': 'txt', 'text/csv': 'csv' }

/** Offers pictures and papers: `PUT /api/files` takes bytes in, `GET /api/files/<hash>` gives them, to people signed in. */
export function offerFiles(app: Hono, worldOf: MakeWorld): void {
  app.put('/api/files', limitedTo(largestFile), async (c) => {
    const { clinic, store } = await signedIn(c, worldOf)
    const bytes = new Uint8Array(await c.req.arrayBuffer())
    return c.json(await attachFile({ clinic, mediaType: mediaTypeOf(c), bytes }, { store }))
  })

  app.get('/api/files/:hash{[0-9a-f]{64}}', async (c) => {
    const { clinic, store } = await signedIn(c, worldOf)
    const hash = c.req.param('hash')
    const file = await store.file(clinic, hash)
    if (!file) throw new Refused(404, 'no-such-file', 'This picture or paper is not here: not sent yet, or erased.')
    const headers = { ...headersOf(file.mediaType, hash), etag: `"${hash}"` }
    if (c.req.header('if-none-match') === headers.etag) return c.body(null, 304, headers)
    return c.body(file.bytes as Uint8Array<ArrayBuffer>, 200, headers)
  })
}

async function signedIn(c: Context, worldOf: MakeWorld) {
  const world = await worldOf(c)
  const { caller, clinic } = callerIn(world)
  if (c.req.method !== 'GET' && caller.role === 'read-only') {
    throw new Refused(403, 'not-allowed', `${caller.person} may read and write nothing.`)
  }
  return { clinic, store: world.store }
}

function mediaTypeOf(c: Context): string {
  const mediaType = (c.req.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? ''
  if (mediaType !== '') return mediaType
  throw new InputError('missing-field', 'content-type', 'Say what is sent with the header content-type: image/jpeg.')
}

/** Whatever the bytes are, the browser takes them for what they were sent in as. */
function headersOf(mediaType: string, hash: string): Record<string, string> {
  const ending = shown[mediaType] ?? saved[mediaType] ?? 'bin'
  const how = mediaType in shown ? 'inline' : 'attachment'
  return {
    'content-type': mediaType.startsWith('text/') ? `${mediaType}; charset=utf-8` : mediaType,
    'content-disposition': `${how}; filename="${hash.slice(0, 12)}.${ending}"`,
    // Asked again each time, answered with 304: one that was erased, or a person who left, sees nothing any more.
    'cache-control': 'private, no-cache',
  }
}

/** Set last, in place of the app's own policy: a picture or paper that is opened alone may do nothing at all. */
export async function fileHeaders(c: Context, next: () => Promise<void>): Promise<void> {
  await next()
  c.header(
    'content-security-policy',
    "default-src 'none'; style-src 'unsafe-inline'; object-src 'self'; frame-ancestors 'self'",
  )
  c.header('x-frame-options', 'SAMEORIGIN')
  c.header('x-content-type-options', 'nosniff')
}
