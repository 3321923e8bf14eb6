import type { Page } from '@playwright/test'
import { expectAccessible } from './accessible.ts'
import { enrol, entriesOf, expect, nurse, openInvented, type Program, surgeon, test } from './clinic.ts'
import { EntryForm, writeWeight } from './pages/entry-form.ts'

async function lastWeight(program: Program, page: Page): Promise<string> {
  const weights = (await entriesOf(program, page, 'case:tansy')).filter(({ header }) => header.kind === 'weight')
  return weights.at(-1)?.header.id ?? ''
}

async function openEntry(page: Page, program: Program, entry: string): Promise<void> {
  await page.goto(`${program.url}/case/tansy#entry-${entry}`)
  const summary = page.locator(`#entry-${entry} summary`).first()
  await expect(summary).toBeVisible()
  const details = page.locator(`#entry-${entry} > details`)
  if ((await details.getAttribute('open')) === null) await summary.click()
}

async function correct(page: Page, weight: string, reason: string): Promise<void> {
  await page.getByLabel('Weight with its unit').fill(weight)
  await page.getByLabel('Reason').fill(reason)
  await new EntryForm(page).keep()
}

test('a correction shows old and new with its reason; the history is two taps away', async ({ page, program }) => {
  await openInvented(program, page)
  await writeWeight(page, program.url, 'tansy', '81.7 kg')
  await expect.poll(() => lastWeight(program, page)).not.toBe('')
  const wrong = await lastWeight(program, page)
  await openEntry(page, program, wrong)
  await page.locator(`#entry-${wrong}`).getByRole('link', { name: 'Correct' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Correct/)
  await page.getByLabel('Weight with its unit').fill('18.7 kg')
  await page.getByRole('button', { name: 'Keep the correction' }).click()
  await expect(page.getByText('Say why. A correction without a reason is not kept.').first()).toBeVisible()
  await page.getByLabel('Reason').fill('Two digits swapped when typing.')
  await expect(page.getByRole('cell', { name: /81\.7 kg/ })).toBeVisible()
  await expect(page.getByRole('cell', { name: /18\.7 kg/ })).toBeVisible()
  await expectAccessible(page)
  await new EntryForm(page).keep()

  await expect.poll(() => lastWeight(program, page)).not.toBe(wrong)
  const right = await lastWeight(program, page)
  await openEntry(page, program, right)
  await page.locator(`#entry-${right}`).getByRole('link', { name: 'History' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^History/)
  await expect(page.getByText('81.7 kg').first()).toBeVisible()
  await expect(page.getByText('18.7 kg').first()).toBeVisible()
  await expect(page.getByText(/Two digits swapped when typing/)).toBeVisible()
  await expectAccessible(page)
})

test('two people correct one entry without hearing of each other: both stand until one person settles it', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', second)
  await writeWeight(page, program.url, 'tansy', '20 kg')
  await expect.poll(() => lastWeight(program, page)).not.toBe('')
  const first = await lastWeight(program, page)

  await second.goto(`${program.url}/case/tansy/write/weight?amend=${first}`)
  await expect(second.getByLabel('Weight with its unit')).toHaveValue('20 kg')
  await second.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await second.context().setOffline(true)
  await correct(second, '19.2 kg', 'Read off the scale again.')
  await expect(second.getByText('only on this device yet').first()).toBeVisible()
  await page.goto(`${program.url}/case/tansy/write/weight?amend=${first}`)
  await correct(page, '20.4 kg', 'With the collar on.')
  await second.context().setOffline(false)

  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByText('Two entries stand side by side. A person must settle it.')).toBeVisible({
    timeout: 30_000,
  })
  await page.getByRole('link', { name: 'Settle: Weight' }).first().click()
  await expect(page.getByText('19.2 kg').first()).toBeVisible()
  await expect(page.getByText('20.4 kg').first()).toBeVisible()
  await expect(page.getByText(new RegExp(`by ${surgeon.name}`)).first()).toBeVisible()
  await expect(page.getByText(new RegExp(`by ${nurse.name}`)).first()).toBeVisible()
  await expectAccessible(page)
  const nurses = page.getByRole('radio').nth(0)
  await nurses.check()
  await page.getByLabel('Reason').fill('The scale was read twice.')
  await page.getByRole('button', { name: 'Settle it so' }).click()
  await expect(page.getByText('stand side by side')).toHaveCount(0)
  const settled = (await entriesOf(program, page, 'case:tansy')).at(-1)
  expect(settled?.header.supersedes).toHaveLength(2)
  expect(settled?.header.reason).toBe('The scale was read twice.')
  await second.context().close()
})

test('a source that names the other ear stops nobody from reading, and is said until somebody settles it', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByRole('heading', { level: 1, name: 'Tansy' })).toBeVisible()
  await expect(page.getByText('LEFT or RIGHT: the sources disagree')).toHaveCount(0)
  const form = await EntryForm.open(page, program.url, 'tansy/write/booking')
  await form.choose('Side', 'RIGHT')
  await form.choose('Operation', 'Total ear canal ablation with lateral bulla osteotomy')
  await form.type('Planned for', '10 February 2030, 09:00')
  await page.getByLabel('Surgeon').selectOption({ label: 'Imke Holm, surgeon' })
  await page.getByLabel('Under which agreement?').selectOption({ index: 2 })
  await form.keep()
  await expect(page.getByText('LEFT or RIGHT: the sources disagree').first()).toBeVisible()
  await expectAccessible(page)
})
