import { entriesOf, expect, openInvented, test } from './clinic.ts'
import { EntryForm, fillWeight } from './pages/entry-form.ts'

const weights = (entries: Awaited<ReturnType<typeof entriesOf>>, value: string) =>
  entries.filter(({ header, body }) => header.kind === 'weight' && JSON.stringify(body).includes(`"${value}"`))

test('the server is killed in mid-form, the page is lost, the server comes back: nothing typed is lost', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByRole('heading', { level: 1, name: 'Tansy' })).toBeVisible()
  // The app's own files must be on the device before the server goes.
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  const form = await EntryForm.open(page, program.url, 'tansy/write/weight')
  await form.type('Weight with its unit', '18.7 kg')
  await program.kill()

  await form.choose('How do we know?', 'on the scale')
  await page.reload()
  await expect(page.getByLabel('Weight with its unit')).toHaveValue('18.7 kg')
  await expect(page.getByRole('radio', { name: 'on the scale' })).toBeChecked()
  await expect(page.getByText(/No connection\. You can go on/)).toBeVisible()
  await form.choose('Body condition, 1 thin to 9 fat', '5')
  await form.keep()
  await expect(page.getByText('only on this device yet').first()).toBeVisible()
  await expect(page.getByRole('link', { name: '1 entry waits on this device' })).toBeVisible()

  await program.start()
  await expect(page.getByRole('link', { name: '1 entry waits on this device' })).toHaveCount(0, { timeout: 30_000 })
  expect(weights(await entriesOf(program, page, 'case:tansy'), '18.7')).toHaveLength(1)
  await page.goto(`${program.url}/case/tansy/write/weight`)
  await expect(page.getByLabel('Weight with its unit')).toHaveValue('')
})

test('an entry kept while the server is away is sent once, although its answer was lost', async ({ page, program }) => {
  await openInvented(program, page)
  const form = await EntryForm.open(page, program.url, 'tansy/write/weight')
  await fillWeight(form, '18.8 kg')
  // The server gets the entry and answers; the answer never arrives.
  let lost = 0
  await page.route('**/api/actions/accept-entries', async (route) => {
    if (lost > 0) return route.continue()
    lost += 1
    await route.fetch()
    await route.abort('connectionreset')
  })
  await form.keep()
  await expect(page.getByRole('link', { name: '1 entry waits on this device' })).toHaveCount(0, { timeout: 20_000 })
  expect(lost).toBe(1)
  expect(weights(await entriesOf(program, page, 'case:tansy'), '18.8')).toHaveLength(1)
})
