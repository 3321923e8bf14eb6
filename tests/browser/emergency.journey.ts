import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, sendEntries, test } from './clinic.ts'

const room = '/case/sorrel/room/operation-sorrel'

test('a cat of 4 kg bleeds: two taps to the doses without the server, and the clock goes on after a reload', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  // An estimated weight, and a loss of which the lavage was not measured: 20 to 30 mL.
  const [first] = (await entriesOf(program, page, 'case:sorrel')).filter(({ header }) => header.kind === 'weight')
  if (!first) throw new Error('Sorrel was never weighed.')
  const now = { at: new Date().toISOString(), zone: 'Europe/London', precision: 'second', by: 'person' }
  const write = (tail: string, header: object, body: object) => ({
    ...first,
    header: { ...first.header, id: first.header.id.slice(0, -4) + tail, happenedAt: now, writtenAt: now.at, ...header },
    body,
  })
  const mL = (value: string) => ({ value, unit: 'mL' })
  const subject = { kind: 'operation', animal: 'animal-sorrel', operation: 'operation-sorrel' }
  await sendEntries(program, page, [
    write('aaa1', {}, { weight: { value: '4', unit: 'kg' }, typed: null, how: 'estimated', bodyCondition: null }),
    write(
      'aaa2',
      { kind: 'blood-loss', version: 1, subject },
      { jar: mL('30'), lavageIn: mL('10'), lavageInJar: null, swabs: [] },
    ),
  ] as Parameters<typeof sendEntries>[2])

  await page.setViewportSize({ width: 820, height: 1180 })
  await page.goto(program.url + room)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  // The parts of the app are loaded ahead a second after the page stands; then the network may go.
  await page.waitForTimeout(3_000)
  await program.kill()

  const tapped = Date.now()
  await page.getByRole('link', { name: 'Emergency', exact: true }).click()
  await page.getByRole('button', { name: 'Bleeding', exact: true }).click()
  const dose = (drug: string) =>
    page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: drug, exact: true }) })
  // 4 kg × 10 mg/kg of 100 mg/mL, and 4 kg × 5 mL/kg.
  await expect(dose('Tranexamic acid')).toContainText('0.4 mL')
  expect(Date.now() - tapped).toBeLessThan(5_000)
  await expect(dose('Tranexamic acid')).toContainText('of 100 mg/mL')
  await expect(dose('Balanced crystalloid')).toContainText('20 mL')
  await expect(page.getByText(/^Weight 4 kg .*ESTIMATED/)).toBeVisible()
  // 4 kg × 60 mL/kg is 240 mL: 20 mL is 8 %, 30 mL is 13 %.
  await expect(page.getByText('All its blood: about 240 mL')).toBeVisible()
  await expect(page.getByText(/Lost so far: .*8 to 13 % of its blood/)).toBeVisible()
  await expect(page.getByText('10 % is 24 mL: say it aloud perhaps reached')).toBeVisible()
  await expect(page.getByRole('timer')).toHaveText(/^0:0\d$/)
  await expect(page.getByText('kept here')).toBeVisible()
  await expect(page.getByText(/decision support for licensed/i)).toBeVisible()

  // What is drawn is read from two metres: a digit is 0.66 of its size, a point of a tablet 0.19 mm.
  const size = await page.evaluate<number>(sizeOf('0.4 mL'))
  expect(size * 0.66 * 0.19).toBeGreaterThan(9.3)

  await page.waitForTimeout(2_000)
  await page.reload()
  await expect(dose('Tranexamic acid')).toContainText('0.4 mL')
  const [minutes = 0, seconds = 0] = ((await page.getByRole('timer').textContent()) ?? '').split(':').map(Number)
  expect(minutes * 60 + seconds).toBeGreaterThanOrEqual(2)
  await expectAccessible(page)
  // Nothing stays put over the doses when the page is moved, and nothing asks.
  expect(await page.evaluate<number>(covering)).toBe(0)
  await expect(page.getByRole('dialog')).toHaveCount(0)
  for (const [width, height] of [
    [1280, 800],
    [820, 1180],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height })
    await expectNoSidewaysScroll(page)
  }

  await page.getByRole('link', { name: 'All emergencies' }).click()
  await expect(page.getByRole('button', { name: 'No pulse', exact: true })).toBeVisible()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  // What lasts is opened, not begun again.
  await page.getByRole('button', { name: /^Bleeding: \d/ }).click()
  await page.getByRole('link', { name: 'Back to the theatre record' }).click()
  await page.getByRole('link', { name: /^Bleeding: \d/ }).click()
  await page.getByRole('button', { name: 'Over now', exact: true }).click()
  await page.getByLabel(/In a sentence/).fill('Retroglenoid vein; wax held it.')
  await page.getByRole('button', { name: 'Keep: over now' }).click()
  await expect(page.getByText(/^Over at .* It lasted 0:\d\d/)).toBeVisible()
  await expect(page.getByText('Retroglenoid vein; wax held it.')).toBeVisible()

  await program.start()
  const stamps = async () =>
    (await entriesOf(program, page, 'case:sorrel'))
      .filter(({ header, body }) => header.kind === 'theatre-stamp' && String(body.checkpoint).startsWith('emergency'))
      .map(({ body }) => [body.checkpoint, body.text])
  await expect.poll(stamps, { timeout: 30_000 }).toEqual([
    ['emergency-on-bleeding-1', null],
    ['emergency-off-bleeding-1', 'Retroglenoid vein; wax held it.'],
  ])
})

/** How many elements of the page stay put while it is moved. */
const covering = `[...document.querySelectorAll('main *')].filter((one) =>
  ['fixed', 'sticky'].includes(getComputedStyle(one).position)).length`

/** The size of the letters of a paragraph. */
const sizeOf = (words: string) => `Number.parseFloat(getComputedStyle(
  [...document.querySelectorAll('main p')].find((one) => one.textContent === '${words}')).fontSize)`
