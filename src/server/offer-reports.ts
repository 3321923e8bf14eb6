import type { Hono } from 'hono'
import { readInput } from '#actions/input.ts'
import { prepareReport } from '#actions/yearly/prepare-report.ts'
import { readYears } from '#actions/yearly/read-years.ts'
import { reportFile } from '#actions/yearly/report-file.ts'
import { refuseUnlessMay } from './offer-actions.ts'
import type { Press } from './press.ts'
import type { MakeWorld } from './world.ts'

/** Offers the files of a frozen report: `GET /api/reports/<year>/<file>`, to people signed in. */
export function offerReports(app: Hono, worldOf: MakeWorld, press: Pick<Press, 'set'>): void {
  app.get('/api/reports/:year/:file', async (c) => {
    const world = await worldOf(c, readYears)
    refuseUnlessMay(readYears, world)
    const { year } = readInput(prepareReport.input, { year: Number(c.req.param('year')) })
    const file = c.req.param('file')
    const { mediaType, content, shown } = await reportFile({ year, file }, world, (paper) => press.set(paper))
    const name = file.replaceAll(/[^\w.-]/g, '-')
    return c.body(content as Uint8Array<ArrayBuffer> | string, 200, {
      'content-type': mediaType.startsWith('text/') ? `${mediaType}; charset=utf-8` : mediaType,
      'content-disposition': `${shown ? 'inline' : 'attachment'}; filename="${name}"`,
    })
  })
}
