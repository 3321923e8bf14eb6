import type { Page } from '@playwright/test'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { check } from '#core/journal/kinds/check.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { lateEvent } from '#core/journal/kinds/late-event.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { act, expect, openEmpty, type Program, test } from './clinic.ts'

const dayMs = 86_400_000

/** Days ago: of the operation, and of the look after it. */
const operatedAgo = 500
const lookedAgo = 100

/**
 * One dog with its operated ears. `look` is what its face was like long after; null is a dog of which nobody has heard.
 */
function courseOf(
  number: number,
  about: {
    readonly sides: readonly ('LEFT' | 'RIGHT')[]
    readonly look: 'normal' | 'absent' | null
    readonly more?: 'died' | 'tract' | 'late-tract'
    readonly reason?: BodyOf<'operation-summary'>['mainReason']
  },
  { clinic, person }: { readonly clinic: string; readonly person: string },
): Entry[] {
  const animal = `animal-of-${number}`
  const stream = `case:results-${number}`
  const make = entryMaker({ clinic, stream, author: { kind: 'person', person } }, 0x5000 + number)
  const at = (daysAgo: number, minutes = 0) => new Date(Date.now() - daysAgo * dayMs + minutes * 60_000).toISOString()
  const name = `Dog ${number}`
  const ofAnimal = { subject: { kind: 'animal', animal } } as const
  const ears = about.sides.flatMap((side) => {
    const subject = { kind: 'operation', animal, operation: `operation-${number}-${side}` } as const
    const ear = { subject: { kind: 'ear', animal, side } } as const
    const moment = { at: at(operatedAgo), zone: 'Europe/London', precision: 'minute', by: 'person' } as const
    const plan = { ...booking.example, side, agreement: null, plannedFor: moment, surgeon: person, anaesthetist: null }
    const seen = about.more === 'tract' ? 300 : 70
    const late = { ...lateEvent.example, operation: subject.operation, firstSeen: { ...moment, at: at(seen) } }
    return [
      make({ kind: 'booking', subject, at: at(operatedAgo + 10), body: plan }),
      make({
        kind: 'theatre-stamp',
        subject,
        at: at(operatedAgo),
        body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
      }),
      ...(about.reason === undefined
        ? []
        : [
            make({
              kind: 'operation-summary',
              subject,
              at: at(operatedAgo, 180),
              body: {
                ...operationSummary.example,
                side,
                surgeon: person,
                anaesthetist: null,
                signedBy: person,
                incisionAt: moment,
                closedAt: { ...moment, at: at(operatedAgo, 90) },
                mainReason: about.reason,
              },
            }),
          ]),
      ...(about.look === null
        ? []
        : [
            make({
              kind: 'check',
              ...ear,
              at: at(lookedAgo),
              body: {
                ...check.example,
                blink: about.look,
                lipOrEarDroop: about.look === 'normal' ? 'no' : 'yes',
                possibleBlockEffect: false,
              },
            }),
          ]),
      ...(about.more?.endsWith('tract') ? [make({ kind: 'late-event', ...ear, at: at(seen), body: late })] : []),
    ]
  })
  return [
    make({ kind: 'identity', ...ofAnimal, at: at(operatedAgo + 20), body: { ...identity.example, name, chip: null } }),
    make({ kind: 'baseline', ...ofAnimal, at: at(operatedAgo, -120), body: baseline.example }),
    ...ears,
    ...(about.more === 'died'
      ? [
          make({
            kind: 'death',
            ...ofAnimal,
            at: at(operatedAgo - 60),
            body: { how: 'died', cause: 'Heart', relatedToEar: 'no', relatedToOperation: 'no', heardFrom: 'owner' },
          }),
        ]
      : []),
  ]
}

/** Forty ears of thirty-four dogs: both faces of one stayed weak, nine were never heard of again, one of them died. */
async function fortyEars(program: Program, page: Page): Promise<void> {
  const me = await act<{ clinic: { id: string }; active: string }>(page.context(), program.url, 'who-am-i', {})
  const about = { clinic: me.clinic.id, person: me.active }
  const entries = Array.from({ length: 34 }, (_, i) =>
    courseOf(
      i,
      {
        sides: i < 6 ? ['LEFT', 'RIGHT'] : ['LEFT'],
        look: i >= 25 ? null : i === 0 ? 'absent' : 'normal',
        ...(i === 33 && { more: 'died' as const }),
        ...(i === 20 && { more: 'tract' as const }),
        ...(i === 21 && { more: 'late-tract' as const }),
      },
      about,
    ),
  ).flat()
  await act(page.context(), program.url, 'accept-entries', { clinic: me.clinic.id, entries })
}

