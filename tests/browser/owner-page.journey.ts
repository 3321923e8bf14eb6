import type { Page } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, surgeon, test } from './clinic.ts'

const stranger = { javaScriptEnabled: false, viewport: { width: 320, height: 640 } } as const

async function makeLink(page: Page, url: string, owner: string): Promise<string> {
  await page.goto(`${url}/case/tansy`)
  await page.getByText('Show the private links of this case').click()
  await page.getByRole('button', { name: `Make a private link for ${owner}` }).click()
  return page.getByLabel('Address').inputValue()
}

test('a link made on the case opens the owner’s page on a phone without a script; ended, it is closed at once', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const address = await makeLink(page, program.url, 'Rosalind Okafor')
  expect(address).toMatch(/\/o\/[\w-]{43}$/)
  await expectAccessible(page, 'the links of the case')
  await page.reload()
  await page.getByText('Show the private links of this case').click()
  const listed = page.getByRole('list', { name: 'Links of this case' }).getByRole('listitem')
  await expect(listed).toContainText('For Rosalind Okafor, at home')
  await expect(listed).toContainText('never')
  // It was told once: nowhere on the page does it stand again.
  expect(await page.content()).not.toContain(address.slice(-43))

  const phone = await (await browser.newContext(stranger)).newPage()
  const answer = await phone.goto(`${address}/before`)
  expect([answer?.status(), answer?.headers()['referrer-policy'], answer?.headers()['cache-control']]).toEqual([
    200,
    'no-referrer',
    'no-store',
  ])
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('Tansy: what can be done')
  await expectNoSidewaysScroll(phone, 'the owner’s page at 320')
  await phone.getByRole('link', { name: /^Next: Where the nerve/ }).click()
  await expect(phone.getByRole('heading', { name: /^Step 2 of 6/ })).toBeVisible()
  expect(phone.url()).toContain('step=2')

  await phone.getByLabel('First choice').selectOption({ label: 'Do not treat the ear' })
  await phone.getByLabel('Second choice').selectOption({ label: 'Go on with drops and tablets' })
  await phone.getByRole('button', { name: 'Show them side by side' }).click()
  await expect(
    phone.getByRole('heading', { name: '“Do not treat the ear” beside “Go on with drops and tablets”' }),
  ).toBeVisible()
  const table = phone.locator('table.two')
  await expect(table.getByRole('columnheader', { name: 'Go on with drops and tablets' })).toHaveCount(1)
  await expect(table.getByRole('rowheader', { name: 'Good side' })).toHaveCount(1)
  await expectNoSidewaysScroll(phone, 'two choices at 320')

  const pain = phone.getByRole('group', { name: 'That Tansy has no more pain from the ear' })
  await pain.getByRole('radio', { name: 'matters a lot' }).check()
  await phone.getByRole('radio', { name: 'Not decided yet' }).check()
  await phone.getByLabel('Questions to bring').fill('Who gives the eye gel at night?')
  await phone.getByRole('button', { name: 'Send this to the clinic' }).click()
  await expect(phone.getByRole('status')).toHaveText(/^Thank you\. We have it/)
  await expect(phone.getByText('Questions to bring: Who gives the eye gel at night?')).toBeVisible()

  // The surgeon sees it on the case, and that the link was opened.
  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByText('Who gives the eye gel at night?').first()).toBeAttached()
  await page.getByText('Show the private links of this case').click()
  await expect(listed).not.toContainText('never')
  page.once('dialog', (dialog) => void dialog.accept())
  await listed.getByRole('button', { name: /^End the link for Rosalind Okafor/ }).click()
  await expect(listed).toContainText(`ended`)
  await expect(listed).toContainText(surgeon.name)
  const gone = await phone.reload()
  expect(gone?.status()).toBe(404)
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('This page is closed')
  await expect(phone.getByRole('link', { name: /01632/ })).toBeVisible()
  await phone.context().close()
})

