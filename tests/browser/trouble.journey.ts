import type { Page } from '@playwright/test'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { check } from '#core/journal/kinds/check.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { expectAccessible } from './accessible.ts'
import { enrol, expect, nurse, openEmpty, type Program, test, typedWhen, writeNow } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const dayMinutes = 24 * 60
/** Days ago: operated, and looked at on the next day. */
const operatedAgo = 40
const stream = 'case:figs'

/** A dog whose left ear was operated, with a Horner's syndrome of that side before it and still there on the next day. */
async function operatedDog(program: Program, page: Page): Promise<void> {
  const animal = 'animal-figs'
  const ofAnimal = { kind: 'animal', animal } as const
  const operation = { kind: 'operation', animal, operation: 'operation-figs' } as const
  const at = new Date(Date.now() - operatedAgo * dayMinutes * 60_000).toISOString()
  const plannedFor = { at, zone: 'Europe/London', precision: 'minute', by: 'person' } as const
  const seen = {
    ...check.example,
    wound: 'closed',
    woundNeeded: 'not-assessed',
    horner: 'yes',
    blink: 'normal',
  } as const
  const horner = { ...baseline.example.LEFT, pupil: 'small' } as const
  const minutes = operatedAgo * dayMinutes
  await writeNow(program, page, stream, [
    { kind: 'identity', subject: ofAnimal, minutesAgo: minutes + 300, body: { ...identity.example, name: 'Figs' } },
    { kind: 'baseline', subject: ofAnimal, minutesAgo: minutes + 120, body: { ...baseline.example, LEFT: horner } },
    {
      kind: 'booking',
      subject: operation,
      minutesAgo: minutes + 200,
      body: { ...booking.example, side: 'LEFT', agreement: null, plannedFor, anaesthetist: null },
    },
    {
      kind: 'theatre-stamp',
      subject: operation,
      minutesAgo: minutes,
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
    },
    {
      kind: 'check',
      subject: { kind: 'ear', animal, side: 'LEFT' },
      minutesAgo: minutes - 2 * dayMinutes,
      body: { ...seen, lipOrEarDroop: 'no' },
    },
  ])
}

function trouble(page: Page, name: RegExp) {
  return page.getByRole('article', { name })
}

function grade(page: Page, name: RegExp, scheme: string) {
  return trouble(page, name).getByRole('list', { name: 'Grades' }).getByRole('listitem').filter({ hasText: scheme })
}