test('forty ears of thirty-four dogs, nine lost, two faces that stayed weak: both denominators, and the cases behind them', async ({
  page,
  program,
}) => {
  test.slow()
  await openEmpty(program, page, 'The Counting Practice')
  await fortyEars(program, page)

  await page.goto(`${program.url}/results`)
  const byEars = page.getByRole('list', { name: /by ears/ })
  const stayed = byEars.getByRole('listitem').filter({ hasText: 'Weak face that stayed' })
  // 2 of 31 is 6.5 %: exact 0.8 to 21.4, Wilson 1.8 to 20.7; of all forty between 5.0 and 27.5 %.
  await expect(stayed).toContainText('2 of 31 known had it: 6 of 100, between 0 and 22.')
  await expect(stayed).toContainText('Between 1 and 21 by Wilson’s interval')
  await expect(stayed).toContainText('With two ears of one animal taken as tied to each other')
  await expect(stayed).toContainText(
    '31 of 40 due are known. If none of the others had it, it is 5 of 100; if all had, 28.',
  )
  await expect(stayed).toContainText('1 of the others died before it could be known.')

  // Nobody is said to be free of it without an upper end.
  const horner = byEars.getByRole('listitem').filter({ hasText: 'Horner’s syndrome that stayed' })
  await expect(horner).toContainText(/None of \d+ known had it\. That could still be up to \d+ of 100\./)

  // The cases behind the count, one touch away.
  await stayed.getByText('Which cases').click()
  await expect(stayed.getByText('Had it: 2')).toBeVisible()
  await expect(stayed.getByText('Due, and not known: 9')).toBeVisible()
  await expect(stayed.getByRole('link', { name: /^Dog 0, LEFT, / })).toBeVisible()

  // Over time, death is an end of its own; a tract that came when one ear was still followed moves no share.
  await expect(
    page.getByText(/^Ears: 40, of 34 animals, operated from .* With one: 2\. Ended before it by death, .*: 1\.$/),
  ).toBeVisible()
  await expect(
    page.getByText(/^After 12 months 3 of 100 have had one, between 0 and 14; 30 ears are still followed\.$/),
  ).toBeVisible()
  await expect(page.getByText('Nobody is followed for 24 months yet.')).toBeVisible()
  await expect(page.getByText(/^Of those with one, 1 came when fewer than 10 ears were still followed\./)).toBeVisible()
  await expect(page.getByRole('img', { name: /Share with a late swelling/ })).toBeVisible()
  // The same rates drawn, beside the same numbers; nobody said what these ears were operated for.
  const rates = page.getByRole('table', { name: 'In one picture: Dogs: TECA-LBO, by ears' })
  await expect(rates.getByRole('row', { name: /^Weak face that stayed 2 of 31 6 0 to 22/ })).toBeVisible()
  await expect(page.getByText('No signed summary says its main reason yet.')).toBeVisible()
  await page.getByText('The curve as a table').click()
  await expect(page.getByRole('columnheader', { name: 'Followed' })).toBeVisible()
  // Behind every line of it, and behind the whole course: who had one, who died, who is still followed, who is lost.
  const course = page.getByRole('table').filter({ has: page.getByRole('columnheader', { name: 'Followed' }) })
  await course.getByRole('button', { name: 'Which cases, day 200' }).click()
  await expect(course.getByText('With one, on this day: 1')).toBeVisible()
  await expect(course.getByText('Last heard of before this day, without one: 8')).toBeVisible()
  await expect(course.getByText('Died before this day, without one: 1')).toBeVisible()
  await expect(course.getByText('Followed longer, without one so far: 30')).toBeVisible()
  await expect(course.getByRole('link', { name: /^Dog 20, LEFT, .*; 200 days after it$/ })).toBeVisible()
  await page.getByText('Which cases, at 12 months').click()
  await expect(page.getByText('With one, before this day: 1')).toBeVisible()
  await expect(course.getByText('With one, before this day')).toHaveCount(0)

  // In their order, against what the studies let expect; how often the design is wrong stands beside it.
  await expect(page.getByText('Weak face that stayed: no study gives a share to watch against.')).toBeVisible()
  await stayed.getByRole('link', { name: /^Dog 0, LEFT, / }).click()
  await expect(page).toHaveURL(/\/case\/results-0$/)
})

