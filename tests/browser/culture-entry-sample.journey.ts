import { expectAccessible } from './accessible.ts'
import { expect, openInvented, test } from './clinic.ts'

test('an entry sample that grew nothing points to the one after lavage that did', async ({ page, program }) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/rowan/results`)
  const entry = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: /^R-1: bulla, on entry/ }) })
  await expect(entry).toContainText('no growth')
  await entry.getByRole('link', { name: /^Final report of/ }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Result of R-1')
  await expect(page.getByText('No growth is not “no infection”')).toBeVisible()
  await expectAccessible(page)
  await page.getByRole('link', { name: 'Growth: Staphylococcus pseudintermedius', exact: true }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Result of R-2')
  await expect(page.getByText(/is methicillin-resistant \(/)).toBeVisible()
})
