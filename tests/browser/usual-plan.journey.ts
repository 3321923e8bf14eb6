import type { Page } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, type Program, test } from './clinic.ts'
import { EntryForm, writeWeight } from './pages/entry-form.ts'

const link = /^Plan the doses from a usual plan: RIGHT ear/

/** The other ear of the invented spaniel gets a day, and she is weighed for it. */
async function bookTheOtherEar(page: Page, { url }: Program): Promise<void> {
  const booking = await EntryForm.open(page, url, 'tansy/write/booking')
  await booking.choose('Side', 'RIGHT')
  await booking.choose('Operation', 'Total ear canal ablation with lateral bulla osteotomy')
  await booking.type('Planned for', '10 February 2031, 09:00')
  await booking.pick('Surgeon', 'Imke Holm')
  await booking.pick('Anaesthetist', 'Tomas Adeyemi')
  await booking.pick('Under which agreement?', 'no agreement yet')
  await booking.keep()
  await writeWeight(page, url, 'tansy', '18.6 kg')
}

const planned = async (program: Program, page: Page) =>
  (await entriesOf(program, page, 'case:tansy')).filter(
    ({ header, body }) => header.kind === 'planned-line' && JSON.stringify(body).includes('"18.6"'),
  )

test('a usual plan becomes the planned lines of one operation, judged for this animal, while the server is away', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await bookTheOtherEar(page, program)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await page.getByRole('link', { name: link }).first().click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Plan the doses from a usual plan')
  await expect(page.getByText(/Not for a dog, and so not to be chosen here: “our usual plan, cat”/)).toBeVisible()
  await expect(page.getByRole('button', { name: /^Write/ })).toHaveCount(0)

  await page.getByRole('radio', { name: /^our usual plan, dog/ }).check()
  const antibiotic = page.getByRole('listitem', { name: 'cefazolin antibiotic' })
  // 22 mg/kg × 18.6 kg, from 100 mg/mL.
  await expect(antibiotic).toContainText('22 mg/kg')
  await expect(antibiotic).toContainText('409.2 mg')
  await expect(antibiotic).toContainText('Within the hour before the incision.')
  await expectAccessible(page)
  for (const width of [390, 820, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  await program.kill()
  await page.getByRole('checkbox', { name: 'Write this line: splash' }).uncheck()
  await page.reload()
  await expect(page.getByRole('checkbox', { name: 'Write this line: splash' })).not.toBeChecked()
  const write = page.getByRole('button', { name: /^Write \d+ planned lines$/ })
  const count = Number(/\d+/.exec((await write.textContent()) ?? '')?.[0])
  await write.click()
  await page.waitForURL(/\/case\/tansy\?kept=/)
  await expect(page.getByRole('link', { name: `${count} entries wait on this device` })).toBeVisible()

  await program.start()
  await expect(page.getByRole('link', { name: /wait on this device/ })).toHaveCount(0, { timeout: 30_000 })
  const lines = await planned(program, page)
  expect(lines).toHaveLength(count)
  expect(lines.map(({ body }) => body.line)).not.toContain('splash')
  expect(lines.find(({ body }) => body.line === 'antibiotic')?.body).toMatchObject({
    amount: { value: '409.2', unit: 'mg' },
    plan: 'our usual plan, dog',
    because: 'Within the hour before the incision.',
  })

  await page.getByRole('link', { name: link }).first().click()
  await page.getByRole('radio', { name: /^our usual plan, dog/ }).check()
  await expect(antibiotic).toContainText('Planned already, and not written a second time.')
  await expect(page.getByRole('button', { name: 'Write 1 planned line', exact: true })).toBeEnabled()
})
