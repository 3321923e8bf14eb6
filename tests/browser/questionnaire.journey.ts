import type { Page } from '@playwright/test'
import type { Side } from '#core/animal/species.ts'
import { call } from '#core/journal/kinds/call.ts'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { household } from '#core/journal/kinds/household.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { act, entriesOf, expect, openInvented, type Program, test, writeNow } from './clinic.ts'

const stream = 'case:thrift'
const phone = { javaScriptEnabled: false, viewport: { width: 360, height: 740 } } as const
const days = 24 * 60

/** A dog both of whose ears were operated on a year ago; nobody has asked its owner yet. */
async function yearOld(program: Program, page: Page): Promise<void> {
  const ago = 366 * days
  const cut = (side: Side) => {
    const incisionAt = {
      at: new Date(Date.now() - ago * 60_000).toISOString(),
      zone: 'Europe/London',
      precision: 'minute',
      by: 'person',
    } as const
    return {
      kind: 'operation-summary' as const,
      minutesAgo: ago,
      subject: { kind: 'operation' as const, animal: 'animal-thrift', operation: `operation-thrift-${side}` },
      body: { ...operationSummary.example, side, procedure: 'teca-lbo' as const, incisionAt, closedAt: incisionAt },
    }
  }
  await writeNow(program, page, stream, [
    { kind: 'identity', minutesAgo: ago + days, body: { ...identity.example, name: 'Thrift', species: 'dog' } },
    {
      kind: 'household',
      minutesAgo: ago + days,
      body: {
        ...household.example,
        contacts: [{ contact: 'contact-okafor', roles: ['owner'], mayConsent: true }],
        language: 'en',
      },
    },
    cut('LEFT'),
    cut('RIGHT'),
    { kind: 'discharge', minutesAgo: ago - 2 * days, body: { ...discharge.example, medicines: [], nextVisit: null } },
  ])
}

const asking = (page: Page) => page.getByRole('region', { name: 'Questions to the owner' })
const ask = (page: Page, question: string, answer: string) =>
  page.getByRole('group', { name: question }).getByRole('radio', { name: answer, exact: true }).check()

test('a year after, an owner answers on a phone: a swelling is rung about, “I cannot tell” stays unknown', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  await yearOld(program, page)
  await page.goto(`${program.url}/case/thrift`)
  await expect(asking(page)).toContainText('After a year. Asked now')
  await asking(page).getByRole('link', { name: 'Open the questions: After a year' }).click()
  await expectAccessible(page, 'the questions of a case')
  await page.getByRole('button', { name: 'Make a link for Rosalind Okafor' }).click()
  const text = await page.getByLabel('Text to send to Rosalind Okafor').inputValue()
  const address = /http\S+\/questions/.exec(text)?.[0] ?? ''
  await page.getByRole('radio', { name: 'sent by message' }).check()
  await page.getByRole('button', { name: 'Write down this try' }).click()
  await expect(page.getByText('1 try on record, over 1 channel.')).toBeVisible()

  const owner = await (await browser.newContext(phone)).newPage()
  await owner.goto(address)
  await expect(owner.getByRole('heading', { level: 1 })).toHaveText('Thrift: a year after the operation')
  await expectNoSidewaysScroll(owner, 'the questions at 360')
  // Both ears by themselves, with the side in words.
  await ask(owner, 'How is the LEFT ear now?', 'Better than before')
  await ask(owner, 'Is there a lump or a swelling at the LEFT ear', 'Yes, there is one now')
  await owner.getByRole('button', { name: 'Save and go on later' }).click()
  await expect(owner.getByRole('status')).toHaveText(/^Saved\./)

  // The next day, by the same address: what was saved stands there.
  await owner.goto(address)
  await expect(
    owner.getByRole('group', { name: 'How is the LEFT ear now?' }).getByRole('radio', { name: 'Better than before' }),
  ).toBeChecked()
  for (const question of ['How is the RIGHT ear now?', 'Is there a lump or a swelling at the RIGHT ear']) {
    await ask(owner, question, 'I cannot tell')
  }
  await ask(owner, 'Does the face hang on the RIGHT side?', 'No')
  await ask(owner, 'If you had to choose again', 'Yes')
  await owner.getByRole('button', { name: 'Send to the clinic' }).click()
  await expect(owner.getByRole('status')).toHaveText('Thank you. We have your answers.')
  await expect(owner.getByRole('heading', { name: 'Do not wait for us: phone us now' })).toBeVisible()
  await expect(owner.getByText('a lump or a swelling at the LEFT ear').first()).toBeVisible()
  await expectNoSidewaysScroll(owner, 'the thanks at 360')

  // On the case: a call and a look are owed for the LEFT ear, a late event is offered and none is written.
  await page.goto(program.url)
  await expect(page.getByText('Owner reports swelling, LEFT ear: ring the owner')).toBeVisible()
  await page.goto(`${program.url}/case/thrift`)
  await asking(page).getByRole('link', { name: 'Open the questions: After a year' }).click()
  await expect(page.getByText('Owed: Owner reports swelling, LEFT ear: look at it')).toBeVisible()
  await expect(page.getByRole('link', { name: 'Write it down as a late event of the LEFT ear' })).toBeVisible()
  const kinds = async () => (await entriesOf(program, page, stream)).map(({ header }) => header.kind)
  expect(await kinds()).not.toContain('late-event')
  expect(await kinds()).not.toContain('twelve-months')

  // By the owner's account: nothing is said of the LEFT before it was seen; the RIGHT stays unknown, and no face is graded.
  const account = page.getByRole('region', { name: 'The status after a year, by the owner’s account' })
  await expect(account).toContainText('LEFT ear: a swelling, a discharge or treatment elsewhere was reported.')
  await expect(account).toContainText('RIGHT ear: not known, by the owner’s account. Face: stays not known')
  await account.getByRole('button', { name: 'Keep “not known” as the status of the RIGHT ear' }).click()
  await expect(account).toContainText('RIGHT ear: a status stands since')
  const status = (await entriesOf(program, page, stream)).find(({ header }) => header.kind === 'twelve-months')
  expect([status?.header.subject.side, status?.body]).toEqual([
    'RIGHT',
    expect.objectContaining({ status: 'unknown', source: 'owner', face: 'unknown', wouldChooseAgain: 'yes' }),
  ])
  await expectAccessible(page, 'answers of an owner')

  // The owner thinks again: both answers stay, and the call is owed all the same.
  await owner.getByRole('link', { name: 'Change my answers' }).click()
  await ask(owner, 'Is there a lump or a swelling at the LEFT ear', 'No')
  await owner.getByRole('button', { name: 'Send to the clinic' }).click()
  await expect(owner.getByRole('heading', { name: 'Do not wait for us: phone us now' })).toHaveCount(0)
  await page.goto(`${program.url}/case/thrift`)
  await expect(page.getByText('what was said before is still talked over').first()).toBeAttached()

  // She dies: the page is quiet, nothing of the owner is owed, and nothing that is sent is kept.
  const before = (await entriesOf(program, page, stream)).length
  await owner.getByRole('link', { name: 'Change my answers' }).click()
  await writeNow(program, page, stream, [{ kind: 'death' }])
  await owner.getByRole('button', { name: 'Send to the clinic' }).click()
  await expect(owner.getByText('We are sorry that Thrift has died.')).toBeVisible()
  await expect(owner.locator('form, input')).toHaveCount(0)
  const calendar = await owner.request.get(address.replace('questions', 'calendar.ics'))
  expect(await calendar.text()).not.toContain('STATUS:CONFIRMED')
  expect((await entriesOf(program, page, stream)).length).toBe(before + 1)
  await page.goto(`${program.url}/case/thrift`)
  await expect(asking(page)).toContainText('The animal has died: its owner is asked nothing any more.')
  await page.goto(program.url)
  await expect(page.getByText('Owner reports', { exact: false })).toHaveCount(0)
  await owner.context().close()
})