test('a wound gap is graded by what it needed, and rises when it is operated again; what was there before stays out', async ({
  page,
  browser,
  program,
}) => {
  test.slow()
  await openEmpty(program, page, 'The Gap Practice')
  await operatedDog(program, page)
  const ward = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', ward)

  // What the baseline had is no trouble of the operation, whatever a look of the next day says.
  await ward.goto(`${program.url}/case/figs/trouble`)
  await expect(trouble(ward, /^Horner/)).toContainText('there before, and no worse (by the baseline)')
  await expect(grade(ward, /^Horner/, 'Cook 2010')).toContainText('not graded: was there before')

  await ward.getByRole('link', { name: 'Write down a trouble of the LEFT ear' }).click()
  const form = await EntryForm.here(ward)
  await form.pickOnly('What', 'wound gap')
  await form.type('First noticed', typedWhen(-(operatedAgo - 6) * dayMinutes))
  await form.chooseAll({
    'Noticed by': 'us',
    'What did it need, all in all?': 'nothing',
    'How does the part work in the end?': 'not known yet',
    'What is it?': 'not decided yet',
  })
  const gap = await form.keep()

  // The program proposes and decides nothing: Cook grades by need alone, Clavien–Dindo waits for a person.
  await ward.goto(`${program.url}/case/figs/trouble`)
  await expect(trouble(ward, /^Wound gap/)).toContainText('Not decided yet. Proposed: complication.')
  await expect(trouble(ward, /^Wound gap/)).toContainText('peri-operative (0–3 months)')
  await expect(grade(ward, /^Wound gap/, 'Cook 2010')).toContainText('minor')
  await expect(grade(ward, /^Wound gap/, 'Clavien–Dindo')).toContainText('unknown')
  await grade(ward, /^Wound gap/, 'Clavien–Dindo')
    .getByText('Why?')
    .click()
  await expect(grade(ward, /^Wound gap/, 'Clavien–Dindo')).toContainText('First somebody says whether it is')
  await expect(grade(ward, /^Wound gap/, 'VCOG-CTCAE v2 (2021)')).toContainText('unknown')
  await expectAccessible(ward)

  // It was closed again under general anaesthesia: the entry that says so takes the place of the first.
  await page.goto(`${program.url}/case/figs/trouble`)
  await trouble(page, /^Wound gap/)
    .getByRole('link', { name: 'More became known: correct it' })
    .click()
  await expect(page).toHaveURL(new RegExp(`amend=${gap}`))
  const later = await EntryForm.here(page)
  await later.chooseAll({
    'What did it need, all in all?': 'intervention under general anaesthesia',
    'What is it?': 'complication',
  })
  await later.type('Reason', 'The gap was closed again in theatre.')
  await later.keep()
  await page.goto(`${program.url}/case/figs/trouble`)
  await expect(trouble(page, /^Wound gap/)).toHaveCount(1)
  await expect(trouble(page, /^Wound gap/)).toContainText('complication, decided by Runa Falk')
  await expect(grade(page, /^Wound gap/, 'Cook 2010')).toContainText('major')
  await expect(grade(page, /^Wound gap/, 'Clavien–Dindo')).toContainText('IIIb')
  await expect(grade(page, /^Wound gap/, 'VCOG-CTCAE v2 (2021)')).toContainText('unknown')

  // Counted once, with both denominators; what was there before is left out and said to be.
  await page.goto(`${program.url}/results`)
  const byEars = page.getByRole('list', { name: /^Trouble, Dogs: TECA-LBO, by ears$/ })
  const counted = byEars.getByRole('listitem').filter({ hasText: 'Wound gap' })
  await expect(counted).toContainText('1 of 1 known had it.')
  await expect(counted).toContainText('Followed: 1 of 1 operated.')
  await expect(counted).toContainText(
    'Decided as a complication: 1; expected sequela: 0; failure to cure: 0; not decided yet: 0.',
  )
  await counted.getByText('Which cases').click()
  await expect(counted.getByText('Had it: 1')).toBeVisible()
  await expect(counted.getByRole('link', { name: /^Figs, LEFT, / })).toBeVisible()
  const horner = byEars.getByRole('listitem').filter({ hasText: 'Horner' })
  await horner.getByText('Which cases').click()
  await expect(horner.getByText('There before; not known since: 1')).toBeVisible()
  await expect(horner).toContainText('Left out, because it was there before and is no worse: 1.')
  await expect(page.getByText(/^These rates cannot be compared with published ones\./).first()).toBeVisible()
  await expect(
    page.getByText('Clavien–Dindo, adapted to dogs 2023: IIIb 1. Of 1 followed, 1 operated.').first(),
  ).toBeVisible()

  // What cannot have followed the operation it names is not kept, and each field says what would be right.
  const event = await EntryForm.open(page, program.url, 'figs/write/late-event?side=RIGHT')
  await event.choose('What came', 'abscess')
  await event.pick('After which operation', 'LEFT')
  await event.type('First seen', '5 March 2024')
  await event.chooseAll({ 'Seen by': 'us', 'What does it need?': 'operation, not done yet' })
  await page.getByRole('button', { name: /^Keep/ }).click()
  const found = page.getByRole('region', { name: '2 answers are missing or cannot be read' })
  await expect(found).toContainText('This operation was on the LEFT ear.')
  await expect(found).toContainText('5 March 2024 lies before the operation of')
  await expect(found).toBeFocused()
  await expectAccessible(page)
  await event.type('First seen', typedWhen(-5 * dayMinutes))
  await expect(page.getByText('5 March 2024 lies before the operation of')).toHaveCount(0)

  // A result "after a year" on day 40: said beside the field, and kept as it is said.
  const year = await EntryForm.open(page, program.url, 'figs/write/twelve-months?side=LEFT')
  await expect(page.getByText('This is early for a result after a year')).toBeVisible()
  await expect(page.getByText(/^It is day 40 after the operation of /)).toBeVisible()
  await year.chooseAll({ 'How do we know?': 'our examination', 'The ear is': 'solved', 'Face on this side': 'normal' })
  await year.choose('Would the owner choose it again?', 'yes')
  await year.type('Tries to reach the owner', '0')
  await year.keep()
})
