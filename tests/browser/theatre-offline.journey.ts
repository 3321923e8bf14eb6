import type { Locator, Page } from '@playwright/test'
import { procedures } from '#content/procedures/index.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { expectAccessible } from './accessible.ts'
import { act, entriesOf, expect, hire, nurse, openInvented, type Person, type Program, test } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'
import { Tablet } from './tablet.ts'

const room = '/case/juniper/room/operation-juniper'
const register = '/settings/register'
const anaesthetist: Person = { name: 'Odile Brandt', role: 'anaesthetist', login: 'odile.brandt' }
const sevenMinutes = 7 * 60_000

/** A tablet at which that person signed in, with everything that is needed in theatre on it; then its cable is pulled. */
async function withoutNetwork(program: Program, person: Person, fastBy: number): Promise<Tablet> {
  const tablet = new Tablet(program.url, fastBy)
  await tablet.start()
  await tablet.open('/')
  await tablet.signIn(person)
  await expect(tablet.page.getByText(`${person.name}, ${person.role}`)).toBeVisible()
  await tablet.open(register)
  await expect(tablet.page.getByRole('link', { name: 'Midazolam 5 mg/mL, injection' })).toBeVisible()
  await tablet.open(room)
  await expect(tablet.page.getByRole('heading', { level: 1, name: 'In theatre' })).toBeVisible()
  await tablet.settle()
  tablet.cable.pull()
  return tablet
}

const waits = (tablet: Tablet, count: number) =>
  expect(
    tablet.page.getByRole('link', { name: `${count} ${count === 1 ? 'entry waits' : 'entries wait'} on this device` }),
  ).toBeVisible()

/** What was written, in the order in which hands wrote it, as the entries of the server say it. */
class Written {
  readonly lines: string[] = []
  readonly #counts = new Map<Tablet, number>()

