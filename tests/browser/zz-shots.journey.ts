import { openInvented, sendEntries, entriesOf, test } from './clinic.ts'
import { copyUntil } from './states/case-until.ts'
import { writeFileSync } from 'node:fs'

test('shots', async ({ page, program }) => {
  test.setTimeout(300_000)
  await openInvented(program, page)
  await copyUntil(program, page, 'Fennel', 'count')
  await copyUntil(program, page, 'Linden', 'operation-summary')
  const shots: [string, string][] = [
    ['specimens', '/case/fennel/room/operation-fennel/specimens'],
    ['specimens-done', '/case/barley/room/operation-barley/specimens'],
    ['incident', '/case/fennel/room/operation-fennel/incident'],
    ['incident-point', '/case/linden/room/operation-linden/incident?point=specimen-unlabelled&of=B-1'],
    ['signout', '/case/linden/room/operation-linden/pause/before-leaving?at=end'],
    ['signout-done', '/case/barley/room/operation-barley/pause/before-leaving?at=end'],
    ['told', '/case/linden/room/operation-linden/told'],
    ['room', '/case/fennel/room/operation-fennel'],
    ['summary', '/case/fennel/write/operation-summary?operation=operation-fennel'],
    ['theatre', '/theatre'],
    ['owed', '/'],
  ]
  for (const [name, path] of shots) {
    for (const [size, width, height] of [['phone', 390, 844], ['tablet', 820, 1180], ['desk', 1280, 900]] as const) {
      if (size !== (process.env.SIZE ?? 'tablet') && process.env.SIZE !== 'all') continue
      await page.setViewportSize({ width, height })
      await page.goto(program.url + path)
      await page.waitForTimeout(900)
      await page.screenshot({ path: `/tmp/so-shots/${name}-${size}.png`, fullPage: true })
    }
  }
  for (const form of ['pdf', 'txt']) {
    const r = await page.context().request.get(`${program.url}/api/papers/case%3Abarley/specimen-labels-operation-barley.${form}`)
    writeFileSync(`/tmp/so-shots/labels.${form}`, await r.body())
    const o = await page.context().request.get(`${program.url}/api/papers/case%3Alinden/operation-report-operation-linden.${form}`)
    writeFileSync(`/tmp/so-shots/report.${form}`, await o.body())
  }
})
