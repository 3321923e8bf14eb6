import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test } from './clinic.ts'

const heading =
  'standard,edition,year,convention,audience,host,organism,drug,sites,method,disk,susceptible,between,resistant'
const row = 'Invented standard,ed1,2026,CLSI,animals,dog,Staphylococcus spp.,cefalexin,soft-tissue,MIC,,<=16,32,>=64'
const file = (name: string, line: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(`${heading}\r\n${line}\r\n`),
})

test('a clinic loads its own copy of breakpoints, is told what is wrong in it, and reads animals by it', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/settings/breakpoints`)
  await expect(page.getByText('CLSI VET01S ed7 (2024), as long as nothing else is chosen here')).toBeVisible()

  const load = page.getByRole('region', { name: 'Load a copy' })
  await load.getByLabel('File').setInputFiles(file('ours.csv', row.replace('cefalexin', 'cefalexine')))
  await expect(load.getByText('Nothing of ours.csv can be taken.')).toBeVisible()
  await expect(load.getByText('line 2, drug: Nobody here knows the drug “cefalexine”.', { exact: false })).toBeVisible()
  await expect(load.getByRole('button', { name: 'Load it' })).toHaveCount(0)
  await expectAccessible(page)

  await load.getByLabel('File').setInputFiles(file('ours.csv', row))
  await expect(load.getByText('Invented standard ed1 (2026): 1 row, all readable.')).toBeVisible()
  await load.getByRole('button', { name: 'Load it' }).click()
  await expect(load.getByText('This needs an answer.')).toBeVisible()
  await load.getByLabel('Whose copy is it').fill('Our copy, compared by two of us.')
  await load.getByRole('button', { name: 'Load it' }).click()
  const copies = page.getByRole('region', { name: 'Our own copies' })
  await expect(copies.getByRole('listitem')).toContainText('Invented standard ed1 (2026)')
  await expect(copies.getByRole('listitem')).toContainText('Our copy, compared by two of us.')

  const choose = page.getByRole('region', { name: 'Read animals by another edition' })
  await choose.getByRole('button', { name: 'Read by this edition' }).click()
  await choose.getByLabel('Edition').selectOption({ label: await ownOption(choose) })
  await choose.getByLabel('Why').fill('We own the document.')
  await choose.getByRole('button', { name: 'Read by this edition' }).click()
  await expect(page.getByText('Invented standard ed1 (2026): We own the document.')).toBeVisible()
  await expectAccessible(page)
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
    if (process.env.LOOK)
      await page.screenshot({ path: `${process.env.LOOK}/own-breakpoints-${width}.png`, fullPage: true })
  }

  await page.goto(`${program.url}/settings/policies`)
  await expect(
    page.getByText('Edition of breakpoints that animals are read by: Invented standard ed1 (2026)'),
  ).toBeVisible()
  await page.goto(`${program.url}/sources/breakpoints`)
  await page.getByRole('link', { name: 'Invented standard ed1 (2026)' }).click()
  await expect(page.getByText('Our own copy: Our copy, compared by two of us,', { exact: false })).toBeVisible()
  await expect(page.getByText('S ≤ 16; I 32; R ≥ 64')).toBeVisible()
  await expectAccessible(page)
  if (process.env.LOOK) await page.screenshot({ path: `${process.env.LOOK}/own-edition.png`, fullPage: true })
  await page.goto(`${program.url}/settings/breakpoints`)

  // The copy that results are read by is taken back: ours holds again, and the page says why.
  await copies.getByRole('button', { name: 'Take back' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Why').fill('A row was wrong.')
  await dialog.getByRole('button', { name: 'Take back' }).click()
  await expect(page.getByText('CLSI VET01S ed7 (2024), as long as nothing else is chosen here')).toBeVisible()
  await expect(page.getByText('by which animals cannot be read', { exact: false })).toBeVisible()
})

async function ownOption(choose: import('@playwright/test').Locator): Promise<string> {
  const option = choose.getByRole('option').filter({ hasText: 'our own copy' })
  return (await option.textContent()) ?? ''
}
