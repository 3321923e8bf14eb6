import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { openInvented, Program, test } from './clinic.ts'
import { screens, sizes } from './screens.ts'

const folder = fileURLToPath(new URL('../../out/look/', import.meta.url))
async function picture(page: Page, name: string): Promise<void> {
  // An event stream keeps the network busy for ever, so a moment of patience stands in for "all is drawn".
  await page.waitForTimeout(400)
  await page.screenshot({ path: `${folder}${name}.png`, fullPage: true })
}

test('every screen', async ({ browser }) => {
  mkdirSync(folder, { recursive: true })
  const program = new Program()
  await program.start()
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } })
  const page = await context.newPage()
  await page.goto(program.url)
  await page.waitForSelector('h1')
  await picture(page, 'first-run-desktop')
  await openInvented(program, page)
  for (const [name, path] of screens) {
    for (const [size, width, height] of sizes) {
      await page.setViewportSize({ width, height })
      await page.goto(`${program.url}${path}`)
      await page.waitForSelector('h1')
      await picture(page, `${name}-${size}`)
    }
    await page.emulateMedia({ colorScheme: 'dark' })
    await picture(page, `${name}-dark`)
    await page.emulateMedia({ colorScheme: 'light', media: 'print' })
    await picture(page, `${name}-print`)
    await page.emulateMedia({ media: 'screen' })
  }
  await context.close()
  await program.stop()
})
