import { baseline } from '#core/journal/kinds/baseline.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { theatreStamp } from '#core/journal/kinds/theatre-stamp.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test, typedWhen as when, writeNow } from './clinic.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'
import { writeWeight } from './pages/entry-form.ts'

const room = (plan: DosePlanPage) => plan.address.replace('/doses/', '/room/')

test('both ears under one anaesthetic: one set of clocks, and a pause between them with go or no-go', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await writeWeight(page, program.url, 'teasel', '12 kg')
  const left = await DosePlanPage.book(program, page, 'teasel', 'LEFT', when(-105))
  const right = await DosePlanPage.book(program, page, 'teasel', 'RIGHT', when(15))
  const operationOf = (plan: DosePlanPage) => decodeURIComponent(plan.address.split('/doses/')[1] ?? '')
  const about = { kind: 'operation', animal: 'animal-teasel', operation: operationOf(left) } as const
  const stamp = (checkpoint: string, minutesAgo: number, detail: Record<string, string> = {}) => ({
    kind: 'theatre-stamp' as const,
    subject: about,
    body: { ...theatreStamp.example, checkpoint, detail },
    minutesAgo,
  })
  // The first ear as it was stamped: two hours of anaesthesia, the nerve seen whole.
  await writeNow(program, page, 'case:teasel', [
    { kind: 'baseline', body: baseline.example, minutesAgo: 150 },
    stamp('premedication', 140),
    stamp('anaesthesia-start', 120),
    stamp('incision', 100),
    stamp('k3-facial-nerve', 80, { nerve: 'seen', state: 'free' }),
    stamp('closed', 10),
    {
      kind: 'observation',
      subject: about,
      body: {
        ...observation.example,
        values: [{ what: 'temperature', value: { value: '36.4', unit: 'Cel' }, method: 'oesophagus', artefact: false }],
      },
      minutesAgo: 6,
    },
    {
      kind: 'blood-loss',
      subject: about,
      body: {
        jar: { value: '60', unit: 'mL' },
        lavageIn: { value: '40', unit: 'mL' },
        lavageInJar: null,
        swabs: [],
      },
      minutesAgo: 5,
    },
  ])

  await page.goto(room(right))
  await expect(page.getByText('LEFT came first; this is the second ear, RIGHT.')).toBeVisible()
  // What began the anaesthetic was stamped with the first ear.
  await expect(page.getByRole('heading', { name: 'Premedication given' })).toHaveCount(0)
  await expect(page.getByRole('heading', { name: 'Arrow on the skin' })).toBeVisible()
  const clocks = page.getByRole('region', { name: 'Clocks' })
  await expect(clocks).toContainText(/Anaesthesia\s*2 h 0/)
  await expect(clocks).toContainText('Last observation')
  await expect(page.getByRole('region', { name: 'Blood loss' })).toContainText('at least 20 mL')
  const links = page.getByRole('navigation', { name: 'Spoken pauses' })
  await expect(links.getByRole('link')).toHaveCount(3)
  await expect(links.getByRole('link', { name: /before anaesthesia/ })).toHaveCount(0)

  // What the first ear left behind is read aloud first.
  await links.getByRole('link', { name: /^Pause before the second ear/ }).click()
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('What is on record of the first ear')
  await expect(page.getByText('36.4 °C at')).toBeVisible()
  await expect(page.getByText(/^2 h \d min$/)).toBeVisible()
  await expect(page.getByText('The facial nerve was seen. It lay free.')).toBeVisible()
  await expect(page.getByText(/0 % of the animal’s one limit/)).toBeVisible()
  await expectAccessible(page)
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page, `first ear ${width}`)
  }
  await page.setViewportSize({ width: 820, height: 1180 })
  await page.getByRole('link', { name: 'Begin with item 1' }).click()
  await page
    .getByRole('group', { name: 'Who answers aloud?' })
    .getByRole('radio', { name: /Runa Falk/ })
    .check()
  const button = (name: string) => page.getByRole('button', { name, exact: true })
  for (let item = 1; item <= 8; item += 1) {
    await expect(page.getByText(`Item ${item} of 9`)).toBeVisible()
    await button('YES').click()
    await expect(page.getByRole('region').getByRole('status')).toContainText('YES, Runa Falk')
    await page
      .getByRole('link', { name: 'Next item' })
      .or(page.getByRole('link', { name: 'To the summary' }))
      .first()
      .click()
  }
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(
    'Surgeon and anaesthetist each said GO for the second ear',
  )
  await button('NO').click()
  await page
    .getByLabel('NO: why, and what is done about it')
    .fill('36.4 °C and falling: the second ear waits three weeks.')
  await button('Keep NO').click()
  await page.getByRole('link', { name: 'To the summary' }).first().click()
  await expect(page.getByText('Not settled: the second ear waits')).toBeVisible()

  // No-go: a cut would ask for a reason; the booking is moved instead.
  await page.getByRole('link', { name: 'To the theatre record' }).click()
  await button('Done now: Incision').click()
  await expect(page.getByText(/the pause before the second ear, whole, with GO/)).toBeVisible()
  await button('It did not happen yet').click()
  const stamps = (await entriesOf(program, page, 'case:teasel')).filter(({ header }) => header.kind === 'theatre-stamp')
  expect(stamps.filter(({ body }) => body.checkpoint === 'incision')).toHaveLength(1)
  const items = (await entriesOf(program, page, 'case:teasel')).filter(({ header }) => header.kind === 'pause-item')
  expect(new Set(items.map(({ body }) => body.pause))).toEqual(new Set(['before-second-ear']))
  expect(items).toHaveLength(9)
})
