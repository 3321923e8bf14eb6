import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { askedAgain, entriesOf, expect, openInvented, test } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'
import { copyUntil } from './states/case-until.ts'

const room = '/case/linden/room/operation-linden'
const end = `${room}/pause/before-leaving?at=end`

test('an operation with an unlabelled pot and an unequal count is not signed out until each point is settled', async ({
  page,
  program,
}) => {
  page.setDefaultTimeout(8_000)
  await openInvented(program, page)
  // A dog whose operation is booked, and of which every entry names the same side.
  await copyUntil(program, page, 'Linden', 'booking')
  const { url } = program
  const points = page.getByRole('region', { name: 'Sign out', exact: true }).getByRole('listitem')
  const signOut = page.getByRole('button', { name: 'Sign out now' })
  const count = async (when: string, found: string, pack: string) => {
    const form = await EntryForm.open(page, url, 'linden/write/count?operation=operation-linden')
    await form.choose('When', when)
    const line = form.within('Line 1')
    await line.typeAll({ What: 'swabs', 'Should be': '20', Found: found })
    await form.choose('Throat pack', pack)
    await form.keep()
  }

  await count('before', '20', 'in')
  await page.goto(url + room)
  await page.getByRole('button', { name: 'Done now: Incision' }).click()
  await page.getByRole('button', { name: 'It was spoken aloud and not written here.' }).click()
  await expect(page.getByRole('button', { name: 'Take back: Incision' })).toBeVisible()
  await expect(
    page.getByText('Still to be taken: bulla, on entry; bulla, after lavage; tissue of the canal.'),
  ).toBeVisible()
  await page.getByRole('link', { name: 'Specimens' }).first().click()

  // One tap is one pot, with a label that the program proposes.
  await expect(page.getByText('Next label: L-1')).toBeVisible()
  const take = page.getByRole('button', { name: 'Taken now: bulla, on entry' })
  expect((await take.boundingBox())?.height).toBeGreaterThanOrEqual(56)
  await take.click()
  await expect(page.getByText('Next label: L-2')).toBeVisible()
  await page.getByRole('button', { name: 'Taken now: tissue of the canal' }).click()
  const pots = page.getByRole('region', { name: 'Pots of this operation' })
  await expect(pots.getByText('NO label yet')).toHaveCount(2)
  await expectAccessible(page, 'specimens')
  await page.getByRole('button', { name: 'The label is on the pot: L-1' }).click()
  await expect(pots.getByText(/^Label on the pot \d\d:\d\d, Runa Falk/)).toBeVisible()
  await expect(pots.getByText('sent')).toHaveCount(2, { timeout: 10_000 })
  const labels = await page
    .context()
    .request.get(`${url}/api/papers/case%3Alinden/specimen-labels-operation-linden.txt`, askedAgain)
  expect(await labels.text()).toMatch(/Linden .*\n?.*L-1 (LEFT|RIGHT) ear/)

  await count('final', '19', 'in')
  await page.goto(url + end)
  await expect(points).toHaveText([
    /Nobody said that the label is on pot L-2/,
    /swabs: 19 found, 20 expected/,
    /The throat pack is in/,
    /The side that was done was not confirmed aloud/,
  ])
  await expect(signOut).toHaveCount(0)
  await expectAccessible(page, 'sign-out')

  // Each point has the way to what settles it.
  await page.getByRole('link', { name: /^Go to the specimens/ }).click()
  await page.getByRole('button', { name: 'The label is on the pot: L-2' }).click()
  await expect(pots.getByText(/^Label on the pot/)).toHaveCount(2)
  await page.goto(url + end)
  await page.getByRole('link', { name: /^Say it aloud now/ }).click()
  const people = (legend: string) => page.getByRole('group', { name: legend })
  await people('Who leads this pause?')
    .getByRole('radio', { name: /Runa Falk/ })
    .check()
  await people('Who answers aloud?')
    .getByRole('radio', { name: /Runa Falk/ })
    .check()
  await page.getByRole('button', { name: 'YES', exact: true }).click()
  await expect(page.getByRole('region').getByRole('status')).toContainText('YES, Runa Falk')
  await page.goto(url + end)
  await page.getByRole('link', { name: /^Correct the count: The throat pack is in/ }).click()
  const form = await EntryForm.here(page)
  await form.choose('Throat pack', 'out')
  await form.type('Reason', 'It was out; the wrong answer was tapped.')
  await form.keep()
  await page.goto(url + end)
  await expect(points).toHaveText([/swabs: 19 found, 20 expected/])

  // What cannot be settled is explained; a note without a reason explains nothing.
  await page.getByRole('link', { name: /^or write why in an incident note: swabs/ }).click()
  await expect(page.getByRole('radio', { name: 'count or throat pack' })).toBeChecked()
  await page.getByRole('button', { name: 'Keep the note' }).click()
  await expect(page.getByText(/^Say why: only then/)).toBeVisible()
  await page
    .getByLabel('Why it is so, and what was done about it')
    .fill('One lies under the drape; the picture shows none in him.')
  await page.getByRole('button', { name: 'Keep the note' }).click()
  await expect(page).toHaveURL(/before-leaving\?at=end$/)
  await expect(page.getByText('One lies under the drape')).toBeVisible()
  await signOut.click()
  await expect(page.getByText(/^Signed out \d\d:\d\d, Runa Falk/)).toBeVisible()
  await page.reload()
  await expect(page.getByText(/^Signed out \d\d:\d\d, Runa Falk/)).toContainText('sent', { timeout: 10_000 })
  await expectAccessible(page, 'signed out')
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  await page.goto(url + room)
  await expect(page.getByText(/^Signed out\./)).toBeVisible()
  const report = async () =>
    (
      await page
        .context()
        .request.get(`${url}/api/papers/case%3Alinden/operation-report-operation-linden.txt`, askedAgain)
    ).text()
  expect(await report()).toMatch(/Signed out \d+ \w+ \d{4}, \d\d:\d\d, Runa Falk\./)
  expect(await report()).toContain('Because: One lies under the drape')

  await page.goto(url + end)
  await page.getByRole('button', { name: 'Take the sign-out back' }).click()
  await expect(signOut).toBeVisible()
  await expect.poll(report).toContain('Nothing stands against it; nobody signed it out.')
})

