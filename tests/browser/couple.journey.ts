import type { Browser, Page } from '@playwright/test'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { household } from '#core/journal/kinds/household.ts'
import { expectAccessible } from './accessible.ts'
import { askedAgain, entriesOf, expect, openInvented, type Program, test, writeNow } from './clinic.ts'
import { AgreementPage } from './pages/agreement-page.ts'

const stream = 'case:juniper'
const on = () => ({ at: new Date().toISOString(), zone: 'Europe/London', precision: 'minute', by: 'clock' }) as const
const stranger = { javaScriptEnabled: false, viewport: { width: 390, height: 844 } } as const
const asked = 'step=all&a=teca-lbo&b=no-treatment'

/** Juniper lives with two owners who both may agree, and we speak with them in this language. */
async function speak(program: Program, page: Page, language: string, reason: string): Promise<void> {
  const house = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'household').at(-1)
  const owner = (contact: string) => ({ contact, roles: ['owner' as const], mayConsent: true })
  await writeNow(program, page, stream, [
    {
      kind: 'household',
      subject: house?.header.subject as never,
      ...(house && { supersedes: [house.header.id], reason }),
      body: { ...household.example, language, contacts: [owner('contact-strand'), owner('contact-okafor')] },
    },
  ])
}

async function openLink(browser: Browser, page: Page, url: string, owner: string): Promise<Page> {
  await page.goto(`${url}/case/juniper`)
  await page.getByText('Show the private links of this case').click()
  await page.getByRole('button', { name: `Make a private link for ${owner}` }).click()
  await expect(page.getByRole('list', { name: 'Links of this case' })).toContainText(`For ${owner}`)
  const address = await page.getByLabel('Address').inputValue()
  const phone = await (await browser.newContext(stranger)).newPage()
  await phone.goto(`${address}?${asked}`)
  return phone
}

/** What is read of a part of the page, with what a screen reader says of its pictures. */
async function readOf(page: Page, part: string): Promise<string> {
  const section = page.locator(part)
  const spoken = await section
    .locator('[aria-label]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')))
  // With what is folded in, and no number grown together with its neighbour.
  return [(await section.innerHTML()).replaceAll(/<[^>]*>/g, '\n'), ...spoken].join('\n')
}

/** Every number, in the order of one figure or the other way round: languages put their words in other places. */
function numbersIn(text: string): string[] {
  return (text.match(/\d+(?:[.,]\d+)*/g) ?? []).sort()
}

async function figuresOf(page: Page): Promise<string[][]> {
  // Its first lines are seen before the last ones came.
  await page.waitForLoadState()
  return (await page.locator('#choices .figure .framing').allTextContents()).map(numbersIn)
}

async function inContrast(english: Page, spanish: Page): Promise<void> {
  const [one, other] = await Promise.all([figuresOf(english), figuresOf(spanish)])
  expect(one.length).toBeGreaterThan(8)
  expect(other).toEqual(one)
  for (const part of ['#choices', '#two']) {
    const [read, leido] = await Promise.all([readOf(english, part), readOf(spanish, part)])
    expect(numbersIn(read).length, part).toBeGreaterThan(20)
    expect(numbersIn(leido), part).toEqual(numbersIn(read))
    expect(leido).not.toBe(read)
  }
}

test('two owners read the same numbers in two languages, each is heard by name, and the consent is in the language of the household', async ({
  page,
  browser,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await speak(program, page, 'es-MX', 'They speak Spanish at home.')

  // Each has a link; the page opens in the language of the household, and one of them turns to English.
  const ifeoma = await openLink(browser, page, program.url, 'Ifeoma Strand')
  const rosalind = await openLink(browser, page, program.url, 'Rosalind Okafor')
  expect(ifeoma.url().split('?')[0]).not.toBe(rosalind.url().split('?')[0])
  await expect(ifeoma.locator('html')).toHaveAttribute('lang', 'es')
  await expect(ifeoma.getByRole('heading', { level: 1 })).toHaveText('Juniper: lo que se puede hacer')
  await expect(ifeoma.getByText('Hola, Ifeoma Strand.')).toBeVisible()
  const turn = rosalind.getByRole('link', { name: 'Read this page in English' })
  await expect(turn).toHaveAttribute('lang', 'en')
  await turn.click()
  await expect(rosalind.locator('html')).toHaveAttribute('lang', 'en')
  await expect(rosalind.getByRole('heading', { level: 1 })).toHaveText('Juniper: what can be done')
  await expect(rosalind.getByText('Hello Rosalind Okafor.')).toBeVisible()
  await inContrast(rosalind, ifeoma)

  // Each sends what matters, and the answer comes in the language that was read.
  await ifeoma
    .getByRole('group', { name: 'Que Juniper no tenga más dolor del oído' })
    .getByRole('radio', { name: 'importa mucho' })
    .check()
  await ifeoma.getByLabel('Preguntas para traer').fill('¿Quién cuida el ojo por la noche?')
  await ifeoma.getByRole('button', { name: 'Enviar esto a la clínica' }).click()
  await expect(ifeoma.getByRole('status')).toHaveText(/^Gracias\. Lo tenemos/)
  await rosalind.getByRole('radio', { name: 'Not decided yet' }).check()
  await rosalind.getByLabel('Questions to bring').fill('Could we pay in two parts?')
  await rosalind.getByRole('button', { name: 'Send this to the clinic' }).click()
  await expect(rosalind.getByRole('status')).toHaveText(/^Thank you\. We have it/)
  await expect(rosalind.locator('html')).toHaveAttribute('lang', 'en')
  // Nobody reads what the other one sent.
  await expect(rosalind.getByText('¿Quién cuida el ojo por la noche?')).toHaveCount(0)
  await ifeoma.reload()
  await expect(ifeoma.getByText('Could we pay in two parts?')).toHaveCount(0)
  await expect(ifeoma.getByText('¿Quién cuida el ojo por la noche?')).toBeVisible()

  const sent = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'owner-wishes')
  expect(sent.map(({ header: { author }, body: { language } }) => [author, language])).toEqual([
    [{ kind: 'owner-link', contact: 'contact-strand' }, 'es'],
    [{ kind: 'owner-link', contact: 'contact-okafor' }, 'en'],
  ])
  // Staff see both, each beside the name of who asked.
  await page.goto(`${program.url}/case/juniper`)
  const said = (text: string) => page.getByRole('listitem').filter({ hasText: text }).last()
  await expect(said('¿Quién cuida el ojo por la noche?')).toContainText('Ifeoma Strand')
  await expect(said('Could we pay in two parts?')).toContainText('Rosalind Okafor')
  await ifeoma.context().close()
  await rosalind.context().close()
})

