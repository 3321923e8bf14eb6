import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { sheet } from './accessible.ts'
import { groups } from './states/index.ts'
import { expect, test } from './states/stage.ts'

const sizes = [
  ['desktop', 1280, 900],
  ['tablet', 820, 1180],
  ['phone', 390, 844],
] as const
const folder = fileURLToPath(new URL('../../out/look/', import.meta.url))

async function picture(page: Page, name: string): Promise<void> {
  // An event stream keeps the network busy for ever, so a moment of patience stands in for "all is drawn".
  await page.evaluate('scrollTo(0, 0)')
  await page.waitForTimeout(250)
  // Over a page that cannot be moved stands a dialog of the height of the window.
  const fullPage = !(await page.getByRole('dialog').isVisible())
  await page.screenshot({ path: `${folder}${name}.png`, fullPage })
}

for (const [group, states] of groups) {
  test(group, async ({ stage }) => {
    mkdirSync(folder, { recursive: true })
    for (const { name, seat, bring, leave, printed } of states) {
      const page = await stage.page(seat)
      await page.setViewportSize({ width: 1280, height: 900 })
      try {
        await bring(page, stage.url(seat), stage)
      } catch (error) {
        // The pictures of the others are still worth having.
        expect.soft(String(error), name).toBe('')
        await picture(page, `${name}-not-reached`)
        continue
      }
      for (const [size, width, height] of sizes) {
        await page.setViewportSize({ width, height })
        await picture(page, `${name}-${size}`)
      }
      await page.emulateMedia({ colorScheme: 'dark' })
      await picture(page, `${name}-dark`)
      await page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' })
      await picture(page, `${name}-forced`)
      await page.emulateMedia({ forcedColors: 'none' })
      if (printed) {
        await page.setViewportSize(sheet)
        await page.emulateMedia({ media: 'print' })
        await picture(page, `${name}-print`)
        await page.emulateMedia({ media: 'screen' })
      }
      await leave?.(page)
    }
  })
}
