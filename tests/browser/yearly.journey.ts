import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { check } from '#core/journal/kinds/check.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { lateEvent } from '#core/journal/kinds/late-event.ts'
import { act, expect, openEmpty, type Program, test } from './clinic.ts'

/** The last year that is over, whatever day it is. */
const year = new Date().getUTCFullYear() - 1
const words = 'Ring every owner at twelve months.'

type Me = { readonly clinic: { readonly id: string }; readonly active: string }
const meAt = (program: Program, page: Page) => act<Me>(page.context(), program.url, 'who-am-i', {})

/** Six dogs of last January, the last of them never heard of again. */
async function sixDogs(program: Program, page: Page): Promise<void> {
  const me = await meAt(program, page)
  const author = { kind: 'person', person: me.active } as const
  const entries = Array.from({ length: 6 }, (_, number) => {
    const make = entryMaker({ clinic: me.clinic.id, stream: `case:year-${number}`, author }, 0x6000 + number)
    const animal = `animal-of-${number}`
    const at = (day: string) => `${year}-01-${day}T09:00:00.000Z`
    const ofAnimal = { subject: { kind: 'animal', animal } } as const
    const operation = { subject: { kind: 'operation', animal, operation: `operation-${number}` } } as const
    const ear = { subject: { kind: 'ear', animal, side: 'LEFT' } } as const
    const planned = { at: at('10'), zone: 'Europe/London', precision: 'minute', by: 'person' } as const
    const plan = {
      ...booking.example,
      side: 'LEFT',
      agreement: null,
      plannedFor: planned,
      surgeon: me.active,
      anaesthetist: null,
    } as const
    const looked = { ...check.example, blink: 'normal', lipOrEarDroop: 'no', possibleBlockEffect: false } as const
    return [
      make({
        kind: 'identity',
        ...ofAnimal,
        at: at('02'),
        body: { ...identity.example, name: `Dog ${number}`, chip: null },
      }),
      make({ kind: 'baseline', ...ofAnimal, at: at('09'), body: baseline.example }),
      make({ kind: 'booking', ...operation, at: at('05'), body: plan }),
      make({
        kind: 'theatre-stamp',
        ...operation,
        at: at('10'),
        body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
      }),
      ...(number < 5 ? [make({ kind: 'check', ...ear, at: at('28'), body: looked })] : []),
    ]
  }).flat()
  await act(page.context(), program.url, 'accept-entries', { clinic: me.clinic.id, entries })
}

/** A tract of the first dog, of which somebody hears after the year was frozen. */
async function tract(program: Program, page: Page): Promise<void> {
  const me = await meAt(program, page)
  const author = { kind: 'person', person: me.active } as const
  const make = entryMaker({ clinic: me.clinic.id, stream: 'case:year-0', author }, 0x6100)
  const seen = {
    at: new Date(Date.now() - 86_400_000).toISOString(),
    zone: 'Europe/London',
    precision: 'day',
    by: 'person',
  } as const
  const event = make({
    kind: 'late-event',
    subject: { kind: 'ear', animal: 'animal-of-0', side: 'LEFT' },
    at: new Date().toISOString(),
    body: { ...lateEvent.example, what: 'draining-tract', operation: 'operation-0', firstSeen: seen },
  })
  await act(page.context(), program.url, 'accept-entries', { clinic: me.clinic.id, entries: [event] })
}

async function savedBy(page: Page, link: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: link }).first().click(),
  ])
  return readFileSync((await download.path()) ?? '', 'utf8')
}

test('a year is frozen after a look at who is not known; a tract of later owes an erratum, and the report stays as it was', async ({
  page,
  program,
}) => {
  test.slow()
  await openEmpty(program, page, 'The Counting Practice')
  await sixDogs(program, page)

  await page.goto(`${program.url}/results`)
  await page.getByRole('link', { name: 'Year by year' }).click()
  const ofYear = page.getByRole('region', { name: `Operations of ${year}` })
  await expect(ofYear.getByRole('row', { name: /Dogs: TECA-LBO/ })).toContainText('6')
  // Whoever was never heard of is called first; before a year has passed nobody is called lost.
  if (Date.now() > Date.UTC(year + 1, 0, 12)) await expect(ofYear.getByRole('listitem').first()).toContainText('Dog 5')
  await ofYear.getByRole('button', { name: `Freeze ${year}` }).click()
  const asked = page.getByRole('dialog', { name: `Freeze the results of ${year}?` })
  await expect(asked).toContainText('6 operated ears of 6 animals')
  // Today, unless somebody looks back; never a day before the year had ended.
  const upTo = asked.getByLabel('Count what was seen up to')
  const today = await upTo.inputValue()
  await upTo.fill(`${year}-12-31`)
  await expect(asked.getByText(/^A day from 1 January/)).toBeVisible()
  await upTo.fill(today)
  await asked.getByLabel('One thing to do otherwise next year').fill(words)
  await asked.getByRole('button', { name: 'Freeze it' }).click()

  await expect(ofYear.getByText(/^Frozen on .* by Runa Falk, .*: 6 ears\.$/)).toBeVisible()
  await expect(ofYear.getByText(words)).toBeVisible()
  await expect(ofYear.getByText('An erratum is owed')).toHaveCount(0)
  const csv = await savedBy(page, 'Counts (CSV)')
  expect(csv.split('\r\n')).toHaveLength(1 + 39 + 13 + 1)
  const rows = await savedBy(page, 'De-identified rows (CSV)')
  expect(rows).not.toMatch(/Dog \d|animal-of|-01-10/)
  const pdf = `${program.url}/api/reports/${year}/results-${year}.pdf`
  const before = await (await page.request.get(pdf)).body()
  expect(before.subarray(0, 5).toString()).toBe('%PDF-')

  await tract(program, page)
  await page.goto(`${program.url}/`)
  await page.getByText(`Erratum for the report on ${year}, LEFT ear`).first().waitFor()
  await page.goto(`${program.url}/results/years`)
  await expect(ofYear.getByText('An erratum is owed')).toBeVisible()
  await expect(ofYear.getByText(/first day of a late swelling, abscess or tract: none\. Now: /)).toBeVisible()
  await ofYear.getByRole('button', { name: `Write the erratum for ${year}` }).click()
  const erratum = page.getByRole('dialog', { name: `Erratum for the report on ${year}` })
  await erratum.getByRole('button', { name: 'Keep it' }).click()
  await expect(erratum.getByText('Say it in words first.')).toHaveCount(2)
  await erratum.getByLabel('What changed, in words').fill('One draining tract more.')
  await erratum.getByLabel('Why').fill('The owner rang.')
  await erratum.getByRole('button', { name: 'Keep it' }).click()

  await expect(ofYear.getByText(/Runa Falk: One draining tract more\./)).toBeVisible()
  await expect(ofYear.getByRole('link', { name: 'Report with its errata in front (PDF)' })).toBeVisible()
  await expect(ofYear.getByText('An erratum is owed')).toHaveCount(0)
  const after = await (await page.request.get(pdf)).body()
  expect(after.equals(before)).toBe(true)
})
