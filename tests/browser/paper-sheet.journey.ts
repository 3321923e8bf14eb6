import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { askedAgain, entriesOf, expect, openInvented, test } from './clinic.ts'

test('a theatre sheet is printed before, written by hand, and typed in afterwards, all at once and marked as such', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await page.goto(`${program.url}/case/juniper/room/operation-juniper`)
  const sheet = await page.getByRole('link', { name: 'Print the paper sheet' }).getAttribute('href')
  const printed = await page.context().request.get(`${program.url}${sheet}`, askedAgain)
  expect(printed.headers()['content-type']).toBe('application/pdf')
  const words = await (
    await page.context().request.get(`${program.url}${sheet?.replace('.pdf', '.txt')}`, askedAgain)
  ).text()
  expect(words).toContain('Theatre sheet: RIGHT ear')
  expect(words).toContain('____ : ____')

  await page.getByRole('link', { name: 'Type in the paper sheet' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Type in the paper sheet')
  await page.getByLabel('Day on the sheet').fill('27 November 2025')
  // The pause, the operation over midnight, a point that was not done, two looks, a dose.
  await page.getByText('Pause before the incision').click()
  const pause = page.locator('details').filter({ hasText: 'Pause before the incision' })
  await pause.getByLabel('First answer at').fill('23:30')
  await pause.getByLabel('Last answer at').fill('2332')
  const concerns = page.getByRole('group', { name: /said their concerns/ })
  await concerns.getByRole('radio', { name: 'YES' }).check()
  await page
    .getByRole('group', { name: /^Antibiotic: minutes/ })
    .getByRole('radio', { name: 'NO', exact: true })
    .check()
  await page.getByLabel('Time of: Anaesthesia began').fill('2310')
  await page.getByLabel('Time of: Arrow on the skin').fill('23:25')
  await page.getByLabel('Time of: Incision').fill('23:40')
  await page.getByLabel('Not done: Vertical canal free, because').fill('Removed years ago.')
  await page.getByLabel('Time of: Tube out').fill('0:55')
  const dose = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: /^meloxicam/ }) })
  await dose.getByLabel(/^Time of/).fill('23:12')
  await dose.getByLabel(/^Amount/).fill('5')
  await page.getByRole('button', { name: 'One more observation' }).click()
  const look = page.getByRole('group', { name: 'Observation 1' })
  await look.getByLabel('Time', { exact: true }).fill('00:05')
  await look.getByLabel(/^Heart rate/).fill('92')
  await look.getByLabel(/^Mean pressure/).fill('74')

  // Nothing is kept while one place is wrong; each says what would be right; a reload loses no letter of it.
  await page.getByRole('button', { name: /^Keep/ }).click()
  await expect(page.getByText('5 places must be put right; nothing is kept before.')).toBeVisible()
  await expect(page.getByText('Choose LEFT or RIGHT.')).toBeVisible()
  await expect(page.getByText('Say how the pressure was measured: without it the number says little.')).toBeVisible()
  await expectAccessible(page)
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page, `paper ${width}`)
  }
  await page.reload()
  await expect(page.getByLabel('Time of: Incision')).toHaveValue('23:40')
  await page.getByRole('group', { name: 'Where was the arrow?' }).getByRole('radio', { name: 'RIGHT' }).check()
  await look.getByLabel('How the pressure was measured').fill('Doppler')
  await dose.getByLabel(/^Amount/).fill('5 mg')
  await page.getByText('Pause before the incision').click()
  await page.getByLabel(/^NO: why/).fill('Waits for the sample.')
  await pause.getByRole('group', { name: 'Answered aloud by' }).getByRole('radio', { name: 'Runa Falk' }).check()
  await page.getByRole('button', { name: 'Keep 9 entries' }).click()

  await expect(page.getByRole('heading', { level: 1 })).toHaveText('In theatre')
  const row = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Incision', exact: true }) })
  await expect(row).toContainText('23:40, Runa Falk')
  await expect(row).toContainText('Typed in from the paper sheet.')
  await expect(page.getByText('kept here')).toHaveCount(0, { timeout: 20_000 })
  const typed = (await entriesOf(program, page, 'case:juniper')).filter(
    ({ header }) => header.reason === 'Typed in from the paper sheet.',
  )
  expect(
    typed
      .map(({ header, body }) => [body.checkpoint ?? body.item ?? header.kind, header.happenedAt.at.slice(0, 16)])
      .sort(),
  ).toEqual([
    ['anaesthesia-start', '2025-11-27T23:10'],
    ['antibiotic', '2025-11-27T23:30'],
    ['concerns', '2025-11-27T23:32'],
    ['drug-given', '2025-11-27T23:12'],
    ['incision', '2025-11-27T23:40'],
    ['k2-vertical-canal', '2025-11-27T00:00'],
    ['observation', '2025-11-28T00:05'],
    ['skin-mark', '2025-11-27T23:25'],
    ['tube-out', '2025-11-28T00:55'],
  ])
  // Typed once: what is on record is not asked again.
  await page.getByRole('link', { name: 'Type in the paper sheet' }).click()
  await expect(page.getByText('on record already: 23:40, Runa Falk')).toBeVisible()
  await expect(page.getByLabel('Time of: Incision')).toHaveCount(0)
})
