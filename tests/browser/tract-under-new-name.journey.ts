import type { Page } from '@playwright/test'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { check } from '#core/journal/kinds/check.ts'
import { choice } from '#core/journal/kinds/choice.ts'
import { household } from '#core/journal/kinds/household.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { expectAccessible } from './accessible.ts'
import {
  act,
  askedAgain,
  enrol,
  entriesOf,
  expect,
  openEmpty,
  type Person,
  type Program,
  test,
  writeNow,
} from './clinic.ts'

const day = 24 * 60
const ago = (minutes: number) => new Date(Date.now() - minutes * 60_000).toISOString()
const desk: Person = { name: 'Wanda Quist', role: 'desk', login: 'wanda.quist' }
const born = { at: '2018-06-01T23:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' } as const

/** A dog operated on its left ear fourteen months ago, solved at its year: nothing is owed in its file any more. */
async function solved(program: Program, page: Page, name: string, chip: string | null): Promise<void> {
  const id = name.toLowerCase()
  const subject = { kind: 'operation', animal: `animal-${id}`, operation: `operation-${id}` } as const
  await writeNow(
    program,
    page,
    `case:${id}`,
    [
      {
        kind: 'household',
        minutesAgo: 450 * day,
        subject: { kind: 'household', household: `household-${id}` },
        body: { ...household.example, contacts: [{ contact: `contact-${id}`, roles: ['owner'], mayConsent: true }] },
      },
      {
        kind: 'identity',
        minutesAgo: 450 * day,
        body: { ...identity.example, name, chip, born, breed: 'Cocker Spaniel', household: `household-${id}` },
      },
      { kind: 'baseline', minutesAgo: 427 * day, body: baseline.example },
      {
        kind: 'booking',
        minutesAgo: 440 * day,
        subject,
        body: {
          side: 'LEFT',
          procedure: 'teca-lbo',
          agreement: null,
          plannedFor: { at: ago(426 * day), zone: 'Europe/London', precision: 'minute', by: 'person' },
          surgeon: 'person-surgeon',
          anaesthetist: null,
        },
      },
      {
        kind: 'theatre-stamp',
        minutesAgo: 426 * day,
        subject,
        body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
      },
      ...[14, 40, 120, 200, 400].map((after) => ({
        kind: 'check' as const,
        minutesAgo: (426 - after) * day,
        body: { ...check.example, blink: 'normal' as const, lipOrEarDroop: 'no' as const, wound: 'closed' as const },
      })),
      {
        kind: 'twelve-months',
        minutesAgo: 5 * day,
        body: { status: 'solved', source: 'owner', tries: 1, face: 'normal', wouldChooseAgain: 'yes', text: null },
      },
    ],
    `animal-${id}`,
  )
}

/** Every sentence of a leaflet that speaks of our own results. */
function figuresIn(leaflet: string): readonly string[] {
  return leaflet.match(/[^.]*our own[^.]*\./g) ?? []
}

