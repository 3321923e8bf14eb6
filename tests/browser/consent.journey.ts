import type { Page } from '@playwright/test'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import type { booking } from '#core/journal/kinds/booking.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { household } from '#core/journal/kinds/household.ts'
import { entriesOf, expect, hire, nurse, openInvented, type Program, test, typedWhen, writeNow } from './clinic.ts'
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

const group = (page: Page, name: string | RegExp) => page.getByRole('group', { name })

async function choose(page: Page, legend: string | RegExp, answer: string): Promise<void> {
  await group(page, legend).getByRole('radio', { name: answer, exact: true }).check()
}

/** The talk up to how consent is given. */
async function talkOver(page: Page, who: string, authority: string): Promise<void> {
  await page.getByLabel('Who agrees', { exact: true }).selectOption({ label: who })
  await choose(page, 'On what authority', authority)
  await choose(page, /adult who can decide/, 'yes, asked')
  await choose(page, 'If the heart stops', 'do all you can')
  await choose(page, 'If we find that more is needed', 'phone first')
  await page.getByLabel('What exactly may be added').fill('The bulla may be opened from below.')
  await choose(page, 'Photos', 'for the record only')
  for (const item of ['Which ear is done', 'Care of the eye', 'The collar', 'When to phone']) {
    await choose(page, item, 'own words')
  }
  await choose(page, 'Two risks', 'not yet')
  await page.getByLabel('Two risks: what was said').fill('That she may not hear.')
}

async function nameOf(page: Page, contact: string): Promise<string> {
  const options = page.getByLabel('Who agrees', { exact: true }).locator(`option[value="${contact}"]`)
  return (await options.textContent()) ?? ''
}

test('a sitter cannot agree and is told what would make it possible; the owner signs on the screen, and one more breaks it', async ({
  page,
  program,
}) => {
  test.slow()
  await ready(program, page)
  await page.goto(`${program.url}/case/juniper/agreement`)
  const sitter = await nameOf(page, 'contact-okafor')
  const owner = await nameOf(page, 'contact-strand')

  await talkOver(page, sitter, 'looks after the animal, no more')
  const refused = page.getByRole('alert').filter({ hasText: 'This person cannot agree like this' })
  await expect(refused).toContainText('Reach the owner by telephone')
  await expect(refused).toContainText('authorise this person in writing')
  await choose(page, 'How consent is given', 'signed here, on this screen')
  await choose(page, 'Copy for the owner', 'on paper')
  await expect(page.getByRole('button', { name: 'Read it through before signing' })).toBeDisabled()

  // Called away: everything is there again.
  await page.reload()
  await expect(page.getByLabel('Two risks: what was said')).toHaveValue('That she may not hear.')
  await page.getByLabel('Who agrees', { exact: true }).selectOption({ label: owner })
  await choose(page, 'On what authority', 'the owner')
  await expect(refused).toHaveCount(0)

  // Read through before anybody signs.
  await page.getByRole('button', { name: 'Read it through before signing' }).click()
  await expect(page.getByRole('heading', { name: 'Read it through together' })).toBeVisible()
  const agree = page.getByRole('button', { name: 'Yes, this is agreed' })
  await expect(agree).toBeDisabled()
  const pad = page.getByRole('img', { name: 'Sign in this box' })
  const box = await pad.boundingBox()
  if (!box) throw new Error('There is no box to sign in.')
  await page.mouse.move(box.x + 60, box.y + 80)
  await page.mouse.down()
  for (let step = 1; step <= 20; step += 1) {
    await page.mouse.move(box.x + 60 + step * 15, box.y + 80 + Math.sin(step) * 40)
  }
  await page.mouse.up()
  await expect(page.getByRole('img', { name: 'Signed, 1 stroke' })).toBeVisible()
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
    .request.get(`${program.url}/api/papers/${encodeURIComponent(stream)}/agreement-sheet.html`)
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
  await talkOver(page, await nameOf(page, 'contact-strand'), 'the owner')
  await choose(page, 'How consent is given', 'by telephone, with a witness')
  await choose(page, 'Copy for the owner', 'not yet')
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

  await page.goto(`${program.url}/case/juniper/agreement`)
  await expect(page.getByText(/LEFT: taken back by .+, by telephone/)).toBeVisible()
  await page.goto(`${program.url}/theatre`)
  const lines = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Juniper' }) })
  await expect(lines.filter({ hasText: 'Consent for this ear was taken back by' })).toHaveCount(1)
  await expect(lines.filter({ hasText: 'Consent for this ear was taken back by' })).toContainText('LEFT')
})

async function agreements(program: Program, page: Page): Promise<number> {
  return (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'agreement').length
}

async function leafletOf(program: Program, page: Page): Promise<string> {
  const kept = (await entriesOf(program, page, stream)).find(({ header }) => header.kind === 'agreement')
  return agreement.body.parse(kept?.body).plan.leaflet
}
