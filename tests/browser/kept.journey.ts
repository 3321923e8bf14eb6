import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { enrol, entriesOf, expect, keptHere, nurse, openInvented, type Program, test } from './clinic.ts'
import { EntryForm, fillWeight } from './pages/entry-form.ts'

/** Writes a weight while the network is away; ends on the page of what is kept here. */
async function weighOffline(page: Page, program: Program, weight: string): Promise<void> {
  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByRole('heading', { level: 1, name: 'Tansy' })).toBeVisible()
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await page.goto(`${program.url}/case/tansy/write/weight`)
  const form = await EntryForm.here(page)
  await page.context().setOffline(true)
  await fillWeight(form, weight)
  await form.keep()
  await page.getByRole('link', { name: '1 entry waits on this device' }).click()
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(/Weight: Tansy/)
}

test('what the server refused is read in words, and is corrected, copied or sent again', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const ward = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage()
  const id = await enrol(program, page, nurse, '2468', ward)
  await weighOffline(ward, program, '18.9 kg')
  await expect(ward.getByText('Waits to be sent')).toBeVisible()
  await expect(ward.getByText('18.9 kg').first()).toBeVisible()
  await expect(ward.getByText(/by Basil Ode/)).toBeVisible()

  // Meanwhile the clinic takes the right to write from her.
  const as = (role: string) =>
    page.context().request.post(`${program.url}/api/actions/put-person`, {
      data: { id, body: { name: nurse.name, role, letters: null } },
    })
  expect((await as('read-only')).ok()).toBe(true)
  await ward.context().setOffline(false)
  await expect(ward.getByText('Not accepted', { exact: true })).toBeVisible({ timeout: 30_000 })
  await expect(ward.getByText(/The server said:/)).toBeVisible()
  await expect(ward.getByRole('definition').filter({ hasText: '18.9 kg' })).toBeVisible()
  await expect(ward.locator('pre')).toBeHidden()
  await expectNoSidewaysScroll(ward)
  await expectAccessible(ward)
  await ward.screenshot({ path: test.info().outputPath('kept-refused.png'), fullPage: true })

  const [download] = await Promise.all([
    ward.waitForEvent('download'),
    ward.getByRole('button', { name: 'Take a copy' }).click(),
  ])
  const copy = readFileSync(await download.path(), 'utf8')
  expect(copy).toContain('18.9 kg')
  expect(copy).toContain('"supersedes"')

  // Only once the server has said no again: an answer under way would meet the right that is given back below.
  const refused = ward.waitForResponse('**/api/actions/accept-entries')
  await ward.getByRole('button', { name: 'Send again' }).click()
  await refused
  await expect(ward.getByText('Not accepted', { exact: true })).toBeVisible()

  // The right is given back; the entry is corrected and goes as one of its own.
  expect((await as('nurse')).ok()).toBe(true)
  await ward.getByRole('link', { name: 'Correct' }).click()
  await expect(ward.getByText(/^The server did not accept it:/)).toBeVisible()
  await expect(ward.getByLabel('Weight with its unit')).toHaveValue('18.9 kg')
  await ward.getByLabel('Weight with its unit').fill('19.1 kg')
  await ward.screenshot({ path: test.info().outputPath('kept-correct.png'), fullPage: true })
  await new EntryForm(ward).keep()
  await expect(ward.getByRole('link', { name: /waits? on this device/ })).toHaveCount(0, { timeout: 30_000 })
  const weights = JSON.stringify(
    (await entriesOf(program, page, 'case:tansy')).filter((one) => one.header.kind === 'weight'),
  )
  expect(weights).toContain('"19.1"')
  expect(weights).not.toContain('"18.9"')
  await ward.goto(`${program.url}/kept`)
  await expect(ward.getByRole('heading', { name: 'Nothing waits here' })).toBeVisible()
  await ward.screenshot({ path: test.info().outputPath('kept-nothing.png'), fullPage: true })
})

