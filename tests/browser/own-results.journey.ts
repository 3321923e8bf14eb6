import type { Page } from '@playwright/test'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { check } from '#core/journal/kinds/check.ts'
import { choice } from '#core/journal/kinds/choice.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { askedAgain, expect, openEmpty, type Program, test, writeNow } from './clinic.ts'

const day = 24 * 60
const ago = (minutes: number) => new Date(Date.now() - minutes * 60_000).toISOString()

/** A dog of this clinic, operated two months ago and looked at on the tenth day: its face works. */
async function operated(program: Program, page: Page, number: number): Promise<void> {
  const subject = { kind: 'operation', animal: 'animal-1', operation: `operation-own-${number}` } as const
  await writeNow(program, page, `case:own-${number}`, [
    { kind: 'identity', minutesAgo: 70 * day, body: { ...identity.example, name: `Dog ${number}`, species: 'dog' } },
    { kind: 'baseline', minutesAgo: 61 * day, body: baseline.example },
    {
      kind: 'booking',
      minutesAgo: 65 * day,
      subject,
      body: {
        side: 'LEFT',
        procedure: 'teca-lbo',
        agreement: null,
        plannedFor: { at: ago(60 * day), zone: 'Europe/London', precision: 'minute', by: 'person' },
        surgeon: 'person-surgeon',
        anaesthetist: null,
      },
    },
    {
      kind: 'theatre-stamp',
      minutesAgo: 60 * day,
      subject,
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
    },
    {
      kind: 'check',
      minutesAgo: 50 * day,
      body: { ...check.example, blink: 'normal', lipOrEarDroop: 'no', wound: 'closed' },
    },
  ])
}

test('0 in 12 of our own are said with their upper bound, withheld as a rate, and used once somebody approves them', async ({
  page,
  program,
}) => {
  test.slow()
  await openEmpty(program, page, 'Reedholm Ears')
  for (let number = 1; number <= 12; number += 1) await operated(program, page, number)
  const next = 'case:next'
  await writeNow(program, page, next, [
    { kind: 'identity', body: { ...identity.example, name: 'Next', species: 'dog' } },
    { kind: 'ear-findings' },
    { kind: 'choice', body: choice.example },
  ])
  const leaflet = async () => {
    const path = `${program.url}/api/papers/${encodeURIComponent(next)}/owner-leaflet.txt`
    return (await (await page.context().request.get(path, askedAgain)).text()).replaceAll(/\s+/g, ' ')
  }
  expect(await leaflet()).not.toContain('of our own.')

  await page.goto(`${program.url}/results`)
  const dogs = page.getByRole('region', { name: 'Dogs: TECA-LBO' })
  const face = dogs.getByRole('listitem').filter({ hasText: 'Weak face, new or worse' }).first()
  // 1 − 0.025^(1/12) = 26.5 of 100, rounded up.
  await expect(face).toContainText('None of 12 known had it. That could still be up to 27 of 100.')
  // Said once for the list, not on every line.
  await expect(dogs.getByText('Of every line, everybody due is known.').first()).toBeVisible()
  await expect(dogs.getByText('Of all of these, owners hear only the studies.').first()).toBeVisible()
  await expect(face).not.toContainText('0 of 100')

  await dogs.getByRole('button', { name: 'Approve these counts for owners' }).click()
  const review = page.getByRole('dialog')
  await expect(review).toContainText('Weak face, new or worse, of any duration, ears: nothing → 0 of 12, 0 not known')
  await review.getByRole('button', { name: 'Approve', exact: true }).click()
  await expect(face).toContainText('Owners hear 0 of 12')

  // The case of the next dog: both together, our n named, our own rate only as a bound.
  await page.goto(`${program.url}/case/next`)
  await page
    .getByText(/^What studies found after/)
    .first()
    .click()
  const said = page.getByRole('listitem').filter({ hasText: 'A weak face on that side.' }).first()
  await expect(said).toContainText('This joins 2 studies with 235 operated ears of dogs and 12 of our own.')
  await expect(said).toContainText(
    'Of our own 12 operated ears of dogs, none was followed by a weak face on that side.',
  )
  await expect(said).toContainText('By itself that could still mean up to 27 of 100.')
  const told = await leaflet()
  expect(told).toContain('and 12 of our own.')
  expect(told).toContain('up to 27 of 100')
})