test('a run of late tracts makes the line signal; how often such a line is wrong stands beside it', async ({
  page,
  program,
}) => {
  test.slow()
  await openEmpty(program, page, 'The Watching Practice')
  const me = await act<{ clinic: { id: string }; active: string }>(page.context(), program.url, 'who-am-i', {})
  const entries = Array.from({ length: 32 }, (_, i) =>
    courseOf(
      i,
      { sides: ['LEFT'], look: 'normal', ...(i >= 24 && { more: 'tract' as const }) },
      { clinic: me.clinic.id, person: me.active },
    ),
  ).flat()
  await act(page.context(), program.url, 'accept-entries', { clinic: me.clinic.id, entries })
  await page.goto(`${program.url}/results`)
  await expect(
    page.getByText(
      /^Late swelling, abscess or draining tract, by animals: 32 known, 8 with it; .* The line first reached 3\.5 with/,
    ),
  ).toBeVisible()
  await expect(page.getByRole('img', { name: /^Late swelling.*the line over 32 results/ })).toBeVisible()
  await expect(page.getByText(/^The line asks whether the odds are 2 times those of the studies/).first()).toBeVisible()
  await page.getByText('The line as a table').first().click()
  await expect(page.getByRole('columnheader', { name: 'Signal' }).first()).toBeVisible()
  // The cases that the line is drawn of, in the order of their operations.
  const watched = page.getByRole('img', { name: /^Late swelling.*the line over 32 results/ }).locator('..')
  await watched.getByText('Which cases').click()
  await expect(watched.getByText('Had it: 8')).toBeVisible()
  await expect(watched.getByText('Did not have it: 24')).toBeVisible()
})

test('two reasons for operating with twenty ears each: counted apart and compared over time, a death at month two an end of its own', async ({
  page,
  program,
}) => {
  test.slow()
  await openEmpty(program, page, 'The Comparing Practice')
  const me = await act<{ clinic: { id: string }; active: string }>(page.context(), program.url, 'who-am-i', {})
  const about = { clinic: me.clinic.id, person: me.active }
  const entries = Array.from({ length: 46 }, (_, i) =>
    courseOf(
      i,
      {
        sides: ['LEFT'],
        look: i === 20 ? null : 'normal',
        ...(i < 43 && { reason: i < 21 ? ('chronic-otitis' as const) : i < 41 ? ('tumour' as const) : null }),
        ...(i === 20 && { more: 'died' as const }),
        ...((i === 0 || (i >= 21 && i < 29)) && { more: 'tract' as const }),
      },
      about,
    ),
  ).flat()
  await act(page.context(), program.url, 'accept-entries', { clinic: me.clinic.id, entries })
  await page.goto(`${program.url}/results`)

  await expect(
    page.getByText(
      /^A year after: 46 of 46 ears are due; of 45 it is known whether a late tract came, of 1 it is not\.$/,
    ),
  ).toBeVisible()
  // The death at month two: nobody calls that ear free of it, and it is not among those still followed.
  await expect(
    page.getByText(/^Ears: 46, of 46 animals, .* With one: 9\. Ended before it by death, .*: 1\.$/),
  ).toBeVisible()

  // Three did not say it, two of them in a signed summary: a group of its own.
  await expect(page.getByText('Not recorded: 5')).toBeVisible()
  await page.getByText('Tumour: 20', { exact: true }).click()
  const tumours = page.getByRole('list', { name: /tumour, by ears/ })
  const late = tumours.getByRole('listitem').filter({ hasText: 'Late swelling, abscess or draining tract' })
  // Exact 19.1 to 63.9, Wilson 21.9 to 61.3.
  await expect(late).toContainText('8 of 20 known had it: 40 of 100, between 19 and 64.')
  await expect(late).toContainText('Between 21 and 62 by Wilson’s interval')
  const face = tumours.getByRole('listitem').filter({ hasText: 'Weak face that stayed' })
  await expect(face).toContainText('None of 20 known had it. That could still be up to 17 of 100.')
  await face.getByText('Which cases').click()
  await expect(face.getByText('Did not have it: 20')).toBeVisible()
  await expect(page.getByRole('table', { name: /tumour, by ears/ })).toContainText('up to 17')

  await expect(page.getByText('Ear ruined by long inflammation: 21 followed ears, 1 with one.')).toBeVisible()
  await expect(page.getByText('Tumour: 20 followed ears, 8 with one.')).toBeVisible()
  await expect(
    page.getByText(
      /^Compared over time, the difference between these groups is greater than chance often brings: log-rank, chi-square 6\.85, degrees of freedom 1, p 0\.0\d+\./,
    ),
  ).toBeVisible()
  await expect(page.getByText(/^Nobody drew these groups by lot/)).toBeVisible()
})
