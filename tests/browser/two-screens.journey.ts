import { enrol, entriesOf, expect, nurse, openInvented, surgeon, test } from './clinic.ts'
import { EntryForm, fillWeight, writeWeight } from './pages/entry-form.ts'

test('what the nurse keeps stands on the surgeon’s screen without anybody asking for it', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', second)
  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByRole('heading', { level: 1, name: 'Tansy' })).toBeVisible()
  await expect(page.getByText('18.9 kg')).toHaveCount(0)

  const form = await EntryForm.open(second, program.url, 'tansy/write/weight')
  await fillWeight(form, '18.9 kg')
  const kept = Date.now()
  await form.keep()
  await expect(page.getByText('18.9 kg').first()).toBeVisible()
  test.info().annotations.push({ type: 'from one screen to the other', description: `${Date.now() - kept} ms` })
  await expect(page.getByText(`by ${nurse.name}`).first()).toBeVisible()
  await second.context().close()
})

test('at a shared tablet the nurse takes over with a PIN, also while the server is away', async ({ page, program }) => {
  await openInvented(program, page)
  const nurseId = await enrol(program, page, nurse, '2468', page)
  await page.goto(program.url)
  await expect(page.getByText(`${nurse.name}, nurse`)).toBeVisible()
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')

  await page.getByRole('button', { name: 'Change person' }).click()
  await page.getByRole('button', { name: `${surgeon.name}, surgeon` }).click()
  await expect(page.getByText(`${surgeon.name} has no PIN yet`)).toBeVisible()
  await page.getByRole('button', { name: 'Somebody else signs in here' }).click()
  await page.getByLabel('Name for signing in').fill(surgeon.login)
  await page.getByLabel('Password').fill('a long word and a longer one')
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(page.getByText(`${surgeon.name}, surgeon`)).toBeVisible()

  await program.kill()
  await page.getByRole('button', { name: 'Change person' }).click()
  await page.getByRole('button', { name: `${nurse.name}, nurse` }).click()
  await page.getByLabel(`PIN of ${nurse.name}`).fill('1111')
  await page.getByRole('button', { name: 'Take over' }).click()
  await expect(page.getByText(`That is not the PIN of ${nurse.name}.`)).toBeVisible()
  await page.getByLabel(`PIN of ${nurse.name}`).fill('2468')
  await page.getByRole('button', { name: 'Take over' }).click()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(page.getByText(`${nurse.name}, nurse`)).toBeVisible()
  await program.start()

  await writeWeight(page, program.url, 'tansy', '19.1 kg')
  await expect
    .poll(async () =>
      (await entriesOf(program, page, 'case:tansy'))
        .filter(({ body }) => JSON.stringify(body).includes('"19.1"'))
        .map(({ header }) => header.author.person),
    )
    .toEqual([nurseId])
})
