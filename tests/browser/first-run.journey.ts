import { expectAccessible } from './accessible.ts'
import { expect, password, surgeon, test } from './clinic.ts'

test('the first account opens an empty clinic; the code is of no use afterwards', async ({ page, program }) => {
  await page.goto(program.url)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A first account')
  await page.getByLabel('An empty clinic').check()
  await expectAccessible(page)

  await page.getByLabel('Name of the clinic').fill('Wend Hill Referrals')
  await page.getByLabel('Phone of the clinic').fill('01632 960200')
  await page.getByLabel('Currency').fill('gbp')
  await page.getByLabel('Your name').fill(surgeon.name)
  await page.getByLabel('Your role').selectOption('surgeon')
  await page.getByLabel('Name for signing in').fill(surgeon.login)
  await page.getByLabel('Password').fill(password)
  await page.getByLabel('One-time code').fill('WRONG-CODE')
  await page.getByRole('button', { name: 'Open the clinic' }).click()
  // Said at the field, which has the focus, and not a second time below.
  const code = page.getByLabel('One-time code')
  await expect(code).toBeFocused()
  await expect(code).toHaveAttribute('aria-invalid', 'true')
  await expect(code).toHaveAccessibleDescription(/code/i)
  await expect(page.getByRole('alert')).toHaveCount(0)
  await expectAccessible(page)

  await page.getByLabel('One-time code').fill(program.code)
  await page.getByRole('button', { name: 'Open the clinic' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Owed')
  await expect(page.getByText('There is no case yet.')).toBeVisible()
  await expect(page.getByText('Wend Hill Referrals')).toBeVisible()
  await expect(page.getByText('Invented practice')).toHaveCount(0)
  await expectAccessible(page)

  const again = await page.request.post(`${program.url}/api/actions/open-clinic`, {
    data: {
      code: program.code,
      choice: 'invented-practice',
      clinic: null,
      person: { name: 'Somebody Else', role: 'surgeon', letters: null },
      login: 'somebody',
      password,
      device: { id: 'device-2', name: '' },
    },
  })
  expect(again.ok()).toBe(false)

  await page.reload()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Owed')
})

test('the invented practice opens with its cases and is marked as invented everywhere', async ({ page, program }) => {
  await page.goto(program.url)
  await page.getByLabel('An invented practice').check()
  await page.getByLabel('Your name').fill(surgeon.name)
  await page.getByLabel('Your role').selectOption('surgeon')
  await page.getByLabel('Name for signing in').fill(surgeon.login)
  await page.getByLabel('Password').fill(password)
  await page.getByLabel('One-time code').fill(program.code)
  await page.getByRole('button', { name: 'Open the clinic' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Owed')
  await expect(page.getByText('Invented practice: nothing here is real')).toBeVisible()
  await page.getByRole('link', { name: 'Find', exact: true }).click()
  await page.getByLabel('Name, chip, owner or phone').fill('okaf')
  await expect(page.getByRole('link', { name: 'Tansy' })).toBeVisible()
  await expect(page.getByRole('link', { name: 'Moss' })).toHaveCount(0)
  await expectAccessible(page)
})

test('what was typed into the first form is still there after the page was lost', async ({ page, program }) => {
  await page.goto(program.url)
  await page.getByLabel('An empty clinic').check()
  await page.getByLabel('Name of the clinic').fill('Wend Hill Referrals')
  await page.reload()
  await expect(page.getByLabel('Name of the clinic')).toHaveValue('Wend Hill Referrals')
})

test('a clinic that was imported before anybody had an account is opened as it is', async ({ page, program }) => {
  await program.kill()
  program.run('demo', '--case', 'cat', '--out', `${program.folder}/cat.jsonl`)
  program.run('import', `${program.folder}/cat.jsonl`, '--data', program.folder)
  await program.start()
  await page.goto(program.url)
  await expect(page.getByLabel('An empty clinic')).toHaveCount(0)
  await page.getByLabel('The clinic that is here, as it is').check()
  await expectAccessible(page)
  await page.getByLabel('Your name').fill(surgeon.name)
  await page.getByLabel('Your role').selectOption('surgeon')
  await page.getByLabel('Name for signing in').fill(surgeon.login)
  await page.getByLabel('Password').fill(password)
  await page.getByLabel('One-time code').fill(program.code)
  await page.getByRole('button', { name: 'Open the clinic' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Owed')
  await page.getByRole('link', { name: 'Find', exact: true }).click()
  await page.getByLabel('Name, chip, owner or phone').fill('moss')
  await expect(page.getByRole('link', { name: 'Moss' })).toBeVisible()
})
