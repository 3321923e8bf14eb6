import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test } from './clinic.ts'

const _room = '/case/juniper/room/operation-juniper'

test('a nurse stamps an operation beside the table, without the network, and nothing is lost by a reload', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/juniper`)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await page
    .getByRole('link', { name: /^Open the theatre record/ })
    .first()
    .click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('In theatre')
  await expect(page.getByText(/^No clock runs/)).toBeVisible()
  await expectAccessible(page)

  const done = (what: string) => page.getByRole('button', { name: `Done now: ${what}` })
  const row = (what: string) =>
    page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: what, exact: true }) })
  const box = await done('Anaesthesia began').boundingBox()
  expect(box?.height).toBeGreaterThanOrEqual(56)
  // What stands open before a mark asks for a reason; the moment is that of the tap.
  await done('Premedication given').click()
  await expect(page.getByText(/^Not yet there: the side settled/)).toBeVisible()
  await expectAccessible(page)
  await page.reload()
  await page.getByRole('button', { name: /^Everybody here named the same ear aloud/ }).click()
  await expect(row('Premedication given')).toContainText('Went on without: the side settled.')
  await done('Anaesthesia began').click()
  await page.getByRole('button', { name: /^Everybody here named the same ear aloud/ }).click()
  await expect(row('Anaesthesia began')).toContainText('Runa Falk')
  await expect(row('Anaesthesia began')).toContainText('sent', { timeout: 10_000 })
  await expect(page.getByRole('region', { name: 'Clocks' })).toContainText('Anaesthesia')

  await program.kill()
  const before = Date.now()
  await done('Skin').click()
  await expect(row('Skin')).toContainText('kept here')
  expect(Date.now() - before).toBeLessThan(2_000)
  await done('Incision').click()
  await page.getByRole('button', { name: 'It was spoken aloud and not written here.' }).click()
  await expect(row('Incision')).toContainText('the pause before the incision, whole.')
  await row('Skin').getByRole('button', { name: 'Add answers: Skin' }).click()
  await row('Skin').getByRole('radio', { name: 't shaped' }).check()
  await expectAccessible(page)
  await row('Skin').getByRole('button', { name: 'Keep', exact: true }).click()
  await expect(row('Skin')).toContainText('The skin was cut in a T over the vertical canal.')
  await row('Vertical canal free').getByRole('button', { name: 'Not done: Vertical canal free' }).click()
  await row('Vertical canal free').getByRole('button', { name: 'Keep “not done”' }).click()
  await expect(row('Vertical canal free')).toContainText('Say why it was not done.')
  await page.getByLabel('Why it was not done').fill('Removed years ago.')
  await page.reload()
  await row('Vertical canal free').getByRole('button', { name: 'Not done: Vertical canal free' }).click()
  await expect(page.getByLabel('Why it was not done')).toHaveValue('Removed years ago.')
  await row('Vertical canal free').getByRole('button', { name: 'Keep “not done”' }).click()
  await expect(row('Vertical canal free')).toContainText('NOT DONE')
  await page.getByRole('button', { name: 'Nerve is held aside now' }).click()
  await expect(page.getByRole('region', { name: 'Clocks' })).toContainText('Nerve held aside')
  await page.getByRole('button', { name: 'Nerve is let go now' }).click()
  await done('Facial nerve').click()
  await row('Facial nerve').getByRole('button', { name: 'Take back: Facial nerve' }).click()
  await expect(done('Facial nerve')).toBeVisible()
  // What belongs to no point: the moment first, the words when a hand is free.
  await page.getByRole('button', { name: 'Stamp something else now' }).click()
  const also = page.getByRole('region', { name: 'Something else' })
  await expect(also).toContainText('no words yet')
  await also.getByRole('button', { name: /^Say what it was/ }).click()
  await also.getByLabel('What happened?').fill('Suction changed.')
  await also.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect(also).toContainText('Suction changed.')
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  await program.start()
  await expect(page.getByText('kept here')).toHaveCount(0, { timeout: 30_000 })
  const stamps = (await entriesOf(program, page, 'case:juniper')).filter(
    ({ header }) => header.kind === 'theatre-stamp',
  )
  const free = stamps.filter(({ body }) => String(body.checkpoint).startsWith('free-'))
  expect(free.map(({ body }) => body.text)).toEqual([null, 'Suction changed.'])
  expect(
    stamps
      .filter((one) => !free.includes(one))
      .map(({ body }) => [body.checkpoint, body.answer])
      .sort(),
  ).toEqual([
    ['anaesthesia-start', 'done'],
    ['incision', 'done'],
    // The stamp, and its answers with the moment of the stamp.
    ['k1-skin', 'done'],
    ['k1-skin', 'done'],
    ['k2-vertical-canal', 'not-done'],
    // Taken back: a withdrawal stands beside it.
    ['k3-facial-nerve', 'done'],
    ['premedication', 'done'],
    ['retraction-off-1', 'done'],
    ['retraction-on-1', 'done'],
  ])
  const [first, answered] = stamps.filter(({ body }) => body.checkpoint === 'k1-skin')
  expect(answered?.envelope.correctedAt).toBe(first?.envelope.correctedAt)
})
