import { expectAccessible } from './accessible.ts'
import { enrol, entriesOf, expect, nurse, openInvented, surgeon, test } from './clinic.ts'

const reader = { name: 'Wanda Lee', role: 'read-only', login: 'wanda.lee' }

test('a phone number changed from the head of the case stands on the other screens; a reader sees it and changes nothing', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, reader, '1357', second)
  await second.goto(`${program.url}/case/tansy`)
  await expect(second.getByText('01632 960111')).toBeVisible()

  await page.goto(`${program.url}/case/tansy`)
  await page.getByRole('link', { name: 'People to reach: add or change' }).click()
  await expect(page.getByRole('link', { name: 'Change Rosalind Okafor' })).toBeVisible()
  await expectAccessible(page)
  await page.getByRole('link', { name: 'Change Rosalind Okafor' }).click()
  await page.getByLabel('Phone').fill('at work')
  await page.getByLabel('E-mail').fill('rosalind at home')
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByLabel('Phone')).toBeFocused()
  await expect(page.getByLabel('Phone')).toHaveAccessibleDescription(/Write the number with its digits/)
  await expect(page.getByLabel('E-mail')).toHaveAccessibleDescription(/Write it like name@place\.example/)
  await expectAccessible(page)
  await page.getByLabel('Phone').fill('01632 960199')
  await page.getByLabel('E-mail').fill('')
  await page.getByRole('button', { name: 'Keep' }).click()
  const card = page.getByRole('listitem').filter({ hasText: 'Rosalind Okafor' })
  await expect(card.getByRole('link', { name: '01632 960199' })).toBeVisible()
  await expect(card.getByText(`Last written by ${surgeon.name}`)).toBeVisible()

  await expect(second.getByText('01632 960199')).toBeVisible()
  await page.goto(`${program.url}/find`)
  await page.getByLabel('Name, chip, owner or phone').fill('960199')
  await expect(page.getByRole('link', { name: 'Tansy' })).toBeVisible()

  await second.getByRole('link', { name: 'People to reach: add or change' }).click()
  await expect(second.getByText('Changing who to reach is not for the role', { exact: false })).toBeVisible()
  await expect(second.getByRole('link', { name: /^(Change|Add|Name)/ })).toHaveCount(0)
  await second.goto(`${program.url}/case/tansy/contact/contact-okafor`)
  await expect(second.getByText('Changing who to reach is not for the role', { exact: false })).toBeVisible()
  await expect(second.getByLabel('Phone')).toHaveCount(0)
  await second.context().close()
})

test('while the server is away a change is kept here; somebody else’s later number is not written over', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', second)
  const change = `${program.url}/case/tansy/contact/contact-okafor`
  await page.goto(change)
  await page.getByLabel('Phone').fill('01632 960198')

  await second.goto(change)
  await second.getByLabel('Phone').fill('01632 960197')
  await second.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByText(`${nurse.name} changed it`, { exact: false })).toContainText('01632 960197')
  await expect(page.getByRole('button', { name: 'Keep' })).toBeDisabled()
  await page.getByRole('button', { name: 'Begin again from what stands now' }).click()
  await expect(page.getByLabel('Phone')).toHaveValue('01632 960197')

  await program.kill()
  await page.getByLabel('Address').fill('3 Tide Street\nFenbridge')
  await page.getByRole('button', { name: 'Keep' }).click()
  const card = page.getByRole('listitem').filter({ hasText: 'Rosalind Okafor' })
  await expect(card).toContainText('3 Tide Street, Fenbridge')
  await expect(card).toContainText('On this device only')
  await program.start()
  await expect(card.getByText('On this device only', { exact: false })).toHaveCount(0, { timeout: 40_000 })
  await expect(card).toContainText('3 Tide Street, Fenbridge')
  await second.context().close()
})

test('a person of the household, a laboratory and another vet are added from the case', async ({ page, program }) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/tansy/contacts`)
  await page.getByRole('link', { name: 'Add a person' }).click()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByLabel('Name')).toHaveAccessibleDescription(/Write the name/)
  await expect(page.getByText('Say whether this person may consent.')).toBeVisible()
  await page.getByLabel('Name').fill('Ottoline Reyes')
  await page.getByLabel('Phone').fill('01632 960196')
  await page.getByLabel('in an emergency').check()
  await page.getByRole('group', { name: 'May this person consent?' }).getByLabel('no').check()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByRole('listitem').filter({ hasText: 'Ottoline Reyes' })).toContainText('01632 960196')

  await page.getByRole('link', { name: 'Add a laboratory' }).click()
  await page.getByLabel('Name').fill('Saltmarsh Laboratory')
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByRole('heading', { name: 'Saltmarsh Laboratory' })).toBeVisible()

  await page.getByRole('link', { name: 'Name another referring vet' }).click()
  await page.getByLabel('Which vet?').selectOption('One who is not in the list')
  await page.getByLabel('Name').fill('Ines Falkner')
  await page.getByLabel('Practice').fill('Quay Vets')
  await page.getByRole('button', { name: 'Keep' }).click()
  await page.getByRole('link', { name: 'Back to the case' }).click()
  await expect(page.getByText('Ines Falkner, Quay Vets').first()).toBeVisible()
  await expect(page.getByText('Ottoline Reyes').first()).toBeVisible()
  const written = async () => (await entriesOf(program, page, 'case:tansy')).slice(-2).map(({ header }) => header)
  await expect
    .poll(async () => (await written()).map(({ kind, reason }) => [kind, reason]))
    .toEqual([
      ['household', 'Ottoline Reyes was added to the household.'],
      ['identity', 'Ines Falkner was named as the referring vet.'],
    ])
})

test('the owner of a second animal is offered as the contact that is there already, and nobody is merged unasked', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/rowan/contacts/household`)
  await page.getByLabel('Name').fill('R. Okafor')
  await page.getByLabel('Phone').fill('+44 1632 960111')
  const offer = page.getByText('On record already?').locator('..')
  await expect(offer).toContainText('Rosalind Okafor, 01632 960111')
  await expect(offer).toContainText('the same phone')
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Use Rosalind Okafor' }).click()
  await expect(page.getByText('Nothing new is written of this person', { exact: false })).toBeVisible()
  await expect(page.getByLabel('Phone')).toHaveCount(0)
  await page.getByLabel('pays').check()
  await page.getByRole('group', { name: 'May this person consent?' }).getByLabel('no').check()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByRole('listitem').filter({ hasText: 'Rosalind Okafor' })).toContainText('01632 960111')
  const body = async () => (await entriesOf(program, page, 'case:rowan')).at(-1)
  await expect.poll(async () => JSON.stringify(await body())).toContain('"contact-okafor"')

  // Who lives at the same number but is somebody else is written as somebody else.
  await page.goto(`${program.url}/case/rowan/contacts/household`)
  await page.getByLabel('Name').fill('Daniel Okafor')
  await page.getByLabel('Phone').fill('01632 960111')
  await expect(page.getByText('stands here already')).toBeVisible()
  await page.getByLabel('in an emergency').check()
  await page.getByRole('group', { name: 'May this person consent?' }).getByLabel('no').check()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(page.getByRole('heading', { name: 'Daniel Okafor' })).toBeVisible()
  await expect(page.getByRole('heading', { name: 'Rosalind Okafor' })).toBeVisible()
})
