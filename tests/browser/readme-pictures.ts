import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { openInvented, test } from './clinic.ts'

const folder = fileURLToPath(new URL('../../docs/pictures/', import.meta.url))
/** Name, address, and how far the page is moved up, in pixels. */
const pictures = [
  ['owed', '/', 0],
  ['case', '/case/juniper', 0],
  ['plate', '/case/juniper/plate/RIGHT', 345],
  ['dose-plan', '/case/juniper/doses/operation-juniper', 345],
] as const

test('the pictures of the README', async ({ page, program }) => {
  mkdirSync(folder, { recursive: true })
  await page.setViewportSize({ width: 1200, height: 800 })
  await openInvented(program, page)
  for (const [name, path, moved] of pictures) {
    await page.goto(`${program.url}${path}`)
    await page.waitForSelector('h1')
    // An event stream keeps the network busy for ever, so a moment of patience stands in for "all is drawn".
    await page.waitForTimeout(1500)
    await page.evaluate(`scrollTo(0, ${moved})`)
    await page.screenshot({ path: `${folder}${name}.png` })
  }
})
