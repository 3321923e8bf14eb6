import type { Page } from '@playwright/test'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import type { booking } from '#core/journal/kinds/booking.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { household } from '#core/journal/kinds/household.ts'
import {
  askedAgain,
  entriesOf,
  expect,
  hire,
  nurse,
  openInvented,
  type Program,
  test,
  typedWhen,
  writeNow,
} from './clinic.ts'
import { AgreementPage } from './pages/agreement-page.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'

const stream = 'case:juniper'
const gbp = (amount: string) => ({ amount, currency: 'GBP' })
const on = () => ({ at: new Date().toISOString(), zone: 'Europe/London', precision: 'minute', by: 'clock' }) as const

/** Juniper with a sitter in the household, and an estimate that her owner accepted. */
async function ready(program: Program, page: Page): Promise<void> {
  await openInvented(program, page)
  await hire(program, page, nurse)
  const contacts = [
    { contact: 'contact-strand', roles: ['owner' as const, 'pays' as const], mayConsent: true },
    { contact: 'contact-okafor', roles: ['nurses-at-home' as const], mayConsent: false },
  ]
  const house = (await entriesOf(program, page, stream)).find(({ header }) => header.kind === 'household')
  await writeNow(program, page, stream, [
    {
      kind: 'household',
      subject: house?.header.subject as never,
      ...(house && { supersedes: [house.header.id], reason: 'A sitter came.' }),
      body: { ...household.example, contacts },
    },
    { kind: 'estimate', body: edition(1, '3700.00') },
  ])
}

function edition(number: number, ceiling: string) {
  return {
    ...estimate.example,
    edition: number,
    ceiling: gbp(ceiling),
    validUntil: '2099-01-01',
    answer: { said: 'accepted' as const, by: 'contact-strand', on: on() },
  }
}

test('a sitter cannot agree and is told what would make it possible; the owner signs on the screen, and one more breaks it', async ({
  page,
  program,
}) => {
  test.slow()
  await ready(program, page)
  await page.goto(`${program.url}/case/juniper/agreement`)
  const talk = new AgreementPage(page)
  const sitter = await talk.nameOf('contact-okafor')
  const owner = await talk.nameOf('contact-strand')

  await talk.talkOver(sitter, 'looks after the animal, no more')
  const refused = page.getByRole('alert').filter({ hasText: 'This person cannot agree like this' })
  await expect(refused).toContainText('Reach the owner by telephone')
  await expect(refused).toContainText('authorise this person in writing')
  await talk.choose('How consent is given', 'signed here, on this screen')
  await talk.choose('Copy for the owner', 'on paper')
  await expect(page.getByRole('button', { name: 'Read it through before signing' })).toBeDisabled()

  // Called away: everything is there again.
  await page.reload()
  await expect(page.getByLabel('Two risks: what was said')).toHaveValue('That she may not hear.')
  await page.getByLabel('Who agrees', { exact: true }).selectOption({ label: owner })
  await talk.choose('On what authority', 'the owner')
  await expect(refused).toHaveCount(0)

  // Read through before anybody signs.
  await page.getByRole('button', { name: 'Read it through before signing' }).click()
  await expect(page.getByRole('heading', { name: 'Read it through together' })).toBeVisible()
  const agree = page.getByRole('button', { name: 'Yes, this is agreed' })
  await expect(agree).toBeDisabled()
  await talk.sign()
  await agree.click()
  await expect(page.getByText('It holds.')).toBeVisible()
  await expect(page.getByText('The owner could not say back yet: two risks.')).toBeVisible()

  await expect.poll(() => agreements(program, page)).toBe(2)
  // What was kept is what was read, bound to its plan, with the line of the hand.
  const kept = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'agreement').at(-1)
  const body = agreement.body.parse(kept?.body)
  expect(body.fingerprint).toBe(fingerprintOf(body.plan))
  expect(body.plan.numbers.length).toBeGreaterThan(5)
  expect(body.signature?.strokes[0]?.points.length).toBeGreaterThan(10)

  // The signature is on the paper.
  const paper = await page
    .context()
    .request.get(`${program.url}/api/papers/${encodeURIComponent(stream)}/agreement-sheet.html`, askedAgain)
  expect(await paper.text()).toContain('Signature of')

  // The ceiling rises by one: the page and the theatre list say from what to what.
  await writeNow(program, page, stream, [{ kind: 'estimate', body: edition(2, '3701.00') }])
  await page.reload()
  await expect(page.getByText(/^Broken: the ceiling was 3700.00 GBP, now 3701.00 GBP/)).toBeVisible()
  await page.goto(`${program.url}/theatre`)
  const line = page.getByRole('listitem').filter({ hasText: 'Juniper' }).first()
  await expect(line).toContainText('Ask for consent again: the ceiling was 3700.00 GBP, now 3701.00 GBP')
  await expect(line).toContainText('not agreed yet')
})

