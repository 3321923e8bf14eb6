import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

test('a nurse opens a register, draws an ampoule, and sees what is not given until the waste is written', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/settings/shelf`)
  await page.getByRole('button', { name: 'Change Midazolam 5 mg/mL' }).click()
  const product = new EntryForm(page, page.getByRole('dialog'))
  await product.choose('Kept in the controlled-drug register?', 'yes')
  await product.type('Why it is changed', 'The house keeps a register of it.')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByText('Kept in the controlled-drug register.')).toHaveCount(2)
  await page.goto(`${program.url}/`)
  await expect(page.getByRole('link', { name: 'Open the register of midazolam 5 mg/mL, injection' })).toBeVisible()

  await page.goto(`${program.url}/settings/register`)
  await page.getByRole('link', { name: 'Midazolam 5 mg/mL, injection' }).click()
  await expect(page.getByText(/is yours to confirm/)).toBeVisible()
  const write = async (what: string, amount: string, more: (form: EntryForm) => Promise<void>) => {
    await page.getByRole('button', { name: 'Write a line' }).click()
    const form = new EntryForm(page, page.getByRole('dialog'))
    await form.pick('What happened', what)
    await form.type('How much', amount)
    await more(form)
    await page.getByRole('button', { name: 'Save' }).click()
    await expect(page.getByRole('dialog')).toHaveCount(0)
  }
  await write('opening stock', '10 mL', (form) => form.pick('Witness', 'nobody available'))
  await write('drawn for an animal', '1 mL', async (form) => {
    await form.type('Number of the ampoule', 'A-77')
    await form.pick('For which animal', 'Tansy')
    await form.pick('Witness', 'nobody available')
  })
  await expect(page.getByText('Ampoule A-77: drawn 1 mL, given 0 mL, wasted 0 mL; 1 mL apart.')).toBeVisible()
  await expect(page.getByText('Balance: 9 mL')).toBeVisible()
  await expect(page.getByText(/A line has no witness: nobody available\./).first()).toBeVisible()
  await page.goto(`${program.url}/`)
  await page.getByRole('link', { name: 'Settle the register of midazolam 5 mg/mL, injection' }).click()
  await expect(page.getByRole('heading', { name: '1 thing to settle' })).toBeVisible()
  await expectAccessible(page)
  for (const width of [390, 820, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  const waste = await EntryForm.open(page, program.url, 'tansy/write/drug-wasted')
  await waste.choose('What it is about', 'the animal')
  await waste.pick('Drug', 'Midazolam')
  await waste.type('Amount wasted', '5 mg')
  await waste.type('Number of the ampoule', 'A-77')
  await waste.type('Why', 'Dropped.')
  await waste.pick('Witness', 'nobody available')
  await waste.keep()
  await page.goto(`${program.url}/settings/register`)
  await page.getByRole('link', { name: 'Midazolam 5 mg/mL, injection' }).click()
  await expect(page.getByText('Drawn is given and wasted; the counts agree.')).toBeVisible()
  await page.goto(`${program.url}/`)
  await expect(page.getByRole('link', { name: 'A second name in the register of midazolam 5 mg/mL' })).toBeVisible()
  await expect(page.getByRole('link', { name: 'Settle the register of midazolam 5 mg/mL' })).toHaveCount(0)
  await page.getByRole('link', { name: 'A second name in the register of midazolam 5 mg/mL' }).click()

  await page.getByRole('button', { name: /^Amend drawn for an animal/ }).click()
  const amend = new EntryForm(page, page.getByRole('dialog'))
  await amend.type('How much', '2 mL')
  await amend.type('Why it is amended', 'Two millilitres were in it.')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByText(/^Replaced by .*Two millilitres were in it\./)).toBeVisible()
  await expect(page.getByText('Balance: 8 mL')).toBeVisible()
})