test('consent is given in the language of the household, and another language of the household breaks it', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await speak(program, page, 'es-MX', 'They speak Spanish at home.')
  await writeNow(program, page, stream, [{ kind: 'estimate', body: accepted() }])
  await page.goto(`${program.url}/case/juniper/agreement`)
  const talk = new AgreementPage(page)
  await talk.talkOver(await talk.nameOf('contact-strand'), 'the owner')
  await talk.choose('How consent is given', 'signed here, on this screen')
  await talk.choose('Copy for the owner', 'on paper')
  // The numbers that are kept stand on the page as they are said, and a screen reader is told in which language.
  await page.getByText(/^The \d+ numbers that are shown today/).click()
  const shown = page.locator('ul[lang="es"]').getByRole('listitem')
  await expect(shown.filter({ hasText: 'De cada 100 perros' }).first()).toBeVisible()
  await expectAccessible(page, 'the talk with numbers in Spanish')
  await page.getByRole('button', { name: 'Read it through before signing' }).click()
  await expect(page.getByText(/, in Spanish$/).last()).toBeVisible()
  await talk.sign()
  await page.getByRole('button', { name: 'Yes, this is agreed' }).click()
  await expect(page.getByText('It holds.')).toBeVisible()

  const { plan, fingerprint } = await newest(program, page)
  expect(plan.language).toBe('es-MX')
  expect(fingerprint).toBe(fingerprintOf(plan))
  expect(plan.numbers.length).toBeGreaterThan(8)
  const said = plan.numbers.map((one) => one.said)
  const paper = await paperOf(program, page)
  expect(paper).toContain('<html lang="es">')
  expect(paper).toContain('Idioma')
  expect(paper).toContain('es-MX')
  expect(paper).toContain('Cómo dio el permiso')
  for (const sentence of said) expect(paper).toContain(sentence)
  expect(said.join(' ')).not.toMatch(/\b(?:dogs|ears|about)\b/)

  // The same language of another country asks nobody again; another language does, and says from which to which.
  await speak(program, page, 'es-AR', 'They come from elsewhere.')
  await page.reload()
  await expect(page.getByText('It holds.')).toBeVisible()
  await speak(program, page, 'en', 'They asked for English.')
  await page.reload()
  await expect(page.getByText('Broken: the language was es-MX, now en. Ask again.')).toBeVisible()
  await expect(page.getByText('It holds.')).toHaveCount(0)
  await page.goto(`${program.url}/theatre`)
  const line = page.getByRole('listitem').filter({ hasText: 'Juniper' }).first()
  await expect(line).toContainText('Ask for consent again: the language was es-MX, now en')
  // What was kept stays as it was said that day; the paper says in the language of now what is to be asked again.
  const later = await paperOf(program, page)
  expect(later).toContain('<html lang="en-GB">')
  expect(later).toContain('the language was es-MX, now en')
  expect(later).toContain(`<ul lang="es"><li dir="auto">${said[0]}`)
  for (const sentence of said) expect(later).toContain(sentence)
})

function accepted() {
  return {
    ...estimate.example,
    ceiling: { amount: '3700.00', currency: 'GBP' },
    validUntil: '2099-01-01',
    answer: { said: 'accepted' as const, by: 'contact-strand', on: on() },
  }
}

async function newest(program: Program, page: Page) {
  const agreements = async () =>
    (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'agreement')
  await expect.poll(async () => (await agreements()).length).toBe(2)
  return agreement.body.parse((await agreements()).at(-1)?.body)
}

async function paperOf({ url }: Program, page: Page): Promise<string> {
  const path = `/api/papers/${encodeURIComponent(stream)}/agreement-sheet.html`
  const answer = await page.context().request.get(`${url}${path}`, askedAgain)
  expect(answer.ok()).toBe(true)
  return answer.text()
}
