import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { act, entriesOf, expect, openInvented, password, surgeon, test } from './clinic.ts'

test('over a plain connection the theatre record works as long as its page stays open, and says so', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const context = await browser.newContext()
  const tablet = await context.newPage()
  await context.addInitScript(noteDurability)
  const url = `http://clinic.lan:${new URL(program.url).port}`
  await tablet.goto(`${url}/case/juniper/room/operation-juniper`)
  await tablet.getByLabel('Name for signing in').fill(surgeon.login)
  await tablet.getByLabel('Password').fill(password)
  await tablet.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(tablet.getByRole('heading', { level: 1, name: 'In theatre' })).toBeVisible()
  const allowed = '[isSecureContext, "serviceWorker" in navigator, "wakeLock" in navigator, "randomUUID" in crypto]'
  expect(await tablet.evaluate(allowed)).toEqual([false, false, false, false])
  await expect(tablet.getByText('Leave this page open: it is not opened over a secure connection')).toHaveCount(1)
  await expect(tablet.getByText(/This (screen may go dark|device may throw away)/)).toHaveCount(0)
  await expect(tablet.getByRole('link', { name: /Connect a tablet$/ })).toHaveAttribute('href', '/connect')
  await expectAccessible(tablet)
  await expectNoSidewaysScroll(tablet)

  const row = (what: string) =>
    tablet.getByRole('listitem').filter({ has: tablet.getByRole('heading', { name: what, exact: true }) })
  await tablet.getByRole('button', { name: 'Done now: Skin' }).click()
  await expect(row('Skin')).toContainText('sent')

  // What a person wrote is asked onto the disk itself, not only into the memory before it.
  expect(await tablet.evaluate('[...new Set(globalThis.askedFor)]')).toContain('outbox,rows strict')

  // Every part of the app was loaded ahead: without the network the open page goes on to any screen of theatre.
  await tablet.waitForTimeout(3_000)
  await program.kill()
  await tablet.getByRole('button', { name: 'Done now: Facial nerve' }).click()
  await expect(row('Facial nerve')).toContainText('kept here')
  await tablet.getByRole('link', { name: 'Emergency', exact: true }).click()
  await tablet.getByRole('button', { name: 'Bleeding', exact: true }).click()
  await expect(tablet.getByRole('timer')).toHaveText(/^0:0\d$/)
  await tablet.getByRole('link', { name: 'Back to the theatre record' }).click()
  await tablet
    .getByRole('navigation', { name: 'Spoken pauses' })
    .getByRole('link', { name: /^Pause before the incision/ })
    .click()
  await expect(tablet.getByRole('heading', { level: 2 })).toHaveText('Everyone said name and role; anyone may stop')

  await program.start()
  const stamps = async () =>
    (await entriesOf(program, page, 'case:juniper'))
      .filter(({ header }) => header.kind === 'theatre-stamp')
      .map(({ body }) => body.checkpoint)
  await expect.poll(stamps, { timeout: 30_000 }).toEqual(['k1-skin', 'k3-facial-nerve', 'emergency-on-bleeding-1'])

  // Signed out on the server: the same page goes on here too.
  const { devices } = await act<{ devices: { session: string; here: boolean }[] }>(
    page.context(),
    program.url,
    'list-devices',
    {},
  )
  for (const { session, here } of devices) {
    if (!here) await act(page.context(), program.url, 'end-session', { session })
  }
  await tablet.getByRole('link', { name: 'To the theatre record' }).click()
  await tablet.getByRole('button', { name: 'Done now: Vertical canal free' }).click()
  await expect(row('Vertical canal free')).toContainText('kept here')
  await expect(tablet.getByText(/^Signed out on the server\./)).toBeVisible()
  await context.close()
})

/** Notes of every writing into the app's own database how lasting it was asked to be. */
const noteDurability = `{
  globalThis.askedFor = []
  const begin = IDBDatabase.prototype.transaction
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    if (mode === 'readwrite') globalThis.askedFor.push([stores].flat() + ' ' + options?.durability)
    return begin.call(this, stores, mode, options)
  }
}`
