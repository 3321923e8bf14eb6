import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { expectAccessible } from './accessible.ts'
import { askedAgain, expect, openInvented, type Program, surgeon, test } from './clinic.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'
import { writeWeight } from './pages/entry-form.ts'

/** A paper of the plan as it is printed, and as a page on the screen. */
async function paper(page: Page, program: Program, name: RegExp): Promise<{ readonly printed: string; screen: Page }> {
  const href = (await page.getByRole('link', { name }).getAttribute('href')) ?? ''
  const address = new URL(href, program.url).href
  const file = join(program.folder, 'paper.pdf')
  writeFileSync(file, await (await page.context().request.get(address, askedAgain)).body())
  const printed = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
  const screen = await page.context().newPage()
  await screen.goto(address.replace(/\.pdf$/, '.html'))
  return { printed: printed.replaceAll(/[\s\u200b\u00ad]+/g, ' '), screen }
}

test('alone at night: nobody available is written with its reason and printed; the emergency sheet counts the full block', async ({
  page,
  program,
}) => {
  test.slow()
  ensureDebian(['poppler-utils'])
  await openInvented(program, page)
  await writeWeight(page, program.url, 'teasel', '8.2 kg')
  const plan = await DosePlanPage.book(program, page, 'teasel', 'LEFT', '10 February 2031, 03:00')
  await plan.type({
    name: 'block LEFT',
    drug: 'bupivacaine',
    use: /^local block/,
    route: 'beside the nerve',
    dose: '1.5 mg/kg',
    strength: '5 mg/mL',
  })
  await plan.keep()
  const reason = 'Alone in the house at three in the morning.'
  await expect(page.getByText(/somebody else has to check them\. If nobody is there, say so/)).toBeVisible()
  await plan.sign('Nobody available', reason, surgeon.name)
  await expect(plan.line('bupivacaine')).toContainText(`Nobody available to check (${surgeon.name}`)
  await expect(plan.line('bupivacaine')).toContainText(reason)
  await expectAccessible(page)

  const sheet = await paper(page, program, /^Dose sheet/)
  expect(sheet.printed).toContain(`Nobody available to check, says ${surgeon.name}`)
  expect(sheet.printed).toContain(reason)
  await expect(sheet.screen.getByText(reason)).toBeVisible()

  // 1.5 of 2 mg/kg is planned: a quarter of 5 mg/kg × 8.2 kg of lidocaine is left, and the row holds 2 mg/kg.
  const said = 'ABOVE the limit for local anaesthetics: blocks given and planned leave 10.2 mg, this is 16.4 mg.'
  const urgent = await paper(page, program, /^Emergency sheet/)
  const row = urgent.screen.getByRole('row').filter({ hasText: 'Lidocaine' }).first()
  await expect(row).toContainText(said)
  await expect(row).toContainText('0.82 mL')
  await expect(row).toContainText('NOT when local-anaesthetic toxicity is suspected')
  // The name of the row stands in the middle of its height, so the words of the last cell come in two pieces.
  expect(urgent.printed).toMatch(/toxicity is suspected\. ABOVE .*the limit for local anaesthetics/)
  expect(urgent.printed).toContain('leave 10.2 mg, this is 16.4 mg.')

  // Given, it is counted once, as it was planned.
  await page.getByRole('button', { name: 'Write as given' }).click()
  await page.getByRole('radio', { name: /^all that was to be drawn/ }).check()
  await page.getByRole('button', { name: 'Keep it as given now' }).click()
  await expect(plan.line('bupivacaine')).toContainText('Given: 2.5 mL')
  await urgent.screen.reload()
  // 2.5 mL of 5 mg/mL are 12.5 of 16.4 mg.
  await expect(row).toContainText(/leave 9\.7 mg, this is 16\.4 mg/)
})
