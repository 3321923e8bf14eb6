import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { expectAccessible } from './accessible.ts'
import { entriesOf, expect, openInvented, type Program, test } from './clinic.ts'

const photograph = fileURLToPath(new URL('../../docs/plate/dog-transverse-planned-left.png', import.meta.url))

async function openNew(page: Page, program: Program): Promise<void> {
  await page.goto(`${program.url}/new`)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('New referral')
}

/** Goes on with the tab key until that control has the focus, as somebody without a mouse does. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let step = 0; step < 80; step += 1) {
    await page.keyboard.press('Tab')
    const label = await page.evaluate<string>(
      "(document.activeElement?.labels?.[0]?.textContent ?? document.activeElement?.textContent ?? '').trim()",
    )
    if (label === name) return
  }
  throw new Error(`The tab key never reaches ${name}.`)
}

async function sayTheRest(page: Page, complaint: string): Promise<void> {
  await page.getByLabel('the owner', { exact: true }).check()
  await page.getByLabel('LEFT', { exact: true }).check()
  await page.getByLabel('What is wrong, in their words').fill(complaint)
  await page.getByLabel('routine', { exact: true }).check()
  await page.getByLabel('In your words').fill('Seen by the vet today.')
}

test('a chip with two digits swapped finds the likely file; the referral goes to it only when a person says so', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await openNew(page, program)
  await page.getByLabel('Chip').fill('000000000001710')
  await expect(page.getByText('the same chip but for two digits that changed places')).toBeVisible()
  await sayTheRest(page, 'Her left ear smells again.')
  await page.getByLabel('Name', { exact: true }).first().fill('Tansy')
  await page.getByLabel('dog', { exact: true }).check()
  await page.getByRole('region', { name: 'Owner' }).getByLabel('Name').fill('Rosalind Okafor')
  const keep = page.getByRole('button', { name: 'Keep the referral' })
  await expect(keep).toBeDisabled()
  await expect(page.getByText(/Still to be said: .*same animal/)).toBeVisible()
  await expectAccessible(page)
  await page.getByLabel('The same animal: add the referral to its case').check()
  // The ear that smells again was operated here, whatever words are used.
  const asked = page.getByRole('region', { name: 'Does this belong to an ear we operated?' })
  await expect(asked).toContainText('LEFT ear of Tansy')
  await asked.getByLabel(/^not sure/).check()
  await keep.click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The referral of Tansy is kept')
  await expect(page.getByText('Never stop steroid tablets at once.')).toBeVisible()
  const added = async () => (await entriesOf(program, page, 'case:tansy')).slice(-3).map(({ header }) => header.kind)
  await expect.poll(added).toEqual(expect.arrayContaining(['referral', 'late-sign', 'note']))
})

test('a referral is written by keyboard alone, survives a dead server, and another animal stays another', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await openNew(page, program)
  await tabTo(page, 'the owner')
  await page.keyboard.press('Space')
  await tabTo(page, 'LEFT')
  await page.keyboard.press('Space')
  await tabTo(page, 'What is wrong, in their words')
  await page.keyboard.type('Shakes her head.')
  await tabTo(page, 'Name')
  await page.keyboard.type('Tansi')
  await tabTo(page, 'dog')
  await page.keyboard.press('Space')
  await tabTo(page, 'Chip')
  await page.keyboard.type('000000000001710')
  await tabTo(page, 'Born')
  await page.keyboard.type('2019')
  await tabTo(page, 'Name')
  await page.keyboard.type('Zofia Quill')
  await tabTo(page, 'Phone')
  await page.keyboard.type('01632 960777')
  await tabTo(page, 'The same animal: add the referral to its case')
  await page.keyboard.press('ArrowDown')
  await tabTo(page, 'How do you know it is another?')
  await page.keyboard.type('A litter mate, chipped the same day.')

  await program.kill()
  await page.evaluate('new Promise((done) => setTimeout(done, 300))')
  await program.start()
  await page.reload()
  await expect(page.getByLabel('What is wrong, in their words')).toHaveValue('Shakes her head.')
  await expect(page.getByLabel('How do you know it is another?')).toHaveValue('A litter mate, chipped the same day.')
  await expect(page.getByText('You began this call')).toBeVisible()

  await page.getByLabel('What is wrong, in their words').focus()
  await tabTo(page, 'yes')
  await page.keyboard.press('Space')
  await expect(page.getByText('By what was answered: today.')).toBeVisible()
  await expect(page.getByText('Head tilt: a sign of the inner ear or the brain', { exact: false })).toBeVisible()
  await tabTo(page, 'Keep the referral')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The referral of Tansi is kept')
  await page.getByRole('link', { name: 'Open the case of Tansi' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tansi')
  await expect(page.getByText('Zofia Quill').first()).toBeVisible()
  const stream = `case:${new URL(page.url()).pathname.split('/').at(-1)}`
  const written = async () => (await entriesOf(program, page, stream)).map(({ header }) => header.kind).sort()
  await expect.poll(written).toEqual(['household', 'identity', 'note', 'referral'])
})

test('while the server is away a new owner is kept too, and the case can be opened', async ({ page, program }) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/`)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await openNew(page, program)
  await program.kill()
  await page.getByLabel('Name', { exact: true }).first().fill('Bryony')
  await page.getByLabel('cat', { exact: true }).check()
  await page.getByRole('region', { name: 'Owner' }).getByLabel('Name').fill('Maud Ferris')
  await sayTheRest(page, 'Polyp, says the vet.')
  await page.getByRole('button', { name: 'Keep the referral' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The referral of Bryony is kept')
  await page.getByRole('link', { name: 'Open the case of Bryony' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Bryony')
  await expect(page.getByText('Maud Ferris').first()).toBeVisible()
  await page.getByRole('link', { name: 'Find', exact: true }).click()
  await page.getByLabel('Name, chip, owner or phone').fill('ferris')
  await expect(page.getByRole('link', { name: 'Bryony' })).toBeVisible()
  await program.start()
  await expect(page.getByText(/waits? on this device/)).toHaveCount(0, { timeout: 40_000 })
  await page.goto(`${program.url}/find`)
  await expect(page.getByText('Maud Ferris').first()).toBeVisible()
})

test('a paper waits in the tray until it is filed to an ear; taken back in the tray or in the case, it waits again', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/tray`)
  await page.getByLabel('Choose files').setInputFiles([
    { name: 'culture.png', mimeType: 'image/png', buffer: readFileSync(photograph) },
    { name: 'IMG_1.HEIC', mimeType: 'image/heic', buffer: Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0') },
  ])
  await expect(page.getByText('IMG_1.HEIC was not taken in')).toBeVisible()
  await page.reload()
  await page.getByLabel('by post').check()
  await page.getByLabel('From whom').fill('Northfold Laboratory')
  await page.getByRole('button', { name: 'Put it in the tray' }).click()
  await expect(page.getByRole('heading', { name: 'Waiting' })).toContainText('1')
  await page.goto(`${program.url}/`)
  await page.getByRole('link', { name: 'File what came in: paper or picture from Northfold Laboratory' }).click()

  await page.getByRole('button', { name: 'File it' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Animal, chip, owner or phone').fill('tans')
  await dialog.getByLabel(/Tansy, dog/).check()
  await dialog.getByRole('group', { name: 'Which ear does it belong to?' }).getByLabel('RIGHT').check()
  await dialog.getByLabel('What is it?').selectOption('laboratory-report')
  await dialog.getByLabel('Title').fill('Culture of the ear canal')
  await dialog.getByRole('group', { name: 'Which side does it name itself?' }).getByLabel('LEFT').check()
  await expect(dialog.getByText('It names LEFT and is filed to RIGHT')).toBeVisible()
  await expectAccessible(page)
  await dialog.getByRole('button', { name: 'File to Tansy, RIGHT' }).click()
  await expect(page.getByText('filed to Tansy, RIGHT', { exact: false })).toBeVisible()
  const last = async () => (await entriesOf(program, page, 'case:tansy')).at(-1)?.header.kind
  await expect.poll(last).toBe('paper')

  await page.getByRole('button', { name: 'Take it back to the tray' }).click()
  await page.getByLabel('Why').fill('It is of the LEFT ear.')
  await page.getByRole('button', { name: 'Take it back', exact: true }).click()
  await expect(page.getByRole('heading', { name: 'Waiting' })).toContainText('1')
  await expect.poll(last).toBe('withdrawal')

  await page.getByRole('button', { name: 'File it' }).click()
  await dialog.getByLabel('Animal, chip, owner or phone').fill('tans')
  await dialog.getByLabel(/Tansy, dog/).check()
  await dialog.getByRole('group', { name: 'Which ear does it belong to?' }).getByLabel('LEFT').check()
  await dialog.getByLabel('What is it?').selectOption('laboratory-report')
  await dialog.getByLabel('Title').fill('Culture of the ear canal')
  await dialog.getByRole('group', { name: 'Which side does it name itself?' }).getByLabel('LEFT').check()
  await dialog.getByRole('button', { name: 'File to Tansy, LEFT' }).click()
  await expect.poll(last).toBe('paper')
  const copy = (await entriesOf(program, page, 'case:tansy')).at(-1)?.header.id
  await page.goto(`${program.url}/case/tansy/entry/${copy}/withdraw`)
  await expect(page.getByText(/^It came through the holding tray and waits there again/)).toBeVisible()
  await page.getByLabel('It belongs to another animal').check()
  await page.getByLabel('Reason').fill('Another Tansy.')
  await page.getByRole('button', { name: 'Take it back' }).click()
  await expect.poll(last).toBe('withdrawal')
  await page.goto(`${program.url}/tray`)
  await expect(page.getByRole('heading', { name: 'Waiting' })).toContainText('1')
})

test('a booking is on the theatre list with its side and what is missing, each with the form that settles it', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/theatre`)
  await expect(page.getByRole('listitem').filter({ hasText: 'Juniper' }).first()).toBeVisible()
  await expect(page.getByRole('listitem').filter({ hasText: 'Tansy' })).toHaveCount(0)
  await bookTansy(page, program)
  const line = page.getByRole('listitem').filter({ hasText: 'Tansy' }).first()
  await expect(line).toContainText('RIGHT')
  await expect(line).toContainText('not agreed yet')
  await expect(line).toContainText(/Last meal between \d\d:\d\d and \d\d:\d\d; water stays/)
  await expectAccessible(page)
  await line.getByRole('link', { name: 'Weight on the scale' }).click()
  await expect(page).toHaveURL(/\/case\/tansy\/write\/weight/)
})

/** Books the right ear for the day after tomorrow, as the desk of another device would. */
async function bookTansy(page: Page, program: Program): Promise<void> {
  const at = `${new Date(Date.now() + 2 * 86_400_000).toISOString().slice(0, 10)}T09:00:00.000Z`
  const now = new Date().toISOString()
  const me = (await (await page.request.post(`${program.url}/api/actions/who-am-i`, { data: {} })).json()) as {
    clinic: { id: string }
    active: string
  }
  const moment = { zone: 'Europe/London', precision: 'minute', by: 'person' }
  const entry = {
    id: '0190a7c2-0000-7000-8000-00000000b00c',
    clinic: me.clinic.id,
    stream: 'case:tansy',
    subject: { kind: 'operation', animal: 'animal-tansy', operation: 'operation-tansy-right' },
    kind: 'booking',
    version: 1,
    body: {
      side: 'RIGHT',
      procedure: 'teca-lbo',
      agreement: null,
      plannedFor: { at, ...moment },
      surgeon: me.active,
      anaesthetist: null,
    },
    happenedAt: { at: now, ...moment },
    writtenAt: now,
    author: { kind: 'person', person: me.active },
    device: { id: 'device-of-the-tests', boot: 'boot-1', wallClock: now, monotonicMs: 1, offset: null },
    supersedes: [],
    withdraws: null,
    refiledFrom: null,
    attachments: [],
    reason: null,
  }
  const data = { clinic: me.clinic.id, entries: [entry] }
  expect((await page.request.post(`${program.url}/api/actions/accept-entries`, { data })).ok()).toBe(true)
}
