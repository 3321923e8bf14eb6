import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test } from './clinic.ts'

test('a pause is spoken item by item beside the table, without the network, and nothing is lost by a reload', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/juniper/room/operation-juniper`)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  const links = page.getByRole('navigation', { name: 'Spoken pauses' })
  await expect(links.getByRole('link')).toHaveCount(3)

  // From the top of the page: what lies half under the line that stays there is not measured.
  const accessible = async (where: string) => {
    await page.evaluate('scrollTo(0, 0)')
    await expectAccessible(page, where)
  }

  // Before anaesthesia the first screen shows what is on record.
  await links.getByRole('link', { name: /^Pause before anaesthesia\s*0 of 9 answered/ }).click()
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('What is on record before anaesthesia')
  for (const fact of ['LEFT or RIGHT', 'Consent', 'Planned doses', 'ASA class and airway']) {
    await expect(page.getByText(fact, { exact: true }).first()).toBeVisible()
  }
  await accessible('start')
  // The caller named the other ear: a named person settles it before anybody says yes to the side.
  await page.getByRole('button', { name: 'Settle the side' }).click()
  await page.getByRole('group', { name: 'Which ear is it?' }).getByRole('radio', { name: 'RIGHT' }).check()
  await page.getByLabel('How you know').fill('Animal, images and letter in hand; the caller mixed them up.')
  await accessible('settling')
  await page.getByRole('button', { name: 'Keep: it is RIGHT' }).click()
  await expect(page.getByText('The side is not settled')).toHaveCount(0)
  await expect(page.getByText('the side settled by a named person, by Runa Falk')).toBeVisible()
  await page.getByRole('link', { name: 'To the theatre record' }).click()
  await links.getByRole('link', { name: /^Pause before the incision/ }).click()

  const item = page.getByRole('heading', { level: 2 })
  const button = (name: string) => page.getByRole('button', { name, exact: true })
  const answered = page.getByRole('region').getByRole('status')
  const next = () => page.getByRole('link', { name: 'Next item' }).click()
  await expect(page.getByText('Item 1 of 9')).toBeVisible()
  await expect(item).toHaveText('Everyone said name and role; anyone may stop')
  for (const answer of ['YES', 'NO', 'NOT KNOWN']) {
    expect((await button(answer).boundingBox())?.height).toBeGreaterThanOrEqual(56)
  }
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0)
  await button('YES').click()
  await expect(page.getByText('Choose who answers aloud.')).toBeVisible()
  await accessible('nobody chosen')
  const people = (legend: string) => page.getByRole('group', { name: legend })
  await people('Who leads this pause?')
    .getByRole('radio', { name: /Runa Falk/ })
    .check()
  await people('Who answers aloud?')
    .getByRole('radio', { name: /Runa Falk/ })
    .check()

  await program.kill()
  await button('YES').click()
  await expect(answered).toContainText('YES, Runa Falk')
  await expect(answered).toContainText('kept here')
  // An answer does not turn the page.
  await expect(item).toHaveText('Everyone said name and role; anyone may stop')
  await accessible('answered')
  await next()
  await expect(item).toHaveText('The side was spoken in full and pointed at')
  await button('NO').click()
  await button('Keep NO').click()
  await expect(page.getByText('Say why: it is read by whoever settles it.')).toBeVisible()
  await page.getByLabel('NO: why, and what is done about it').fill('The mark is under the drape.')
  await page.reload()
  await expect(item).toHaveText('The side was spoken in full and pointed at')
  await expect(page.getByText('Answers aloud: Runa Falk. Leads: Runa Falk.')).toBeVisible()
  await button('NO').click()
  await expect(page.getByLabel('NO: why, and what is done about it')).toHaveValue('The mark is under the drape.')
  await accessible('why')
  await button('Keep NO').click()
  await expect(answered).toContainText('NO, Runa Falk')
  await next()
  await button('NOT KNOWN').click()
  await page.getByLabel('NOT KNOWN: why, and what is done about it').fill('The images are not up.')
  await button('Keep NOT KNOWN').click()
  await expect(answered).toContainText('NOT KNOWN, Runa Falk')
  for (let left = 6; left > 0; left -= 1) {
    await next()
    await expect(page.getByText(`Item ${10 - left} of 9`)).toBeVisible()
    if (left === 1) break
    await button('YES').click()
    await expect(answered).toContainText('YES, Runa Falk')
  }

  // One item is open, two are not settled: the summary says so and where it is settled.
  await page.getByRole('link', { name: 'To the summary' }).click()
  await expect(page.getByText('Not settled: the incision waits')).toBeInViewport()
  await expect(page.getByText('1 item is still open')).toBeVisible()
  await accessible('summary')
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page, `summary ${width}`)
  }
  await page.getByRole('link', { name: 'The side was spoken in full and pointed at' }).first().click()
  await button('Change this answer').click()
  await page.getByRole('radio', { name: 'YES' }).check()
  await button('Keep the change').click()
  await expect(page.getByText('Choose one.')).toHaveCount(1)
  await page.getByRole('radio', { name: 'it was answered anew, now' }).check()
  await page.getByLabel('Reason', { exact: true }).fill('The drape was lifted and the mark was seen.')
  await page.setViewportSize({ width: 820, height: 1180 })
  await accessible('change')
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page, `change ${width}`)
  }
  await button('Keep the change').click()
  await expect(answered).toContainText('YES, Runa Falk')
  await page.getByRole('link', { name: 'To the summary' }).click()
  await page
    .getByRole('link', { name: /said their concerns/ })
    .first()
    .click()
  await button('YES').click()
  await expect(answered).toContainText('YES, Runa Falk')
  await page.getByRole('link', { name: 'To the summary' }).click()
  await expect(page.getByText('is still open')).toHaveCount(0)
  await expect(page.getByText('Not settled: the incision waits')).toBeVisible()
  await expect(page.getByText(/^(\d+ min )?\d+ s$/)).toBeVisible()

  await program.start()
  await expect(page.getByText('kept here')).toHaveCount(0, { timeout: 30_000 })
  await page.getByRole('link', { name: 'To the theatre record' }).click()
  const link = links.getByRole('link', { name: /^Pause before the incision/ })
  await expect(link).toContainText('9 of 9 answered')
  await expect(link).toContainText('s from first to last answer')
  await expect(link).toContainText('NOT SETTLED')
  await expect(links.getByRole('link', { name: /^Pause before anaesthesia/ })).toContainText('0 of 9 answered')
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page, `room ${width}`)
  }

  const written = (await entriesOf(program, page, 'case:juniper')).filter(({ header }) => header.kind === 'pause-item')
  const me = written[0]?.header.author as { person: string } | undefined
  expect(written).toHaveLength(10)
  expect(written.every(({ body }) => body.ledBy === me?.person && body.spokenBy === me?.person)).toBe(true)
  const side = written.filter(({ body }) => body.item === 'side-spoken-and-pointed')
  expect(side.map(({ body }) => [body.answer, body.because])).toEqual([
    ['no', 'The mark is under the drape.'],
    ['yes', null],
  ])
  expect(side[1]?.header.supersedes).toEqual([side[0]?.header.id])
  expect(side[1]?.header.reason).toBe('The drape was lifted and the mark was seen.')
})