/** How many sets of answers a phone holds that the clinic does not have. */
const heldOn = (owner: Page) =>
  owner.evaluate<number>(`new Promise((done) => {
    const open = indexedDB.open('quiet-ear-owner')
    open.onsuccess = () => {
      const all = open.result.transaction('answers').objectStore('answers').count()
      all.onsuccess = () => { open.result.close(); done(all.result) }
    }
  })`)

test('marked while the network is gone, the answers wait on the phone and arrive once; another answer is a new one', async ({
  page,
  browser,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await yearOld(program, page)
  const about = { stream, contact: 'contact-okafor', use: 'private' }
  const { path } = await act<{ path: string }>(page.context(), program.url, 'make-owner-link', about)
  const address = `${program.url}${path}/questions?language=es`
  const context = await browser.newContext({ viewport: phone.viewport, locale: 'es-ES' })
  const visit = async () => {
    const owner = await context.newPage()
    await owner.goto(address)
    await owner.locator('#kept-here[data-ready]').waitFor({ state: 'attached' })
    return owner
  }
  const sent = async () =>
    (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'owner-answer')
  let owner = await visit()
  // The worker keeps the page; it came with it.
  await owner.evaluate('navigator.serviceWorker.ready')
  await owner.reload()
  await owner.locator('#kept-here[data-ready]').waitFor({ state: 'attached' })

  await context.setOffline(true)
  await ask(owner, '¿Hay un bulto o una hinchazón en el oído IZQUIERDO', 'Sí, ahora lo hay')
  await owner.locator('textarea').last().fill('Desde el lunes.')
  await expect(owner.getByRole('status').getByText('Guardado en este teléfono. Aún no está enviado.')).toBeVisible()
  await owner.close()
  owner = await visit()
  await expect(owner.getByText('Ahora no hay red.')).toBeVisible()
  await expect(owner.getByText('Lo que marcó antes sigue aquí, en este teléfono.').first()).toBeVisible()
  await expect(owner.locator('[name="swelling.LEFT"][value="yes"]')).toBeChecked()
  await expectAccessible(owner, 'questions kept on the phone')
  await owner.getByRole('button', { name: 'Enviar a la clínica' }).click()
  const waiting = owner.getByRole('region', { name: 'En este teléfono' })
  await expect(waiting).toContainText('Aún no están enviadas.')
  // What cannot wait is not left to the network.
  await expect(waiting).toContainText('No nos espere: llámenos ahora')
  await expect(owner.locator('form.ask')).toBeHidden()
  await expectNoSidewaysScroll(owner, 'answers that wait, at 360')
  await expectAccessible(owner, 'answers that wait')
  await owner.close()
  expect(await sent()).toEqual([])

  // Back on the network the first answer of the clinic is lost on the way.
  owner = await visit()
  let lost = 0
  await owner.route(/\/questions/, async (route) => {
    if (route.request().method() !== 'POST' || lost > 0) return route.fallback()
    lost += 1
    await route.fetch()
    return route.abort('connectionreset')
  })
  await context.setOffline(false)
  await expect(owner.getByText('Gracias. Tenemos sus respuestas.')).toBeVisible({ timeout: 30_000 })
  expect(lost).toBe(1)
  const [first, ...others] = await sent()
  expect(others).toEqual([])
  expect(first?.body).toMatchObject({ language: 'es', finished: true, by: 'owner-link' })
  expect(await heldOn(owner)).toBe(0)

  // Without a network the phone shows what was sent; another answer is a new entry beside it.
  await context.setOffline(true)
  await owner.goto(address)
  await expect(owner.getByRole('heading', { level: 1 })).toHaveText('Thrift: sus respuestas')
  await context.setOffline(false)
  await owner.goto(`${address}&change=1`)
  await owner.locator('#kept-here[data-ready]').waitFor({ state: 'attached' })
  await ask(owner, '¿Hay un bulto o una hinchazón en el oído IZQUIERDO', 'No')
  await owner.getByRole('button', { name: 'Enviar a la clínica' }).click()
  await expect(owner.getByText('Gracias. Tenemos sus respuestas.')).toBeVisible()
  expect((await sent()).map(({ header }) => header.supersedes)).toEqual([[], [first?.header.id]])

  // She dies while something is marked and not sent: the quiet page takes it from the phone.
  await owner.goto(`${address}&change=1`)
  await owner.locator('#kept-here[data-ready]').waitFor({ state: 'attached' })
  await ask(owner, '¿Hay un bulto o una hinchazón en el oído IZQUIERDO', 'No lo sé')
  await expect.poll(() => heldOn(owner)).toBe(1)
  await writeNow(program, page, stream, [{ kind: 'death' }])
  await owner.goto(address)
  await expect(owner.getByText('Sentimos la muerte de Thrift.')).toBeVisible()
  await expect.poll(() => heldOn(owner)).toBe(0)
  await context.close()
})

test('three tries over two ways, and unknown may be written; what is told on the phone is taken down', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await yearOld(program, page)
  const tried = { ...call.example, contact: 'contact-okafor', about: 'twelve-months', text: null } as const
  await writeNow(program, page, stream, [
    { kind: 'call', minutesAgo: 3 * days, body: { ...tried, channel: 'phone', reached: 'no' } },
    { kind: 'call', minutesAgo: 2 * days, body: { ...tried, channel: 'phone', reached: 'message-left' } },
  ])
  await page.goto(`${program.url}/case/thrift`)
  await asking(page).getByRole('link', { name: 'Open the questions: After a year' }).click()
  await page.getByRole('radio', { name: 'sent by email' }).check()
  await page.getByRole('button', { name: 'Write down this try' }).click()
  await expect(page.getByText('3 tries on record, over 2 channels.')).toBeVisible()
  await page.getByRole('link', { name: 'Back to the case' }).click()
  await expect(page.getByText('Nobody reached: “unknown” may be written down for the LEFT ear').first()).toBeVisible()

  // Then the owner rings: the same questions, taken down by phone.
  await asking(page).getByRole('link', { name: 'Open the questions: After a year' }).click()
  await page.getByRole('button', { name: 'Keep these answers' }).click()
  await expect(page.getByText('Say who answers, and mark at least one answer.')).toBeVisible()
  for (const side of ['LEFT', 'RIGHT']) {
    await ask(page, `How is the ${side} ear now?`, 'Better than before')
    await ask(page, `Is there a lump or a swelling at the ${side} ear`, 'No')
    await ask(page, `Does fluid or pus come out of the skin at the ${side} ear`, 'No')
    await ask(page, `Has another clinic treated the ${side} ear`, 'No')
  }
  await ask(page, 'If you had to choose again', 'No')
  await page.getByRole('button', { name: 'Keep these answers' }).click()
  const account = page.getByRole('region', { name: 'The status after a year, by the owner’s account' })
  await expect(account).toContainText('LEFT ear: improved, by the owner’s account. Face: stays not known')
  await expect(
    page.getByText(/Answered on .* by Rosalind Okafor, by phone\. 9 of 22 questions answered\./),
  ).toBeVisible()
  await page.getByRole('link', { name: 'Back to the case' }).click()
  await expect(page.getByText('Nobody reached: “unknown” may be written down')).toHaveCount(0)
  await expect(page.getByText('How the LEFT ear is after a year').first()).toBeVisible()
})