test('a tract at fourteen months, told under another surname with two chip digits swapped, re-opens the index ear', async ({
  page,
  program,
  browser,
}) => {
  test.slow()
  await openEmpty(program, page, 'Reedholm Ears')
  const { url } = program
  const row = { practice: null, email: null, address: [] }
  const marrow = { ...row, kind: 'owner', name: 'Odile Marrow', phone: '01632 960141' }
  await act(page.context(), url, 'put-row', { register: 'contact', id: 'contact-fern', body: marrow })
  for (let number = 1; number <= 11; number += 1) await solved(program, page, `Dog${number}`, null)
  await solved(program, page, 'Fern', '985112001234567')
  const next = 'case:next'
  await writeNow(program, page, next, [
    { kind: 'identity', body: { ...identity.example, name: 'Next', species: 'dog', chip: null } },
    { kind: 'ear-findings' },
    { kind: 'choice', body: choice.example },
  ])
  const leaflet = async () => {
    const path = `${url}/api/papers/${encodeURIComponent(next)}/owner-leaflet.txt`
    return (await (await page.context().request.get(path, askedAgain)).text()).replaceAll(/\s+/g, ' ')
  }

  // What is counted before, approved for owners.
  await page.goto(`${url}/results`)
  const dogs = page.getByRole('region', { name: 'Dogs: TECA-LBO' })
  const late = dogs.getByRole('listitem').filter({ hasText: 'Late swelling, abscess or draining tract' }).first()
  await expect(late).toContainText('None of 12 known had it.')
  await expect(dogs.getByText('None of 12 ears had one as far as they were followed.')).toBeVisible()
  await dogs.getByRole('button', { name: 'Approve these counts for owners' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Approve', exact: true }).click()
  await expect(late).toContainText('Owners hear 0 of 12')
  await expect.poll(async () => (await leaflet()).includes('and 12 of our own.')).toBe(true)
  const before = figuresIn(await leaflet())

  // The front desk, on the telephone: another surname, another phone, two digits of the chip changed places.
  const front = await (await browser.newContext()).newPage()
  await enrol(program, page, desk, '2468', front)
  await front.goto(`${url}/new`)
  await front.getByLabel('the owner', { exact: true }).check()
  await front.getByLabel('LEFT', { exact: true }).check()
  await front.getByLabel('What is wrong, in their words').fill('A hole below the ear that weeps.')
  await front.getByLabel('For how long').fill('7')
  await front.getByLabel('Unit').selectOption('days')
  await front.getByLabel('Name', { exact: true }).first().fill('Fern')
  await front.getByLabel('dog', { exact: true }).check()
  await front.getByLabel('Chip').fill('985112001234576')
  await front.getByLabel('Born').fill('2 June 2018')
  await front.getByLabel('Breed').fill('Cocker spaniel')
  await front.getByRole('region', { name: 'Owner' }).getByLabel('Name').fill('Odile Quenby')
  await front.getByRole('region', { name: 'Owner' }).getByLabel('Phone').fill('01632 960777')
  await front.getByLabel('this week', { exact: true }).check()
  const offer = front.getByRole('region', { name: 'Does this belong to an ear we operated?' })
  await expect(offer).toContainText('Heard in what was told: a draining tract.')
  const ear = offer.getByRole('radio', {
    name: /^LEFT ear of Fern, TECA-LBO on .*, 13 months before|14 months before$/,
  })
  await expect(offer).toContainText('the same chip but for two digits that changed places')
  await expect(offer).toContainText('born on the same day or in the same month, the same breed')
  await expect(offer).toContainText('Against it: another name of the owner.')
  const keep = front.getByRole('button', { name: 'Keep the referral' })
  await front.getByLabel('In your words').first().fill('A tract is looked at this week.')
  await expect(front.getByText(/Still to be said: .*to which operated ear it belongs/)).toBeVisible()
  await expect(keep).toBeDisabled()
  await ear.check()
  await expectAccessible(front)
  await keep.click()
  await expect(front.getByRole('heading', { level: 1 })).toHaveText('The referral of Fern is kept')
  await expect(front.getByText('It was written down as draining tract at the LEFT ear of Fern')).toBeVisible()
  await expect(front.getByText('The two files are not joined.')).toBeVisible()

  // Two files still; the late event stands at the index ear, the answer with its reasons in the new file.
  const fern = await entriesOf(program, front, 'case:fern')
  expect(fern.at(-1)?.header).toMatchObject({ kind: 'late-event', subject: { kind: 'ear', side: 'LEFT' } })
  expect(fern.at(-1)?.body).toMatchObject({ what: 'draining-tract', operation: 'operation-fern', seenBy: 'owner' })
  await front.getByRole('link', { name: 'Open the case of Fern' }).last().click()
  await expect(front).not.toHaveURL(/case\/fern/)
  const stream = `case:${new URL(front.url()).pathname.split('/').at(-1)}`
  const fresh = await entriesOf(program, front, stream)
  expect(fresh.map(({ header }) => header.kind).sort()).toEqual(['household', 'identity', 'late-sign', 'referral'])
  await expect(front.getByText('The two files are not joined.')).toBeVisible()

  // The index ear is open again, and owed to the surgeon.
  await page.goto(`${url}/case/fern`)
  await expect(page.getByText('See the LEFT ear again: draining tract').first()).toBeVisible()
  await expect(page.getByText('Decide on the LEFT ear: draining tract').first()).toBeVisible()
  await expect(page.getByText('Outcome of the LEFT ear again, after draining tract').first()).toBeVisible()
  await page.goto(`${url}/`)
  await expect(page.getByText('See the LEFT ear again: draining tract')).toBeVisible()

  // The curve moves; what owners hear stands until a person approves otherwise.
  await page.goto(`${url}/results`)
  await expect(late).toContainText('1 of 12 known had it.')
  await expect(late).toContainText('Owners still hear 0 of 12')
  await expect(dogs.getByText(/^Ears: 12, of 12 animals, .* With one: 1\./)).toBeVisible()
  await dogs.getByText('The curve as a table').click()
  // One of the twelve that were still followed, on the 419th day: 8 of 100.
  await expect(dogs.getByRole('row', { name: /^419 12 1 0 8\.3 / })).toBeVisible()
  expect(figuresIn(await leaflet())).toEqual(before)

  // A change of what owners read is owed to the surgeon within a week: before and after, in the owner's sentences.
  await page.goto(`${url}/`)
  const owed = page.getByRole('listitem').filter({ hasText: 'Approve what owners read: dogs, TECA-LBO' })
  await expect(owed).toContainText('A late event came in that owners do not hear of yet.')
  await expect(owed).toContainText('Late swelling, abscess or draining tract, ears: 0 of 12 → 1 of 12.')
  await owed.getByRole('link', { name: 'Look at it' }).click()
  await dogs.getByRole('button', { name: 'Approve these counts for owners' }).click()
  const review = page.getByRole('dialog')
  const change = review.getByRole('region', { name: /^A deep infection that came back.*, by ears$/ })
  await expect(change).toContainText('of 12 operated ears of dogs, none was followed by a deep infection')
  await expect(change).toContainText('We have counted 12 operated ears of dogs of our own. That is too few')
  await expectAccessible(page)

  // Left as it is, with a reason: nothing is owed, and owners read what they read.
  await review.getByRole('button', { name: 'Leave as it is' }).click()
  await expect(review).toContainText('Say why it stays as it is.')
  await review.getByLabel('What you looked at, or why it stays as it is').fill('The ear is scanned on Friday.')
  await review.getByRole('button', { name: 'Leave as it is' }).click()
  await expect(dogs.getByText(/^Left as it is by Runa Falk on .*: The ear is scanned on Friday\.$/)).toBeVisible()
  await page.goto(`${url}/`)
  await expect(page.getByText('See the LEFT ear again: draining tract')).toBeVisible()
  await expect(owed).toHaveCount(0)
  expect(figuresIn(await leaflet())).toEqual(before)

  // Approved: the next owner reads the other sentence.
  await page.goto(`${url}/results`)
  await dogs.getByRole('button', { name: 'Approve these counts for owners' }).click()
  await review.getByRole('button', { name: 'Approve', exact: true }).click()
  await expect(late).toContainText('Owners hear 1 of 12')
  await expect.poll(async () => figuresIn(await leaflet()).join(' ') === before.join(' ')).toBe(false)
})
