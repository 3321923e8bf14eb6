import type { Page } from '@playwright/test'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { plannedLine } from '#core/journal/kinds/planned-line.ts'
import { zoneChanges } from '#core/time/zone-changes.ts'
import { askedAgain, entriesOf, expect, openInvented, type Program, test, writeNow } from './clinic.ts'

const zone = 'Europe/London'
const day = 86_400_000
const hour = 3_600_000

/** The next night in which the clocks go back, or forward: the instant of the change, whatever day it is today. */
function nextChange(way: 'back' | 'forward'): number {
  const from = new Date(Date.now() + day).toISOString()
  const found = zoneChanges(zone, from, new Date(Date.now() + 400 * day).toISOString()).find(
    ({ at, before, after }) => at > from && (way === 'back' ? after < before : after > before),
  )
  if (!found) throw new Error(`In a year the clocks of London go ${way}.`)
  return Date.parse(found.at)
}

const minutesAgo = (instant: number) => (Date.now() - instant) / 60_000
const dayOf = (instant: number) => new Intl.DateTimeFormat('en-CA', { timeZone: zone }).format(instant)

/** Given every six hours, and nothing else said of how. */
const everySixHours = {
  formulation: null,
  over: null,
  container: null,
  loading: null,
  tablet: null,
  every: { value: '6', unit: 'h' as const },
  days: null,
  mark: null,
  xylitolFree: null,
  set: null,
  mixed: null,
}

/** A drug of Hazel's plan for every six hours, given last at that instant. */
async function giveSixHourly(program: Program, page: Page, line: string, drug: string, last: number): Promise<void> {
  const operation = (await entriesOf(program, page, 'case:hazel')).findLast(
    ({ header }) => header.subject.kind === 'operation',
  )?.header.subject as { readonly kind: 'operation'; readonly animal: string; readonly operation: string }
  const subject = operation
  const use = 'analgesia_bolus' as const
  await writeNow(program, page, 'case:hazel', [
    {
      kind: 'planned-line',
      subject,
      minutesAgo: minutesAgo(last - hour),
      body: { ...plannedLine.example, line, drug, use, how: everySixHours },
    },
    {
      kind: 'drug-given',
      subject,
      minutesAgo: minutesAgo(last),
      body: { ...drugGiven.example, drug, use, line },
    },
  ])
}

test('in the ward a six-hourly drug is due by the hours that passed, and 01:30 is told apart from 01:30', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const back = nextChange('back')
  // In autumn 01:30 comes first half an hour before the change, and again half an hour after it.
  await giveSixHourly(program, page, 'first-of-the-night', 'methadone', back - 6.5 * hour)
  await giveSixHourly(program, page, 'second-of-the-night', 'buprenorphine', back - 5.5 * hour)
  const forward = nextChange('forward')
  await page.goto(`${program.url}/case/hazel`)
  const due = (drug: string) =>
    page
      .getByRole('listitem')
      .filter({ hasText: `Next dose: ${drug}` })
      .first()
  await expect(due('methadone')).toContainText('01:30+01:00')
  await expect(due('methadone')).toContainText('19:30')
  await expect(due('buprenorphine')).toContainText('01:30+00:00')
  await expect(due('buprenorphine')).toContainText('20:30')
  await expect(due('buprenorphine')).toContainText('every 6 h')

  // In spring six hours after 19:30 the clock shows 02:30; there is no 01:30 that night.
  await giveSixHourly(program, page, 'third-of-the-night', 'morphine', forward - 5.5 * hour)
  await page.goto(`${program.url}/case/hazel`)
  await expect(due('morphine')).toContainText('02:30')
  await expect(due('morphine')).not.toContainText('01:30')
})

test('at home tablets for 08:00 and 20:00 stay at 08:00 and 20:00 through both nights: page, counts and calendar', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const stream = 'case:hazel'
  const [example] = discharge.example.medicines
  if (!example) throw new Error('The example goes home with a medicine.')
  // The night that comes first, first: the newest discharge is the one that counts.
  const ways = (['back', 'forward'] as const).map((way) => ({ way, change: nextChange(way) }))
  for (const { way, change } of ways.sort((a, b) => a.change - b.change)) {
    const tablets = {
      ...example,
      drug: 'exampline',
      label: `Exampline, clocks go ${way}`,
      each: '1',
      times: ['08:00', '20:00'],
      firstDay: dayOf(change - 3 * day),
      firstTime: '08:00',
      days: 7,
    }
    const body = { ...discharge.example, medicines: [tablets] }
    await writeNow(program, page, stream, [{ kind: 'discharge', minutesAgo: minutesAgo(change - 4 * day), body }])
    const paper = async (name: string) =>
      (
        await page.context().request.get(`${program.url}/api/papers/${encodeURIComponent(stream)}/${name}`, askedAgain)
      ).text()
    const home = (await paper('home-page.txt')).replaceAll(/\s+/g, ' ')
    expect(home).toContain(`Exampline, clocks go ${way}`)
    // Seven days of two tablets are fourteen, in a week of 169 hours and in one of 167.
    expect(home).toContain('14 tablets')
    expect(home).not.toContain('The clocks change on')
    const calendar = (await paper('calendar.ics')).replaceAll('\r\n ', '')
    const first = tablets.firstDay.replaceAll('-', '')
    for (const clock of ['080000', '200000']) {
      const event = calendar.split('BEGIN:VEVENT').find((one) => one.includes(`DTSTART;TZID=${zone}:${first}T${clock}`))
      expect(event).toContain('RRULE:FREQ=DAILY;COUNT=7')
    }
    expect(calendar).toContain(`BEGIN:VTIMEZONE\r\nTZID:${zone}`)
    await page.goto(`${program.url}/case/hazel`)
    await expect(
      page.getByText(new RegExp(`Exampline, clocks go ${way}: 1 tablet at 08:00, 20:00`)).first(),
    ).toBeVisible()
  }
})
