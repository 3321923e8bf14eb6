import AxeBuilder from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'

/** Nothing that the automated check knows to be a hindrance, in the page as it stands now. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze()
  const said = violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes.map(({ target, failureSummary }) => `${target.join(' ')} ${failureSummary}`).join('\n')}`,
  )
  expect(said).toEqual([])
}

/** Nothing sticks out sideways: a phone scrolls down only. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  // What measures itself is drawn again a moment after the window changed.
  const wider = () =>
    page.evaluate<number>('document.documentElement.scrollWidth - document.documentElement.clientWidth')
  await expect.poll(wider).toBeLessThanOrEqual(0)
}