test('an incident note after an emergency takes five taps and one line, and is kept', async ({ page, program }) => {
  page.setDefaultTimeout(8_000)
  await openInvented(program, page)
  await page.setViewportSize({ width: 820, height: 1180 })
  await page.goto(`${program.url}/case/juniper/room/operation-juniper/now/bleeding`)
  await page.getByRole('button', { name: 'Start the clock now' }).click()
  await expect(page.getByRole('timer')).toBeVisible()

  let taps = 0
  let characters = 0
  const began = Date.now()
  const tap = async (target: ReturnType<typeof page.getByRole>) => {
    await target.click()
    taps += 1
  }
  await tap(page.getByRole('link', { name: 'Write an incident note about it' }))
  // What the entries say of the emergency stands there already.
  await expect(page.getByRole('heading', { name: /^Bleeding: since \d\d:\d\d, not called over/ })).toBeVisible()
  await expect(page.getByRole('radio', { name: /^Bleeding, \d\d:\d\d/ })).toBeChecked()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  await tap(page.getByText('equipment', { exact: true }).first())
  const line = 'Bone wax lay in the cupboard.'
  await page.getByLabel('In one line').fill(line)
  taps += 1
  characters += line.length
  await tap(page.getByText('no', { exact: true }).last())
  await tap(page.getByRole('button', { name: 'Keep the note' }))
  await expect(page.getByText(/^Kept \d\d:\d\d/)).toBeVisible()
  expect(Date.now() - began).toBeLessThan(60_000)
  expect(taps).toBeLessThanOrEqual(5)
  // Gloved and unhurried: three seconds for a tap, half a second for a letter.
  expect(taps * 3 + characters * 0.5).toBeLessThan(60)

  const notes = async () =>
    (await entriesOf(program, page, 'case:juniper')).flatMap(({ header, body }) =>
      header.kind === 'incident-note' ? [body] : [],
    )
  await expect.poll(notes, { timeout: 10_000 }).toHaveLength(1)
  const [note] = await notes()
  const called = (await entriesOf(program, page, 'case:juniper')).find(
    ({ body }) => body.checkpoint === 'emergency-on-bleeding-1',
  )
  expect(note).toMatchObject({ what: 'equipment', text: line, emergency: called?.header.id, reached: 'no' })

  // The owner is told the same day, with a text drafted from the entries.
  await page.goto(`${program.url}/case/juniper`)
  await page.getByRole('link', { name: /^Write it: Tell the owner what happened in theatre/ }).click()
  await expect(page.getByLabel('What is said')).toHaveValue(/a vessel bled more than usual/)
  await page.getByRole('button', { name: 'Told now' }).click()
  await expect(page.getByText(/^Told .*, by Runa Falk/)).toBeVisible()
  await page.goto(`${program.url}/case/juniper`)
  await expect(page.getByText('Tell the owner what happened in theatre')).toHaveCount(0)
})
