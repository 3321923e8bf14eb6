import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { askedAgain, entriesOf, expect, openInvented, sendEntries, test } from './clinic.ts'

const room = '/case/juniper/room/operation-juniper'

test('three observations are typed without the network, an artefact is marked, a gap stays a gap, and she blinks', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  // Anaesthesia began twenty minutes ago, with one look two minutes later and none since.
  const [first] = (await entriesOf(program, page, 'case:juniper')).filter(({ header }) => header.kind === 'weight')
  if (!first) throw new Error('Juniper was never weighed.')
  const ago = (minutes: number) => new Date(Date.now() - minutes * 60_000).toISOString()
  const write = (tail: string, minutes: number, header: object, body: object) => ({
    ...first,
    header: {
      ...first.header,
      id: first.header.id.slice(0, -4) + tail,
      subject: { kind: 'operation', animal: 'animal-juniper', operation: 'operation-juniper' },
      happenedAt: { at: ago(minutes), zone: 'Europe/London', precision: 'second', by: 'person' },
      writtenAt: ago(minutes),
      ...header,
    },
    body,
  })
  const mean = {
    what: 'mean',
    value: { value: '72', unit: 'mm[Hg]' },
    method: 'oscillometric, right forelimb',
    artefact: false,
  }
  const look = { where: 'theatre', pain: null, first: null, side: null, unmeasured: null, text: null }
  await sendEntries(program, page, [
    write(
      'bbb1',
      20,
      { kind: 'theatre-stamp', version: 1 },
      { checkpoint: 'anaesthesia-start', answer: 'done', detail: {}, text: null },
    ),
    write('bbb2', 18, { kind: 'observation', version: 2 }, { ...look, values: [mean] }),
  ] as Parameters<typeof sendEntries>[2])

  await page.setViewportSize({ width: 820, height: 1180 })
  await page.goto(program.url + room)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  // The parts of the app are loaded ahead a second after the page stands; then the network may go.
  await page.waitForTimeout(3_000)
  await program.kill()
  await page.getByRole('link', { name: 'Last observation' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Anaesthetic ledger')

  const table = page.getByRole('table')
  await expect(table.getByText(/^NOTHING MEASURED since \d\d:\d\d: 1[78] min$/)).toBeVisible()
  const box = (name: string) => page.getByLabel(name, { exact: true })
  const keep = page.getByRole('button', { name: 'Keep now' })
  expect((await keep.boundingBox())?.height).toBeGreaterThanOrEqual(56)
  // The last value stands beside the box, and never in it.
  await expect(page.getByText(/^last 72 at \d\d:\d\d$/)).toBeVisible()
  await expect(box('Mean')).toHaveValue('')
  await expect(box('Mean')).toHaveAttribute('inputmode', 'decimal')

  await keep.click()
  await expect(page.getByText(/^Type at least one value/)).toBeVisible()
  await box('Heart rate, a minute').fill('96')
  await box('Mean').fill('7.2')
  await expect(page.getByText(/^Mean pressure is a tenth of the last one \(72 mmHg\)/)).toBeVisible()
  await box('Mean').fill('70')
  await keep.click()
  await expect(page.getByText(/^Say how the pressure was measured/)).toBeVisible()
  await page.reload()
  await expect(box('Heart rate, a minute')).toHaveValue('96')
  await expect(box('Mean')).toHaveValue('70')
  await page.getByRole('button', { name: 'oscillometric, right forelimb' }).click()
  const before = Date.now()
  await keep.click()
  await expect(page.getByText(/^Kept at \d\d:\d\d\.$/)).toBeVisible()
  expect(Date.now() - before).toBeLessThan(2_000)
  await expect(box('Mean')).toHaveValue('')
  // The gap has its end now, and stays.
  await expect(table.getByText(/^NOTHING MEASURED from \d\d:\d\d to \d\d:\d\d: 1[78] min$/)).toBeVisible()

  await box('Heart rate, a minute').fill('240')
  await box('Temperature, °C').fill('37.1')
  await keep.dblclick()
  await expect(table.getByText('240 a minute')).toBeVisible()
  await box('Heart rate, a minute').fill('98')
  await keep.click()
  await expect(table.getByText('98 a minute')).toBeVisible()
  await page.getByRole('button', { name: 'Nothing could be measured' }).click()
  await page.getByRole('button', { name: 'Keep: nothing could be measured' }).click()
  await page.getByLabel('Why nothing could be measured').fill('The cable was under the drapes.')
  await page.getByRole('button', { name: 'Keep: nothing could be measured' }).click()
  await expect(table.getByText('Nothing could be measured: The cable was under the drapes.')).toBeVisible()

  await page.reload()
  const row = table.getByRole('row').filter({ hasText: '240 a minute' })
  await expect(row).toContainText('kept here')
  await row.getByRole('button', { name: /^Mark an artefact/ }).click()
  await expectAccessible(page)
  await row.getByRole('button', { name: 'Heart rate 240 a minute is an artefact' }).click()
  await expect(row).toContainText('ARTEFACT')
  await expect(page.getByRole('img', { name: /^One strip for each of: heart rate, mean pressure/ })).toBeVisible()

  await page.getByRole('button', { name: 'Tube out now' }).click()
  await expect(page.getByText(/^Tube out at \d\d:\d\d/)).toBeVisible()
  const events = page.getByRole('region', { name: 'Recovery' }).getByRole('listitem')
  await expect(events.filter({ hasText: 'First blink, RIGHT eye' })).toContainText('Waiting: 0 min since tube out')
  await page.getByRole('button', { name: 'First blink, RIGHT eye: now' }).dblclick()
  await expect(events.filter({ hasText: 'First blink' })).toContainText(/0 min after tube out, Runa Falk/)
  await page.getByRole('button', { name: 'Lies on the breastbone: now' }).click()
  // The second tap of a trembling finger takes nothing back; a person is slower than that.
  await page.waitForTimeout(600)
  await page.getByRole('button', { name: 'Take back: Lies on the breastbone' }).click()
  await expect(page.getByRole('button', { name: 'Lies on the breastbone: now' })).toBeVisible()
  await expectAccessible(page)
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  await program.start()
  await expect(page.getByText('kept here')).toHaveCount(0, { timeout: 30_000 })
  const seen = (await entriesOf(program, page, 'case:juniper')).filter(({ header }) => header.kind === 'observation')
  // A trembling finger writes one blink.
  expect(seen.filter(({ body }) => body.first === 'blink')).toHaveLength(1)
  expect(seen.filter(({ body }) => JSON.stringify(body).includes('37.1'))).toHaveLength(2)
  const amended = seen.filter(({ header }) => header.supersedes.length > 0)
  expect(amended.map(({ header }) => header.reason)).toEqual(['Marked as an artefact.'])
  expect(amended[0]?.header.happenedAt).toEqual(
    seen.find(({ header }) => header.id === amended[0]?.header.supersedes[0])?.header.happenedAt,
  )

  ensureDebian(['poppler-utils'])
  await page.goto(`${program.url}/case/juniper`)
  await page.getByText('Show the papers of this case').click()
  const link = page.getByRole('link', { name: /^Anaesthetic record.*PDF$/ })
  await expect(link).toBeVisible()
  const answer = await page
    .context()
    .request.get(new URL((await link.getAttribute('href')) ?? '', program.url).href, askedAgain)
  expect(answer.headers()['content-type']).toBe('application/pdf')
  const file = join(program.folder, 'record.pdf')
  writeFileSync(file, await answer.body())
  const printed = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replaceAll(/\s+/g, ' ')
  expect(printed).toContain('Draft')
  expect(printed).toMatch(/NOTHING MEASURED from \d\d:\d\d to \d\d:\d\d: 1[78] min/)
  expect(printed).toContain('Heart rate 240 a minute ARTEFACT')
  expect(printed).toMatch(/First blink, RIGHT eye .*0 min after tube out/)
})

test('what was typed and kept only later can be kept as of when it was typed', async ({ page, program }) => {
  await openInvented(program, page)
  await page.clock.install()
  await page.goto(`${program.url}${room}/ledger`)
  const typed = Date.now()
  await page.getByLabel('Heart rate, a minute', { exact: true }).fill('96')
  await expect(page.getByText(/^This was typed at/)).toHaveCount(0)
  await page.clock.fastForward('08:00')
  await expect(page.getByText(/^This was typed at \d\d:\d\d, and not kept then\.$/)).toBeVisible()
  await page.getByRole('button', { name: /^Keep as of \d\d:\d\d$/ }).click()
  await expect(page.getByText(/^Kept at \d\d:\d\d\.$/)).toBeVisible()
  const looks = async () =>
    (await entriesOf(program, page, 'case:juniper')).filter(({ header }) => header.kind === 'observation')
  await expect.poll(async () => (await looks()).length, { timeout: 30_000 }).toBe(1)
  const [look] = await looks()
  expect(Math.abs(Date.parse(look?.header.happenedAt.at ?? '') - typed)).toBeLessThan(60_000)
})
