import type { Page } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test } from './clinic.ts'

const address = 'case/tansy/plate/LEFT'

/** Draws a bow over the middle of the plate with the mouse. */
async function drawBow(page: Page): Promise<void> {
  const box = await page.locator('figure svg').first().boundingBox()
  if (!box) throw new Error('The plate is not on the page.')
  const at = (x: number, y: number) => [box.x + x * box.width, box.y + y * box.height] as const
  await page.mouse.move(...at(0.4, 0.5))
  await page.mouse.down()
  for (let step = 1; step <= 12; step += 1)
    await page.mouse.move(...at(0.4 + step * 0.015, 0.5 - step * (12 - step) * 0.002))
  await page.mouse.up()
}

test('a surgeon draws on the plate; a reload loses no stroke, and what is kept is shown as it was drawn', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/${address}`)
  await page.getByRole('button', { name: 'Draw on it' }).click()
  await drawBow(page)
  await expect(page.getByText('Drawn and not kept yet: 1')).toBeVisible()
  await page.reload()
  await expect(page.getByText('Drawn and not kept yet: 1')).toBeVisible()
  await expectAccessible(page)

  await page.getByRole('button', { name: 'Keep this drawing' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('textbox').fill('Where the nerve runs')
  await dialog.getByRole('radio').first().check()
  await expectAccessible(page)
  await dialog.locator('button[type=submit]').click()
  await expect(page.getByText(/Where the nerve runs\. Drawn on the LEFT ear by Runa Falk/)).toBeVisible()
  await expect(page.getByText('Drawn and not kept yet')).toHaveCount(0)
  await expectAccessible(page)
})

test('nobody needs a pointer: a part is found, read and marked with the keyboard alone', async ({ page, program }) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/${address}`)
  const nerve = page.locator('[data-part="facial-nerve"]').first()
  await page.locator('[data-part][tabindex="0"]').first().focus()
  for (
    let step = 0;
    step < 40 && !(await nerve.evaluate((part) => part === part.ownerDocument.activeElement));
    step += 1
  ) {
    await page.keyboard.press('ArrowRight')
  }
  await page.keyboard.press('Enter')
  const panel = page.getByRole('region', { name: 'Facial nerve' })
  await expect(panel.getByRole('heading', { name: 'At risk here' })).toBeVisible()
  await expect(panel.getByText(/Smeak/).first()).toBeVisible()
  await expectAccessible(page)

  await page.getByRole('button', { name: 'Draw on it' }).press('Enter')
  await page.getByRole('button', { name: 'Ring a part' }).press('Enter')
  await nerve.focus()
  await page.keyboard.press('Enter')
  await expect(page.getByText('Facial nerve is marked.')).toBeAttached()
  await page.getByRole('button', { name: 'Take back the last one' }).press('Enter')
  await expect(page.getByText('Drawn and not kept yet')).toHaveCount(0)
})

test('the plate fits a phone, and says all of itself in words', async ({ page, program }) => {
  await page.setViewportSize({ width: 320, height: 640 })
  await openInvented(program, page)
  await page.goto(`${program.url}/${address}`)
  await expect(page.locator('figure svg').first()).toBeVisible()
  await page.getByText('In words').first().click()
  await expect(page.getByText('Line drawing of the LEFT ear of a dog', { exact: false }).first()).toBeVisible()
  await expect(page.getByRole('button', { name: 'Drum: could not be seen' }).first()).toBeVisible()
  await expectNoSidewaysScroll(page)
  await expectAccessible(page)
})
