import type { Hono } from 'hono'
import { readInput } from '#actions/input.ts'
import { listPapers } from '#actions/papers/list-papers.ts'
import { paperFile } from '#actions/papers/paper-file.ts'
import { refuseUnlessMay } from './offer-actions.ts'
import type { Press } from './press.ts'
import type { MakeWorld } from './world.ts'

/** Offers the papers of a case as files: `GET /api/papers/<stream>/<name>.pdf`, to people signed in. */
export function offerPapers(app: Hono, worldOf: MakeWorld, press: Pick<Press, 'set'>): void {
  app.get('/api/papers/:stream/:file', async (c) => {
    const world = await worldOf(c, listPapers)
    refuseUnlessMay(listPapers, world)
    const { stream } = readInput(listPapers.input, { stream: c.req.param('stream') })
    const file = c.req.param('file')
    const { mediaType, content, shown } = await paperFile({ stream, file }, world, (paper) => press.set(paper))
    const name = file.replaceAll(/[^\w.-]/g, '-')
    return c.body(content as Uint8Array<ArrayBuffer> | string, 200, {
      'content-type': mediaType.startsWith('text/') ? `${mediaType}; charset=utf-8` : mediaType,
      'content-disposition': `${shown ? 'inline' : 'attachment'}; filename="${name}"`,
    })
  })
}
