import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { openInvented, Program, test } from './clinic.ts'

const folder = fileURLToPath(new URL('../../out/look/', import.meta.url))
const sizes = [
  ['phone', 390, 844],
  ['tablet', 820, 1180],
  ['desktop', 1280, 900],
] as const

/** Every screen of the app by name and path. */
const screens = [
  ['owed', '/'],
  ['find', '/find'],
  ['find-nothing', '/find?text=zz'],
  ['kept', '/kept'],
  ['new-referral', '/new'],
  ['theatre-list', '/theatre'],
  ['tray', '/tray'],
  ['case-dog', '/case/tansy'],
  ['case-cat', '/case/moss'],
  ['write-weight', '/case/tansy/write/weight'],
  ['write-ear-findings', '/case/tansy/write/ear-findings'],
  ['write-baseline', '/case/tansy/write/baseline'],
  ['plate', '/case/tansy/plate/LEFT'],
  ['sources', '/sources'],
  ['formulary', '/sources/formulary/bupivacaine'],
  ['settings', '/settings'],
  ['not-there', '/nowhere'],
] as const

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
  await page.addInitScript("localStorage.setItem('device', 'device-of-the-tests')")
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