test('other bytes under the same number: both are shown beside each other', async ({ page, program }) => {
  await openInvented(program, page)
  await page.setViewportSize({ width: 390, height: 844 })
  await weighOffline(page, program, '18.9 kg')
  const [kept] = await keptHere(page)
  if (!kept) throw new Error('Nothing is kept on this device.')
  const other = { ...kept.entry, body: { ...kept.entry.body, weight: { value: '20.2', unit: 'kg' }, typed: null } }
  const sent = await page.context().request.post(`${program.url}/api/actions/accept-entries`, {
    data: { clinic: kept.entry.clinic, entries: [other] },
  })
  expect(await sent.text()).toContain('accepted')
  await page.context().setOffline(false)
  await expect(page.getByText('Another entry has the same number')).toBeVisible({ timeout: 30_000 })
  await expect(page.getByRole('cell', { name: /20\.2 kg/ })).toBeVisible()
  await expect(page.getByRole('cell', { name: /18\.9 kg/ })).toBeVisible()
  await expectNoSidewaysScroll(page)
  await page.screenshot({ path: test.info().outputPath('kept-aside.png'), fullPage: true })
  page.once('dialog', (dialog) => void dialog.accept())
  await page.getByRole('button', { name: 'Let it go' }).click()
  await expect(page.getByRole('heading', { name: 'Nothing waits here' })).toBeVisible()
})

/** Puts something in a store of the page's own database, as another program or a fault may have left it. */
async function leaveBehind(page: Page, store: 'outbox' | 'rows', key: string, value: object): Promise<void> {
  await page.evaluate(`new Promise((done) => {
    const open = indexedDB.open('quiet-ear')
    open.onsuccess = () => {
      const tx = open.result.transaction('${store}', 'readwrite')
      tx.objectStore('${store}').put(${JSON.stringify(value)}, '${key}')
      tx.oncomplete = () => { open.result.close(); done(null) }
    }
  })`)
}

async function draftsHere(page: Page): Promise<string> {
  return await page.evaluate(`new Promise((done) => {
    const open = indexedDB.open('quiet-ear')
    open.onsuccess = () => {
      const all = open.result.transaction('drafts').objectStore('drafts').getAll()
      all.onsuccess = () => { open.result.close(); done(JSON.stringify(all.result)) }
    }
  })`)
}

test('what cannot be read on this device is shown as its text, holds nothing up, and is set aside by a person', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.setViewportSize({ width: 390, height: 844 })
  await weighOffline(page, program, '18.9 kg')
  const left = { state: 'waiting', because: null, order: 1, entry: { kind: 'weight', said: 'about 18 kg, Tansy' } }
  await leaveBehind(page, 'outbox', 'half an entry', left)
  await leaveBehind(page, 'rows', 'half a row', {
    id: 'half a row',
    state: 'waiting',
    because: null,
    body: { name: 'Ada' },
  })
  // Of a kind that is known, but with an answer of which nothing can be made: the case must stand all the same.
  const [whole] = await keptHere(page)
  const odd = { ...whole?.entry, id: '0190a7c2-0009-7000-8000-000000000001', body: { weight: 7 } }
  await leaveBehind(page, 'outbox', odd.id, { ...left, entry: odd, order: 2, state: 'refused', because: 'No.' })
  await page.reload()
  await expect(page.getByRole('heading', { name: 'Something that cannot be read' })).toHaveCount(3)
  await expect(page.getByText('Waits to be sent')).toBeVisible()

  // What can be sent is sent, and the lists and the case stand.
  await page.context().setOffline(false)
  await expect(page.getByText('Waits to be sent')).toHaveCount(0, { timeout: 30_000 })
  await expect(page.getByText('This page failed')).toHaveCount(0)
  await expectNoSidewaysScroll(page)
  await expectAccessible(page)
  await page.screenshot({ path: test.info().outputPath('kept-unreadable.png'), fullPage: true })
  expect(JSON.stringify(await entriesOf(program, page, 'case:tansy'))).toContain('"18.9"')
  await page.goto(`${program.url}/case/tansy`)
  await expect(page.getByRole('heading', { level: 1, name: 'Tansy' })).toBeVisible()
  await page.goto(program.url)
  await expect(page.getByRole('heading', { level: 1, name: 'Owed' })).toBeVisible()
  await page.getByRole('link', { name: 'Something kept on this device cannot be read' }).click()

  page.on('dialog', (dialog) => void dialog.accept())
  for (const [text, others] of [
    ['Ada', 2],
    ['"weight": 7', 1],
    ['about 18 kg, Tansy', 0],
  ] as const) {
    const found = page.getByRole('listitem').filter({ hasText: text })
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      found.getByRole('button', { name: 'Set it aside' }).click(),
    ])
    expect(readFileSync(await download.path(), 'utf8')).toContain(text)
    await expect(page.getByRole('heading', { name: 'Something that cannot be read' })).toHaveCount(others)
    expect(await draftsHere(page)).toContain(text.replaceAll('": ', '":'))
  }
})