test('consent by telephone needs a witness by name', async ({ page, program }) => {
  test.slow()
  await ready(program, page)
  await page.goto(`${program.url}/case/juniper/agreement`)
  const talk = new AgreementPage(page)
  await talk.talkOver(await talk.nameOf('contact-strand'), 'the owner')
  await talk.choose('How consent is given', 'by telephone, with a witness')
  await talk.choose('Copy for the owner', 'not yet')
  const review = page.getByRole('button', { name: 'Read it through before signing' })
  await expect(review).toBeDisabled()
  await expect(page.getByText('By telephone another of the staff listens: name who.')).toBeVisible()
  await page.getByLabel('Witness', { exact: true }).selectOption({ label: nurse.name })
  await review.click()
  await page.getByRole('button', { name: 'Yes, this is agreed' }).click()
  await expect(page.getByText('The agreement is kept.')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Yes, this is agreed' })).toHaveCount(0)
  await expect.poll(() => agreements(program, page)).toBe(2)
  const kept = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'agreement').at(-1)
  expect(kept?.body).toMatchObject({ given: 'by-phone', witness: expect.stringMatching(/^person/), signature: null })
})

test('consent taken back for one ear in the morning blocks that ear and leaves the other', async ({
  page,
  program,
}) => {
  test.slow()
  await ready(program, page)
  const plan = {
    ...agreement.example.plan,
    ears: [
      { side: 'LEFT' as const, procedure: 'teca-lbo' as const },
      { side: 'RIGHT' as const, procedure: 'teca-lbo' as const },
    ],
  }
  await DosePlanPage.book(program, page, 'juniper', 'LEFT', typedWhen(20 * 60))
  const bookings = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'booking')
  const left = bookings.find(({ body }) => body.side === 'LEFT')?.body as typeof booking.example | undefined
  const right = bookings.find(({ body }) => body.side === 'RIGHT')?.body as typeof booking.example | undefined
  const agreed = {
    ...plan,
    surgeon: left?.surgeon ?? '',
    ceiling: gbp('3700.00'),
    leaflet: await leafletOf(program, page),
  }
  await writeNow(program, page, stream, [
    {
      kind: 'agreement',
      minutesAgo: 1,
      body: { ...agreement.example, plan: agreed, consentBy: 'contact-strand', fingerprint: fingerprintOf(agreed) },
    },
  ])
  expect(right).toBeDefined()
  await page.goto(`${program.url}/case/juniper/agreement`)
  await page.getByRole('link', { name: 'Write that consent for the LEFT ear was taken back' }).click()
  await page.getByLabel('Who took it back').selectOption('contact-strand')
  await page.getByRole('radio', { name: 'by telephone', exact: true }).check()
  const heard = page.getByLabel('Who of us heard it')
  const basil = await heard.locator('option', { hasText: nurse.name }).getAttribute('value')
  await heard.selectOption(basil ?? '')
  await page.getByRole('button', { name: /^Keep/ }).click()
  await page.waitForURL(/\?kept=/)
  await page.goto(`${program.url}/case/juniper/agreement`)
  await expect(page.getByText(/LEFT: taken back by .+, by telephone/)).toBeVisible()
  await page.goto(`${program.url}/theatre`)
  const lines = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Juniper' }) })
  await expect(lines.filter({ hasText: 'Consent for this ear was taken back by' })).toHaveCount(1)
  await expect(lines.filter({ hasText: 'Consent for this ear was taken back by' })).toContainText('LEFT')
})

