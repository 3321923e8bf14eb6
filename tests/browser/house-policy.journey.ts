import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test } from './clinic.ts'

test('the house sets its own syringes with a reason, and a list that is none is refused', async ({ page, program }) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/settings/policies`)
  await page.getByRole('button', { name: 'Set a policy' }).click()
  const form = page.getByRole('dialog')
  await form.getByLabel('Which default').selectOption({ label: 'Syringes and their marks' })
  await expect(form.getByText('1 by 0.01; 3 by 0.1', { exact: false }).first()).toBeVisible()
  await form.getByLabel('What holds here').fill('the usual ones')
  await form.getByLabel('Why').fill('The drawer was changed in November.')
  await form.getByRole('button', { name: 'Save' }).click()
  await expect(form.getByText('“the usual ones” is no list of syringes.', { exact: false })).toBeVisible()
  await expectAccessible(page)
  if (process.env.LOOK) await page.screenshot({ path: `${process.env.LOOK}/policy-form.png` })

  await form.getByLabel('What holds here').fill('1 by 0.02; 2.5 by 0.1; 20 by 1')
  await form.getByRole('button', { name: 'Save' }).click()
  const line = page.getByRole('listitem').filter({ hasText: 'Syringes and their marks' })
  await expect(line).toContainText('1 by 0.02; 2.5 by 0.1; 20 by 1')
  await expect(line).toContainText('The drawer was changed in November.')
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
    if (process.env.LOOK) await page.screenshot({ path: `${process.env.LOOK}/policies-${width}.png` })
  }
})
