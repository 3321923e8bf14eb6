import type { Page } from '@playwright/test'
import { expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, surgeon, test } from './clinic.ts'

const elsewhere = { javaScriptEnabled: false, viewport: { width: 360, height: 740 } } as const
const stream = 'case:barley'

async function makeLink(page: Page, url: string, what: RegExp): Promise<string> {
  await page.goto(`${url}/case/barley`)
  await page.getByText('Show the links for the referring practice').click()
  const asked = page.getByLabel('What they are asked to look at')
  await asked.waitFor()
  const options = await asked.getByRole('option').allTextContents()
  await asked.selectOption({ label: options.find((option) => what.test(option)) ?? 'no such look' })
  await page.getByRole('button', { name: 'Make a link' }).click()
  return page.getByLabel('Address').inputValue()
}

/** The day today in London, as a field for a day takes it. */
function today(): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone: 'Europe/London' }).format(Date.now())
}

test('the stitches are looked at in another practice: asked by a link, answered on a phone without a script, read here', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const address = await makeLink(page, program.url, /^Stitches and wound/)
  expect(address).toMatch(/\/v\/[\w-]{43}$/)
  const listed = page.getByRole('list', { name: 'Links of the referring practice' }).getByRole('listitem')
  await expect(listed).toContainText('stitches and wound')
  await expect(listed).toContainText('never')
  const before = (await entriesOf(program, page, stream)).length

  const phone = await (await browser.newContext(elsewhere)).newPage()
  const opened = await phone.goto(address)
  expect([opened?.status(), opened?.headers()['referrer-policy'], opened?.headers()['cache-control']]).toEqual([
    200,
    'no-referrer',
    'no-store',
  ])
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('Barley: how is the ear?')
  await expect(phone.getByText(/today is day \d+ after the operation/)).toBeVisible()
  await expect(phone.getByRole('heading', { name: 'Phone us now, and do not wait for this form' })).toBeVisible()
  await expectNoSidewaysScroll(phone, 'the short form at 360')

  // Something is missing: nothing is sent, and nothing that was typed is lost.
  await phone.getByLabel('Wound', { exact: true }).selectOption({ label: 'closed' })
  await phone.getByLabel('Stitches', { exact: true }).selectOption({ label: 'out' })
  await phone.getByLabel('Head tilt', { exact: true }).selectOption({ label: 'yes' })
  await phone.getByLabel(/^Balance looked at/).check()
  await phone.getByLabel(/^Tear test/).fill('fifteen')
  await phone.getByLabel('Anything else we should know').fill('Eats well, carries the head straight.')
  const send = phone.getByRole('button', { name: /^Send this to/ })
  await send.click()
  const alert = phone.getByRole('alert')
  await expect(alert).toContainText('Nothing was sent yet')
  await expect(alert.getByRole('link')).toHaveText([
    'Who examined: type your name.',
    'Day of the look: give the day.',
    'Tear test: type a number of millimetres, for example 12.',
    /^Balance looked at.*: a sign below says otherwise\./,
  ])
  await expect(phone.getByLabel('Wound', { exact: true })).toHaveValue('closed')
  await expect(phone.getByLabel('Anything else we should know')).toHaveValue('Eats well, carries the head straight.')
  await expectNoSidewaysScroll(phone, 'the refused form at 360')
  expect(await entriesOf(program, page, stream)).toHaveLength(before)

  await phone.getByLabel('Head tilt', { exact: true }).selectOption({ label: 'not assessed' })
  await phone.getByLabel('Who examined').fill('Wren Hollis')
  await phone.getByLabel('Day of the look').fill(today())
  await phone.getByLabel(/^Tear test/).fill('15')
  await send.click()
  await expect(phone.getByRole('status')).toContainText('Thank you. We have it, and a surgeon reads it.')
  // Filled in the same way and sent once more, it is there once.
  await phone.goto(address)
  await phone.getByLabel(/^Balance looked at/).check()
  await phone.getByLabel('Who examined').fill('Wren Hollis')
  await phone.getByLabel('Day of the look').fill(today())
  await phone.getByLabel('Wound', { exact: true }).selectOption({ label: 'closed' })
  await phone.getByLabel('Stitches', { exact: true }).selectOption({ label: 'out' })
  await phone.getByLabel(/^Tear test/).fill('15')
  await phone.getByLabel('Anything else we should know').fill('Eats well, carries the head straight.')
  await send.click()
  await expect(phone.getByRole('status')).toBeVisible()
  const written = (await entriesOf(program, page, stream)).slice(before)
  expect(written.map(({ header }) => header.kind)).toEqual(['check', 'vet-answer'])
  expect(written[0]?.body).toMatchObject({
    seenBy: 'referring-vet',
    wound: 'closed',
    sutures: 'out',
    painful: 'not-assessed',
    headTilt: 'no',
    nystagmus: 'no',
    unsteady: 'no',
    gag: 'not-assessed',
  })

  // Here: what was owed is settled, what they wrote waits for the surgeon, and it says who examined.
  await page.goto(`${program.url}/case/barley`)
  const year = page.getByRole('region', { name: 'Year' })
  await expect(year.getByText('Read the answer of the referring practice').first()).toBeVisible()
  await expect(year.getByText(/^Wren Hollis of /).first()).toBeVisible()
  await expect(year.getByText(/^Stitches and wound, /)).toHaveCount(0)
  await expect(page.getByText('Eats well, carries the head straight.').first()).toBeAttached()
  await page.getByText('Show the links for the referring practice').click()
  page.once('dialog', (dialog) => void dialog.accept())
  await listed.getByRole('button', { name: /^End the link for/ }).click()
  await expect(listed).toContainText(surgeon.name)
  expect((await phone.reload())?.status()).toBe(404)
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('This page is closed')
  await phone.context().close()
})

test('a death told on the form ends nothing by itself, and stands first for the surgeon', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const address = await makeLink(page, program.url, /^for 6 weeks/)
  const phone = await (await browser.newContext(elsewhere)).newPage()
  await phone.goto(address)
  await phone.getByLabel('Who examined').fill('Wren Hollis')
  await phone.getByLabel('Barley has died or was put to sleep').check()
  await phone.getByRole('button', { name: /^Send this to/ }).click()
  await expect(phone.getByRole('status')).toContainText('Thank you')
  const kinds = (await entriesOf(program, page, stream)).map(({ header }) => header.kind)
  expect([kinds.includes('death'), kinds.filter((kind) => kind === 'vet-answer')]).toEqual([false, ['vet-answer']])
  await page.goto(`${program.url}/case/barley`)
  const ring = page.getByText('Ring the referring practice: it says that the animal has died')
  await expect(ring.first()).toBeVisible()
  // What is still owed goes on being owed until a person of the house has written the death.
  await expect(page.getByRole('region', { name: 'Year' }).getByText(/^Stitches and wound, /)).toBeVisible()
  await phone.context().close()
})
