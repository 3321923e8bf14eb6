import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test } from './clinic.ts'

test('two options are read facing each other, something is missing, and the choice is written on the same page', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/barley`)
  await page.getByRole('link', { name: 'Weigh the options' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Choice')
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('LEFT ear')

  // He was operated: only what was seen since then describes the ear, so the page asks for it again.
  await expect(page.getByRole('heading', { name: 'Operated before' })).toBeVisible()
  const missing = page.getByRole('region', { name: 'Not known of this ear' })
  const bulla = missing.getByRole('listitem').filter({ hasText: 'What the bulla holds is not known: CT settles it.' })
  await bulla.getByRole('button', { name: /^Why/ }).click()
  const why = page.getByRole('dialog')
  await expect(why).toContainText('What waits for it')
  await expect(why).toContainText('WSAVA congress 2015')
  await page.keyboard.press('Escape')

  await page.getByRole('button', { name: 'Open: Control with medicine' }).click()
  await page.getByRole('button', { name: /^Open: Total ear canal ablation/ }).click()
  const facing = page.getByRole('region', { name: 'Opened, facing each other' })
  const [medicine, removal] = [facing.getByRole('article').nth(0), facing.getByRole('article').nth(1)]
  const heads = ['What is done', 'Good side', 'Bad side', 'Your work', 'Visits', 'Money', 'What stays unknown']
  for (const article of [medicine, removal]) {
    for (const name of heads) await expect(article.getByRole('heading', { name, exact: true })).toBeVisible()
  }
  // 6 × 48.00 + 12 × 24.50 + 2 × 86.00 and 10 × 62.00 + 12 × 2 × 38.00 + 3 × 118.00, at the invented prices.
  await expect(medicine).toContainText('The year: 754.00 to 1886.00 GBP')
  const [first, second] = [await medicine.boundingBox(), await removal.boundingBox()]
  expect(Math.abs((first?.y ?? 0) - (second?.y ?? 9))).toBeLessThan(2)
  await expectAccessible(page)
  for (const width of [390, 820, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  await page.getByRole('button', { name: 'Open: Deep flush' }).click()
  await expect(page.getByText('The one that was opened first was closed.')).toBeVisible()
  await expect(facing.getByRole('heading', { level: 4 }).nth(1)).toBeFocused()

  const keep = page.getByRole('button', { name: 'Keep the choice for the LEFT ear' })
  await keep.click()
  await expect(page.getByText('Answer at least one option.')).toBeVisible()
  const again = page.getByRole('group', { name: 'Ventral bulla osteotomy' })
  await again.getByRole('radio', { name: 'talked over, not decided' }).check()
  await page.getByRole('button', { name: 'Take over what is listed for: ventral bulla osteotomy' }).click()
  await page.getByLabel('Because: ventral bulla osteotomy').fill('Only if it comes back; a scan comes first.')
  await page.getByRole('radio', { name: 'one ear only' }).check()
  const box = page.getByLabel('Still missing for a decision')
  await expect(box).toHaveValue(/What the bulla holds is not known/)
  await box.fill('A scan of the bulla')
  await page.reload()
  await expect(box).toHaveValue('A scan of the bulla')
  await keep.click()
  await expect(page.getByText('The choice for the LEFT ear is kept.')).toBeVisible()

  const written = (await entriesOf(program, page, 'case:barley')).filter(({ header }) => header.kind === 'choice')
  expect(written.at(-1)?.body).toMatchObject({
    options: [{ option: 'ventral-bulla-osteotomy', answer: 'open' }],
    session: 'one-ear',
    missing: ['A scan of the bulla'],
  })
})

test('a year is reckoned anew at the prices of the list, and stays unknown while one price is missing', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/barley/choice?open=no-treatment`)
  const cost = page.getByRole('region', { name: 'What a year could cost here' })
  await expect(cost.getByText('Nobody has reckoned this yet.')).toBeVisible()
  await cost.getByRole('button', { name: 'Reckon it' }).click()
  await cost.getByLabel('Price').selectOption({ label: 'no price is kept for it' })
  await cost.getByLabel('What').fill('Drugs against pain')
  await cost.getByLabel('Times, at least').fill('1')
  await cost.getByLabel('Times, at most').fill('2')
  await cost.getByRole('button', { name: 'Keep these assumptions' }).click()
  await expect(cost.getByText('In the year, or each month?')).toHaveCount(1)
  await cost.getByRole('radio', { name: 'each month' }).check()
  await cost.getByRole('button', { name: 'Keep these assumptions' }).click()
  await expect(cost).toContainText('Unknown: no price is kept for Drugs against pain. Add it in Settings.')
  await cost.getByRole('button', { name: 'Change the assumptions' }).click()
  await cost.getByLabel('Price').selectOption('price-drops')
  await cost.getByRole('button', { name: 'Keep these assumptions' }).click()
  await expect(cost).toContainText('The year: 294.00 to 912.00 GBP')
})
