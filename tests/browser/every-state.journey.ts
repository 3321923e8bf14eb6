import { expectAccessible, expectContrast, expectNoSidewaysScroll, expectPaper, expectTouchable } from './accessible.ts'
import { groups } from './states/index.ts'
import { expect, test } from './states/stage.ts'

// Each group has a stage of its own: two of them share the two processors.
test.describe.configure({ mode: 'parallel' })

/** Nothing sticks out, is too small for a finger or printed in vain, and the automated check finds no hindrance. */
for (const [group, states] of groups) {
  test(`every state: ${group}`, async ({ stage }) => {
    test.setTimeout(600_000)
    for (const { name, seat, bring, leave, printed } of states) {
      await test.step(name, async () => {
        const page = await stage.page(seat)
        await page.setViewportSize({ width: 1280, height: 900 })
        await bring(page, stage.url(seat), stage)
        await expect.soft(page.getByRole('heading', { level: 1, includeHidden: true }), name).toHaveCount(1)
        await expectAccessible(page, name)
        await page.emulateMedia({ colorScheme: 'dark' })
        await expectContrast(page, name)
        await page.emulateMedia({ colorScheme: 'light' })
        for (const width of [820, 320]) {
          await page.setViewportSize({ width, height: 800 })
          await expectNoSidewaysScroll(page, name)
        }
        await expectTouchable(page, name)
        if (printed) await expectPaper(page, name)
        await leave?.(page)
      })
    }
  })
}