  async note(tablet: Tablet, what: string): Promise<void> {
    this.lines.push(what)
    const count = (this.#counts.get(tablet) ?? 0) + 1
    this.#counts.set(tablet, count)
    await waits(tablet, count)
  }
}

const gated = /Premedication given|Anaesthesia began|Incision/

/** Everything the nurse can tap on the theatre record, in its order. */
async function tap(tablet: Tablet, written: Written, taps: number): Promise<void> {
  const { page } = tablet
  for (let left = taps; left > 0; left -= 1) {
    const button = page.getByRole('button', { name: /^Done now: / }).first()
    const what = (await button.getAttribute('aria-label')) ?? ''
    await button.click()
    // A mark of the clock whose condition stands open asks why it goes on.
    const why = page.getByRole('button', { name: /^(Everybody here named the same ear|It was spoken) aloud/ })
    await expect(button.or(why).first()).toBeVisible()
    if (gated.test(what)) await why.first().click()
    await written.note(tablet, what.replace('Done now: ', ''))
  }
}

async function hold(tablet: Tablet, written: Written, from: number, until: number): Promise<void> {
  const { page } = tablet
  for (let time = from; time < until; time += 1) {
    await page.getByRole('button', { name: 'Nerve is held aside now' }).click()
    await written.note(tablet, `retraction-on-${time}`)
    await page.getByRole('button', { name: 'Nerve is let go now' }).click()
    await written.note(tablet, `retraction-off-${time}`)
  }
}

/** The anaesthetist writes what the monitor shows. */
async function observe(tablet: Tablet, written: Written, from: number, until: number): Promise<void> {
  const { page } = tablet
  for (let rate = from; rate < until; rate += 1) {
    if (!page.url().endsWith(room)) await tablet.open(room)
    await page.getByRole('link', { name: 'Write an observation' }).click()
    const form = await EntryForm.here(page)
    await form.choose('Where', 'theatre')
    const value = await form.add('Add a value', 'Value 1')
    await value.pick('What', 'heart rate')
    await value.type('Value', String(rate))
    await form.keep()
    await written.note(tablet, `heart rate ${rate}`)
  }
}

async function give(tablet: Tablet, written: Written, times: number): Promise<void> {
  const { page } = tablet
  for (let time = 1; time <= times; time += 1) {
    await tablet.open(room)
    await page.getByRole('link', { name: 'Write a drug given' }).click()
    const form = await EntryForm.here(page)
    await form.pick('Drug', 'Fentanyl')
    await form.pick('Purpose', 'pain, bolus')
    await form.type('Amount given', `${10 + time} mcg`)
    await form.pick('Route', 'into the vein')
    await form.keep()
    await written.note(tablet, `fentanyl ${10 + time}`)
  }
}

/** Both draw the same ampoule: each writes how much was in the syringe. */
async function draw(tablet: Tablet, written: Written, amount: string): Promise<void> {
  const { page } = tablet
  await tablet.open(register)
  await page.getByRole('link', { name: 'Midazolam 5 mg/mL, injection' }).click()
  await line(page.getByRole('dialog'), 'drawn for an animal', amount, async (form) => {
    await form.type('Number of the ampoule', 'A-77')
    await form.pick('For which animal', 'Juniper')
  })
  await written.note(tablet, `drawn ${amount}`)
}

async function line(dialog: Locator, what: string, amount: string, more?: (form: EntryForm) => Promise<void>) {
  const page = dialog.page()
  await page.getByRole('button', { name: 'Write a line' }).click()
  const form = new EntryForm(page, dialog)
  await form.pick('What happened', what)
  await form.type('How much', amount)
  await more?.(form)
  await form.pick('Witness', 'nobody available')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(dialog).toHaveCount(0)
}

/** The clinic keeps a register of midazolam, with 10 mL in the cabinet. */
async function keepRegister(program: Program, page: Page): Promise<void> {
  await page.goto(`${program.url}/settings/shelf`)
  await page.getByRole('button', { name: 'Change Midazolam 5 mg/mL' }).click()
  const product = new EntryForm(page, page.getByRole('dialog'))
  await product.choose('Kept in the controlled-drug register?', 'yes')
  await product.type('Why it is changed', 'The house keeps a register of it.')
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await page.goto(program.url + register)
  await page.getByRole('link', { name: 'Midazolam 5 mg/mL, injection' }).click()
  await line(page.getByRole('dialog'), 'opening stock', '10 mL')
  await expect(page.getByText('Balance: 10 mL')).toBeVisible()
}

/** The lead ends every session but their own. */
async function endSessions(program: Program, page: Page): Promise<void> {
  const { devices } = await act<{ devices: { session: string; here: boolean }[] }>(
    page.context(),
    program.url,
    'list-devices',
    {},
  )
  for (const { session, here } of devices) {
    if (!here) await act(page.context(), program.url, 'end-session', { session })
  }
}

test('two tablets write thirty entries each without the network, one fast, one killed, both signed out: sixty, once each', async ({
  page,
  program,
}) => {
  test.setTimeout(300_000)
  await openInvented(program, page)
  await hire(program, page, nurse)
  await hire(program, page, anaesthetist)
  await keepRegister(program, page)
  const before = (await entriesOf(program, page, 'case:juniper')).length
  const calm = await withoutNetwork(program, nurse, 0)
  const fast = await withoutNetwork(program, anaesthetist, sevenMinutes)
  try {
    const written = new Written()
    const began = Date.now()
    await tap(calm, written, 8)
    await observe(fast, written, 90, 98)
    await tap(calm, written, 4)
    await hold(calm, written, 1, 2)
    await draw(fast, written, '1 mL')

    // The battery dies with the last entry just kept; nothing is closed, and there is still no network.
    await observe(fast, written, 98, 101)
    await fast.kill()
    await fast.start()
    await fast.open(room)
    await waits(fast, 12)
    await endSessions(program, page)
    const inTime = written.lines.length

    await tap(calm, written, 6)
    await give(fast, written, 4)
    await hold(calm, written, 2, 6)
    await observe(fast, written, 101, 115)
    await draw(calm, written, '2 mL')
    await calm.open(room)
    await calm.page.getByRole('link', { name: 'Emergency', exact: true }).click()
    await calm.page.getByRole('button', { name: 'Bleeding', exact: true }).click()
    await written.note(calm, 'emergency-on-bleeding-1')
    await calm.open(room)
    await fast.open(room)
    await waits(calm, 30)
    await waits(fast, 30)

    calm.cable.plug()
    fast.cable.plug()
    for (const [tablet, person] of [
      [calm, nurse],
      [fast, anaesthetist],
    ] as const) {
      await expect(tablet.page.getByText(/^Signed out on the server\./)).toBeVisible({ timeout: 30_000 })
      await expect(tablet.page.getByRole('heading', { level: 1, name: 'In theatre' })).toBeVisible()
      await tablet.page.getByRole('link', { name: 'Emergency', exact: true }).click()
      await expect(tablet.page.getByRole('button', { name: 'No pulse', exact: true })).toBeVisible()
      await tablet.page.reload()
      await expect(tablet.page.getByRole('button', { name: 'No pulse', exact: true })).toBeVisible()
      await waits(tablet, 30)
      await tablet.page.getByRole('button', { name: 'Sign in', exact: true }).click()
      await tablet.signIn(person)
      await expect(tablet.page.getByText(/^Signed out on the server\./)).toHaveCount(0)
      await expect(tablet.page.getByRole('button', { name: 'No pulse', exact: true })).toBeVisible()
      await expect(tablet.page.getByRole('link', { name: /on this device$/ })).toHaveCount(0, { timeout: 20_000 })
    }
    // What the other tablet stamped is counted in right minutes on the one that is fast.
    await fast.page.getByRole('link', { name: 'Back to the theatre record' }).click()
    const minutes = Math.floor((Date.now() - began) / 60_000)
    await expect(clock(fast, 'Anaesthesia')).toHaveText(new RegExp(`^(${minutes}|${minutes + 1}) min$`))
    await expect(clock(fast, 'Last observation')).toHaveText(/^[0-2] min$/)
    await expect(fast.page.getByRole('link', { name: /^Bleeding: [01]:\d\d$/ })).toBeVisible()

    const { entries } = await act<{ entries: StoredEntry[] }>(page.context(), program.url, 'read-registers', {})
    const here = await entriesOf(program, page, 'case:juniper')
    expect(here.length - before).toBe(58)
    const all = [...here.slice(before), ...entries.filter(({ body }) => fieldOf(body, 'ampoule') === 'A-77')]
    expect(all).toHaveLength(60)
    expect(new Set(all.map(({ header }) => header.id)).size).toBe(60)
    const made = fold(all as StoredEntry[])
    expect(made.lines.map(({ header, body }) => said(header.kind, body))).toEqual(written.lines)
    expect(made.lines.every(({ orderCertain }) => orderCertain)).toBe(true)
    expect(made.lines.map(({ late }) => late)).toEqual(
      written.lines.map((_, at) => (at < inTime ? null : 'session-expired')),
    )
    expect(made.conflicts.map(({ because, kind }) => [because, kind])).toEqual([['same-key', 'register-line']])
    expect(fold(here as unknown as StoredEntry[]).conflicts).toEqual([])

    // The lead settles it: both are seen side by side, and the cabinet holds what it held until then.
    await page.goto(program.url + register)
    await page.getByRole('link', { name: 'Midazolam 5 mg/mL, injection' }).click()
    await expect(page.getByText('Two lines stand side by side (ampoule A-77)')).toBeVisible()
    await expect(page.getByText('Balance: 10 mL')).toBeVisible()
    for (const amount of ['1 mL', '2 mL']) {
      await expect(page.getByRole('button', { name: `Amend drawn for an animal, ${amount}` })).toBeVisible()
    }
    await page.getByRole('button', { name: 'Amend drawn for an animal, 2 mL' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByLabel('Both lines are the same draw').check()
    await dialog.getByLabel('Why it is amended').fill('The syringe held two millilitres.')
    await dialog.getByRole('button', { name: 'Save' }).click()
    await expect(dialog).toHaveCount(0)
    await expect(page.getByText('Balance: 8 mL')).toBeVisible()
    await expect(page.getByText('Two lines stand side by side')).toHaveCount(0)
  } finally {
    await calm.putAway()
    await fast.putAway()
  }
})

test('an account that is closed while its person operates loses nothing: somebody else signs in and it is sent as theirs', async ({
  page,
  program,
}) => {
  test.setTimeout(120_000)
  await openInvented(program, page)
  const nurseId = await hire(program, page, nurse)
  await hire(program, page, anaesthetist)
  const before = (await entriesOf(program, page, 'case:juniper')).length
  const tablet = new Tablet(program.url)
  try {
    await tablet.start()
    await tablet.open('/')
    await tablet.signIn(nurse)
    await expect(tablet.page.getByText(`${nurse.name}, ${nurse.role}`)).toBeVisible()
    await tablet.open(room)
    // This browser promises nothing to a page that nobody installed; the screen says so.
    expect(await tablet.page.evaluate('navigator.storage.persisted()')).toBe(false)
    await expect(tablet.page.getByText(/^This device may throw away what waits here/)).toBeVisible()
    await tablet.settle()
    tablet.cable.pull()
    const written = new Written()
    await tap(tablet, written, 2)
    await act(page.context(), program.url, 'put-account', {
      person: nurseId,
      login: nurse.login,
      password: null,
      active: false,
    })
    await tap(tablet, written, 1)
    tablet.cable.plug()
    await expect(tablet.page.getByText(/^Signed out on the server\./)).toBeVisible({ timeout: 30_000 })
    // She goes on, also with the server there and the page loaded anew.
    await tap(tablet, written, 1)
    await tablet.page.reload()
    await expect(tablet.page.getByText(/^Signed out on the server\. .*Basil Ode/)).toBeVisible()
    await tablet.page.getByRole('button', { name: 'Sign in', exact: true }).click()
    await expectAccessible(tablet.page)
    await tablet.signIn(nurse)
    await expect(tablet.page.getByText('The name and the password do not fit together; try again.')).toBeVisible()
    await tablet.signIn(anaesthetist)
    await expect(tablet.page.getByRole('heading', { level: 1, name: 'In theatre' })).toBeVisible()
    await expect(tablet.page.getByText(`${anaesthetist.name}, ${anaesthetist.role}`)).toBeVisible()
    await expect(tablet.page.getByRole('link', { name: /on this device$/ })).toHaveCount(0, { timeout: 20_000 })
    const sent = (await entriesOf(program, page, 'case:juniper')).slice(before)
    expect(
      sent.map(({ header, body, envelope }) => [said(header.kind, body), header.author.person, envelope.late]),
    ).toEqual(written.lines.map((line, at) => [line, nurseId, at < 2 ? null : 'session-expired']))
    // Every other page asks who is there.
    await endSessions(program, page)
    await tablet.page.reload()
    await expect(tablet.page.getByText(/^Signed out on the server\./)).toBeVisible()
    await tablet.open('/')
    await expect(tablet.page.getByRole('heading', { level: 1, name: 'Sign in' })).toBeVisible()
  } finally {
    await tablet.putAway()
  }
})

const clock = ({ page }: Tablet, name: string) =>
  page.getByRole('region', { name: 'Clocks' }).getByRole('listitem').filter({ hasText: name }).locator('strong')

function fieldOf(body: unknown, field: string): unknown {
  return (body as Readonly<Record<string, unknown>> | null)?.[field]
}

const titles = new Map<string, string>([
  ...Object.entries(reportInEnglish.clockMarks),
  ...Object.values(procedures).flatMap(({ checkpoints }) =>
    checkpoints.map(({ id, title }): [string, string] => [id, title]),
  ),
])

/** An entry in the words that this test noted when it was written. */
function said(kind: string, body: unknown): string {
  type Amount = { readonly value: string; readonly unit: string }
  const amount = fieldOf(body, 'amount') as Amount
  if (kind === 'theatre-stamp')
    return titles.get(String(fieldOf(body, 'checkpoint'))) ?? String(fieldOf(body, 'checkpoint'))
  if (kind === 'observation') return `heart rate ${(fieldOf(body, 'values') as { value: Amount }[])[0]?.value.value}`
  return kind === 'drug-given' ? `fentanyl ${amount.value}` : `drawn ${amount.value} ${amount.unit}`
}