test('the page is whole for a screen reader and without colour, on a phone, a tablet and paper', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const address = await makeLink(page, program.url, 'Rosalind Okafor')
  const reader = await (await browser.newContext({ viewport: { width: 768, height: 1024 } })).newPage()
  await reader.goto(`${address}/before?a=teca-lbo&b=no-treatment&step=all`)
  await expectAccessible(reader, 'the owner’s page')

  // Headings without a gap, one of the first level; every square of dots says its number, beside the same in words.
  const levels = await reader
    .locator('h1, h2, h3, h4, h5')
    .evaluateAll((all) => all.map(({ tagName }) => Number(tagName[1])))
  expect(levels.filter((level) => level === 1)).toHaveLength(1)
  for (const [at, level] of levels.entries())
    expect(level - (levels[at - 1] ?? 0), `heading ${at}`).toBeLessThanOrEqual(1)
  const figures = reader.locator('.figure')
  expect(await figures.count()).toBeGreaterThan(8)
  for (const figure of await figures.all()) {
    const said = (await figure.locator('.framing').textContent()) ?? ''
    await expect(figure.getByRole('img')).toHaveAccessibleName(
      new RegExp(`^Of 100 .*: ${said.replaceAll(/[.()]/g, '\\$&')}$`),
    )
  }
  const weak = reader.getByRole('img', { name: 'Of 100 dogs: About 26 of 100 had this. About 74 of 100 did not.' })
  await expect(weak).toBeVisible()
  // Full dots and empty rings differ in shape: 26 that are filled, 74 that are only drawn round.
  const shapes = await weak
    .locator('path')
    .evaluateAll((paths) =>
      paths.map((path) => [path.getAttribute('fill'), (path.getAttribute('d')?.match(/M/g) ?? []).length]),
    )
  expect(shapes).toEqual([
    ['currentColor', 26],
    ['none', 74],
  ])
  for (const table of await reader.getByRole('table').all()) {
    expect(await table.getByRole('columnheader').count()).toBeGreaterThan(1)
    expect(await table.getByRole('rowheader').count()).toBeGreaterThan(0)
  }
  // Pictures of the ear have their words: in the drawing for a screen reader, and folded in beside it.
  for (const figure of await reader.locator('figure').all()) {
    await expect(figure.getByRole('img')).toHaveAccessibleName(/Line drawing of the LEFT ear of a dog/)
    await expect(figure.getByText('This picture in words')).toBeVisible()
  }

  await reader.emulateMedia({ forcedColors: 'active' })
  await expect(weak).toBeVisible()
  await reader.emulateMedia({ forcedColors: 'none', media: 'print' })
  await reader.setViewportSize({ width: 718, height: 1047 })
  await expectNoSidewaysScroll(reader, 'on paper')
  await expect(reader.getByRole('button')).toHaveCount(0)
  await reader.emulateMedia({ media: 'screen' })
  // Text twice as large on a narrow phone.
  await reader.setViewportSize({ width: 320, height: 640 })
  await reader.evaluate(
    "for (const sheet of document.styleSheets) sheet.insertRule('html { font-size: 200% !important }')",
  )
  await expectNoSidewaysScroll(reader, 'at 320 with letters twice as large')
  await reader.context().close()
})

test('a tablet in the room opens the page beside the case; no other address of the clinic opens with a link', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/tansy`)
  await page.getByText('Show the private links of this case').click()
  const [tab] = await Promise.all([
    page.waitForEvent('popup'),
    page.getByRole('button', { name: 'Show on this tablet, for Rosalind Okafor' }).click(),
  ])
  await expect(tab.getByRole('heading', { level: 1 })).toHaveText('At home with Tansy')
  const token = tab.url().split('/').at(-2)
  expect(token).toMatch(/^[\w-]{43}$/)
  await tab.getByRole('link', { name: 'The choices, as before' }).click()
  await expect(tab.getByRole('heading', { level: 1 })).toHaveText('Tansy: what can be done')
  await expect(tab.getByText('We made this page for our talk today.')).toBeVisible()
  const elsewhere = await browser.newContext()
  for (const path of ['/api/actions/read-case', '/api/actions/list-owner-links']) {
    const answer = await elsewhere.request.post(`${program.url}${path}`, {
      headers: { authorization: `Bearer ${token}`, cookie: `quiet-ear-session=${token}` },
      data: { stream: 'case:tansy', after: null },
    })
    expect([path, answer.status()]).toEqual([path, 401])
  }
  const stranger = await elsewhere.newPage()
  await stranger.goto(`${program.url}/case/tansy`)
  await expect(stranger.getByRole('heading', { name: 'Tansy' })).toHaveCount(0)
  await elsewhere.close()
})
