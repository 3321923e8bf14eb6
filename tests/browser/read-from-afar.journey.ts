import type { Page } from '@playwright/test'
import { expect, openInvented, test } from './clinic.ts'

/**
 * What is read from two metres beside the table has letters of 16 minutes of arc there, which are 9.3 mm; names that are
 * read at the table have the same at one metre (docs/read-from-afar.md, a house rule). A tablet is 820 by 1180 points
 * over 10.9 inches; the height of a capital is that of the letters the browser really draws.
 */
const mmOfPoint = (10.9 * 25.4) / Math.hypot(820, 1180)
const afar = 2_000 * Math.tan((16 / 60) * (Math.PI / 180))
const atTheTable = afar / 2

const juniper = '/case/juniper/room/operation-juniper'
const clocks = 'section[aria-label="Clocks"]'

test('what is read from two metres has letters as high as that asks, on the screens beside the table', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.setViewportSize({ width: 820, height: 1180 })
  await page.goto(program.url + juniper)
  await page.getByRole('button', { name: 'Done now: Anaesthesia began' }).click()
  await page.getByRole('button', { name: /^Everybody here named the same ear aloud/ }).click()
  await expect(page.getByRole('region', { name: 'Clocks' })).toContainText('Anaesthesia')
  await high(page, 'a clock', `${clocks} li strong`, /^\d+ min$/, afar)
  await high(page, 'the side', `${clocks} p strong`, /^RIGHT$/, afar)
  await high(page, 'what is not stamped yet', `${clocks} p a`, /^Premedication given$/, afar)
  await high(page, 'the bar of emergencies', 'nav[aria-label] a[data-weight="main"]', /^Emergency$/, atTheTable)

  await page.goto(`${program.url}${juniper}/pause/before-incision`)
  await high(page, 'the statement of a pause', '#pause-item', /^Everyone said name and role/, afar)

  await page.goto(`${program.url}${juniper}/now`)
  await high(page, 'a call', 'main li button', /^Bleeding$/, atTheTable)
  await page.getByRole('button', { name: 'Bleeding', exact: true }).click()
  await high(page, 'the clock of an emergency', '[role=timer]', /^\d+:\d\d$/, afar)
  await high(page, 'a volume', '[aria-labelledby=draw] li p', /^[\d.]+ mL$/, afar)
  await high(page, 'a drug', '[aria-labelledby=draw] h3', /^Tranexamic acid$/, atTheTable)

  await page.goto(`${program.url}/case/barley/room/operation-barley`)
  await high(page, 'signed out', `${clocks} p strong`, /^Signed out$/, afar)
})

/** That words stand there, in capitals of at least that many millimetres. */
async function high(page: Page, what: string, where: string, words: RegExp, least: number): Promise<void> {
  await expect(page.locator(where).filter({ hasText: words }).first(), what).toBeVisible()
  const points = await page.evaluate<number>(heightOfCapital(where, words))
  expect(points * mmOfPoint, `${what}, in mm`).toBeGreaterThanOrEqual(least)
}

const heightOfCapital = (where: string, words: RegExp) => `(() => {
  const one = [...document.querySelectorAll(${JSON.stringify(where)})].find((one) => ${words}.test(one.textContent))
  const style = getComputedStyle(one)
  const pen = document.createElement('canvas').getContext('2d')
  pen.font = style.fontWeight + ' ' + style.fontSize + ' ' + style.fontFamily
  return pen.measureText('H').actualBoundingBoxAscent
})()`
