import AxeBuilder from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'

/** Nothing that the automated check knows to be a hindrance, in the page as it stands now. `where` is said beside it. */
export async function expectAccessible(page: Page, where = 'here'): Promise<void> {
  const axe = new AxeBuilder({ page })
  await expectNone(axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']), where)
}

/** Only what another colour scheme can change. */
export async function expectContrast(page: Page, where = 'here'): Promise<void> {
  await expectNone(new AxeBuilder({ page }).withRules(['color-contrast', 'link-in-text-block']), where)
}

async function expectNone(axe: AxeBuilder, where: string): Promise<void> {
  // No page has frames: without this mode each look opens one page more, for nothing.
  const { violations } = await axe.setLegacyMode().analyze()
  const said = violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes.map(({ target, failureSummary }) => `${target.join(' ')} ${failureSummary}`).join('\n')}`,
  )
  expect.soft(said, where).toEqual([])
}

/** Nothing sticks out sideways: a phone scrolls down only. */
export async function expectNoSidewaysScroll(page: Page, where = 'here'): Promise<void> {
  // What measures itself is drawn again a moment after the window changed.
  const wider = () =>
    page.evaluate<number>('document.documentElement.scrollWidth - document.documentElement.clientWidth')
  await expect.soft.poll(wider, { message: where }).toBeLessThanOrEqual(0)
}

/** The width between the margins of a sheet of A4, and its height. */
export const sheet = { width: 718, height: 1047 }

/** On paper stands what is to be read: nothing to press or to fill in, and nothing beyond the edge of the sheet. */
export async function expectPaper(page: Page, where = 'here'): Promise<void> {
  await page.setViewportSize(sheet)
  await page.emulateMedia({ media: 'print' })
  expect.soft(await page.evaluate<string[]>(pressable), where).toEqual([])
  await expectNoSidewaysScroll(page, where)
  await page.emulateMedia({ media: 'screen' })
}

const pressable = `[...document.querySelectorAll('nav, button, input, select, textarea')]
  .filter((one) => one.checkVisibility({ visibilityProperty: true }))
  .map((one) => one.tagName + ' ' + (one.textContent || one.id).trim().slice(0, 40))`

/**
 * What a finger is to hit is as high as a finger. A link in the middle of a sentence, or one that is a line of text
 * by itself, may be as high as the text; so says the guideline too.
 */
export async function expectTouchable(page: Page, where = 'here'): Promise<void> {
  const screen = await page.context().newCDPSession(page)
  await screen.send('Emulation.setTouchEmulationEnabled', { enabled: true })
  expect.soft(await page.evaluate<boolean>(`matchMedia('(pointer: coarse)').matches`), where).toBe(true)
  expect.soft(await page.evaluate<string[]>(smallTargets), where).toEqual([])
  await screen.send('Emulation.setTouchEmulationEnabled', { enabled: false })
  await screen.detach()
}

const smallTargets = `[...document.querySelectorAll('button, summary, select, input, textarea, label:has(input), [role=button]')]
  .filter((one) => one.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
  .filter((one) => !(one.matches('input[type=radio], input[type=checkbox], input[type=file]')) && !one.closest('svg'))
  .map((one) => [one, one.getBoundingClientRect()])
  .filter(([, box]) => box.width > 1 && box.height < 43.5)
  .map(([one, box]) => one.tagName + ' ' + (one.textContent || one.id).trim().slice(0, 40) + ' ' + box.height.toFixed(0))`