test('a cost near the ceiling stands on Owed until the owner is rung; a new edition is accepted with its date, and consent is asked again', async ({
  page,
  program,
}) => {
  test.slow()
  await ready(program, page)
  const tick = (answer: string) => page.getByRole('radio', { name: answer, exact: true }).check()
  await agreedFor(program, page, '3700.00')
  await page.goto(`${program.url}/case/juniper/agreement`)
  await expect(page.getByText('It holds.')).toBeVisible()

  // What the operation cost: three of the three thousand seven hundred, over the house's own level.
  await page.getByRole('link', { name: 'Write what it has cost' }).click()
  await page.getByLabel('Part', { exact: true }).selectOption({ label: 'theatre' })
  await page.getByLabel('What', { exact: true }).fill('Operation, longer than planned')
  await page.getByLabel('How much').fill('3000.00')
  await tick('yes')
  await page.getByLabel('Who says so').selectOption({ label: 'Runa Falk, surgeon' })
  await page.getByRole('button', { name: 'Keep it' }).click()
  await page.waitForURL(/\?kept=/)

  // It stands on Owed with its sums, and the way from there is the call.
  const asks = page.getByRole('listitem').filter({ hasText: 'Ring the owner: the costs come near the ceiling' })
  await page.goto(program.url)
  await expect(asks).toContainText(
    'Spent so far 3000.00 GBP; in the end 3240.50 GBP to 3310.75 GBP, against 3700.00 GBP',
  )
  await asks.getByRole('link', { name: 'Write it' }).click()
  await tick('the household')
  await page.getByLabel('With whom').selectOption('contact-strand')
  await tick('we called')
  await tick('phone')
  await page.getByLabel('About', { exact: true }).selectOption({ label: 'costs' })
  await tick('yes')
  await page.getByRole('button', { name: 'Keep it' }).click()
  await page.waitForURL(/\?kept=/)
  await page.goto(`${program.url}/case/juniper/agreement`)
  await expect(page.getByText(/^The owner was reached about it/)).toBeVisible()
  await expect(page.getByRole('link', { name: 'Write the call about the estimate' })).toHaveCount(0)
  await page.goto(program.url)
  await expect(page.getByRole('link', { name: 'Write it' }).first()).toBeVisible()
  await expect(asks).toHaveCount(0)

  // A new edition; one of its lines is taken from our own prices and typed over.
  await page.goto(`${program.url}/case/juniper/agreement`)
  await page.getByRole('link', { name: 'Write a new edition' }).click()
  await page.getByLabel('Version').fill('2')
  await page.getByLabel('Valid until').fill('1 May 2099')
  await page.getByLabel('Given by').selectOption({ label: 'Runa Falk, surgeon' })
  await page.getByLabel('Price for a line').selectOption({ label: 'Day in the ward: 140.00 to 190.00 GBP' })
  await page.getByRole('button', { name: 'Take it as a line' }).click()
  await expect(page.getByText('Taken as a line: Day in the ward. Say which part it is.')).toBeVisible()
  const line = page.getByRole('group', { name: 'Line 1', exact: true })
  await expect(line.getByLabel('What', { exact: true })).toHaveValue('Day in the ward')
  await expect(line.getByLabel('At least')).toHaveValue('140.00')
  await line.getByLabel('Part').selectOption({ label: 'days in the ward' })
  await line.getByLabel('At most').fill('570.00')
  await page.getByRole('checkbox', { name: 'no deposit' }).check()
  await tick('nothing paid yet')
  await page.getByLabel('Never more than this without the owner’s word').fill('4200.00')
  await tick('not answered yet')
  await page.getByRole('button', { name: 'Keep it' }).click()
  await page.waitForURL(/\?kept=/)

  // Nobody accepted it yet: the ceiling of before stands, and the answer is owed.
  const answer = page.getByRole('listitem').filter({ hasText: 'Get an answer to edition 2 of the estimate' })
  await page.goto(program.url)
  await expect(answer).toHaveCount(1)
  await answer.getByRole('link', { name: 'Write it' }).click()
  await expect(page.getByText(/against a ceiling of 3700.00 GBP/)).toBeVisible()
  await page.getByLabel('Who accepts edition 2?').selectOption('contact-strand')
  await page.getByRole('button', { name: 'Accepted now' }).click()
  await expect(page.getByText(/^Accepted by .+, \d+ \w+ \d{4}, \d\d:\d\d/)).toBeVisible()
  await expect(page.getByText(/against a ceiling of 4200.00 GBP/)).toBeVisible()
  const kept = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'estimate').at(-1)
  expect(kept?.body).toMatchObject({
    edition: 2,
    lines: [{ part: 'ward', what: 'Day in the ward', low: gbp('140.00'), high: gbp('570.00') }],
    answer: { said: 'accepted', by: 'contact-strand', on: { at: expect.stringMatching(/^\d{4}-/) } },
  })

  // The consent was for another ceiling.
  await expect(page.getByText(/^Broken: the ceiling was 3700.00 GBP, now 4200.00 GBP/)).toBeVisible()
  await page.goto(program.url)
  const juniper = page.getByRole('listitem').filter({ hasText: 'Juniper' })
  const consent = juniper.filter({ hasText: 'Consent for this side, procedure and surgeon' })
  await expect(consent.filter({ hasText: 'consent is asked again' })).toHaveCount(1)
  await expect(answer).toHaveCount(0)
})

async function agreements(program: Program, page: Page): Promise<number> {
  return (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'agreement').length
}

/** What is booked for the RIGHT ear, agreed by the owner under that ceiling. */
async function agreedFor(program: Program, page: Page, ceiling: string): Promise<void> {
  const bookings = (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'booking')
  const booked = bookings.at(-1)?.body as typeof booking.example | undefined
  if (!booked) throw new Error('Nothing is booked.')
  const plan = {
    ...agreement.example.plan,
    ears: [{ side: booked.side, procedure: booked.procedure }],
    surgeon: booked.surgeon,
    ceiling: gbp(ceiling),
    leaflet: await leafletOf(program, page),
  }
  const body = { ...agreement.example, plan, consentBy: 'contact-strand', fingerprint: fingerprintOf(plan) }
  await writeNow(program, page, stream, [{ kind: 'agreement', body }])
}

async function leafletOf(program: Program, page: Page): Promise<string> {
  const kept = (await entriesOf(program, page, stream)).find(({ header }) => header.kind === 'agreement')
  return agreement.body.parse(kept?.body).plan.leaflet
}
