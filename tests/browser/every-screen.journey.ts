import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test } from './clinic.ts'
import { screens, sizes } from './screens.ts'

test('every screen at every size: nothing sticks out, and the automated check finds no hindrance', async ({
  page,
  program,
}) => {
  test.setTimeout(600_000)
  await openInvented(program, page)
  for (const [name, path] of screens) {
    await test.step(name, async () => {
      await page.setViewportSize({ width: 1280, height: 900 })
      await page.goto(`${program.url}${path}`)
      await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1)
      await expect(page.getByText('Reading …')).toHaveCount(0)
      await expectAccessible(page)
      for (const [, width, height] of sizes) {
        await page.setViewportSize({ width, height })
        await expectNoSidewaysScroll(page)
      }
      await page.emulateMedia({ colorScheme: 'dark' })
      await expectAccessible(page)
      await page.emulateMedia({ colorScheme: 'light' })
    })
  }
})
