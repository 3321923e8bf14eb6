import type { Page } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const round = '/case/hazel/ward'

/** The chain of scores and what was done about them. */
const chain = (page: Page) => page.locator('#chain')

async function score(page: Page, points: string): Promise<void> {
  const pain = page.locator('#pain')
  await pain.getByRole('radio', { name: 'Glasgow short form, dog, walked: of 24' }).check()
  await pain.getByRole('radio', { name: points, exact: true }).check()
  await pain.getByRole('button', { name: 'Keep the score' }).click()
}

test('score, action, score again: each link is owed until it is written, and the chain says all of it', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/`)
  await page.getByRole('link', { name: 'Open the list of the ward' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ward')
  // Which band a line stands in depends on the hour at which this runs; the line itself does not.
  await expect(page.getByRole('heading', { name: /^(Late|Due now|In the next 24 hours)/ }).first()).toBeVisible()
  await expectAccessible(page)
  await page.getByRole('link', { name: 'Score pain: Score pain, Hazel' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('In the ward')
  await expect(page.locator('#pain')).toBeFocused()

  // Nothing is scored before somebody tapped, and the limit of the scale stands there with its source.
  const pain = page.locator('#pain')
  await expect(pain).toContainText('More relief from 6 of 24 on.')
  await pain.getByRole('button', { name: 'Keep the score' }).click()
  await expect(pain).toContainText('Tap a score.')
  const box = await pain.getByText('8', { exact: true }).boundingBox()
  expect(box?.height).toBeGreaterThanOrEqual(24)
  await expectAccessible(page)
  await score(page, '8')
  await expect(chain(page).getByRole('listitem').last()).toContainText('8 of 24')
  await expect(chain(page).getByRole('listitem').last()).toContainText('Asks for more from 6 on')
  await expect(chain(page)).toContainText('What was done?')
  await page.goto(`${program.url}/ward`)
  await expect(page.getByRole('link', { name: /^Say what was done: Pain 8 of 24/ })).toBeVisible()

  // The drug is written where drugs are written; a person says that it was the action.
  await page.goto(`${program.url}${round}`)
  await chain(page).getByRole('link', { name: 'Write a drug given' }).click()
  const form = await EntryForm.here(page)
  await form.page.getByLabel('Drug', { exact: true }).selectOption('methadone')
  await form.pick('Purpose', 'pain, bolus')
  await form.type('Amount given', '2.5 mg')
  await form.pick('Route', 'muscle')
  await form.keep()
  await page.goto(`${program.url}${round}`)
  await expect(chain(page)).toContainText('nobody said that it was the action')
  await chain(page)
    .getByRole('button', { name: /^This was the action: methadone/ })
    .click()
  await expect(chain(page)).toContainText(/→\s*\d\d:\d\d: methadone 2.5 mg given|methadone 2.5 mg given/)
  await expect(chain(page)).toContainText('Score again by')
  await expect(chain(page)).not.toContainText('nobody said that it was the action')

  // Without the server: the list of this device knows at once that it was scored again.
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await program.kill()
  await score(page, '3')
  await expect(chain(page).getByRole('listitem').last()).toContainText('3 of 24')
  await expect(chain(page).getByRole('listitem').last()).toContainText('kept here')
  await expect(chain(page)).not.toContainText('Score again by')
  await page.getByRole('link', { name: 'All animals in the ward' }).click()
  await expect(page.getByRole('link', { name: 'Score again: Score pain again, Hazel' })).toHaveCount(0)
  await page
    .getByRole('main')
    .getByRole('button', { name: /^Passed urine: .*Hazel$/ })
    .click()
  await expect(page.getByRole('alert')).toContainText('Kept: passed urine, Hazel')
  for (const width of [1280, 820, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }
  await program.start()
  await expect(page.getByText(/wait on this device/)).toHaveCount(0, { timeout: 30_000 })
  const rounds = (await entriesOf(program, page, 'case:hazel')).filter(({ header }) => header.kind === 'ward-score')
  const [high, named] = rounds.filter(({ body }) => (body.pain as { score: number } | null)?.score === 8).slice(-2)
  expect(named?.header.supersedes).toEqual([high?.header.id])
  // The moment of the score stays; it is told by this device's clock again, which the server measured anew.
  const atOf = (line: typeof high) => Date.parse((line?.header.happenedAt as { at: string } | undefined)?.at ?? '')
  expect(Math.abs(atOf(named) - atOf(high))).toBeLessThan(1_000)
  expect(named?.body.given).toHaveLength(1)
  expect(rounds.at(-1)?.body.urine).toBe('passed')
})

test('a missing blink within the block is not graded and the eye is kept wet; the owner hears of it', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const form = await EntryForm.open(page, program.url, 'hazel/write/drug-given?operation=operation-hazel')
  await form.page.getByLabel('Drug', { exact: true }).selectOption('bupivacaine')
  await form.pick('Purpose', 'local block')
  await form.type('Amount given', '4 mg')
  await form.pick('Route', 'nerve')
  await form.keep()
  await page.goto(`${program.url}${round}`)
  const eyes = page.locator('#eyes')
  await eyes.getByRole('button', { name: 'LEFT blink now: absent' }).click()
  await expect(eyes).toContainText('No blink, seen')
  await expect(eyes).toContainText(/Possible block effect of bupivacaine until .*: not graded\. Keep it wet anyway\./)
  await expect(eyes).not.toContainText('At risk')
  const wet = eyes.getByText(/^Wet again/)
  await expect(wet).toBeVisible()
  await eyes.getByRole('button', { name: 'LEFT eye: kept wet now' }).click()
  await expect(wet).toContainText('Wet again by')
  // A scale of behaviour says nothing of the face; one that looks at faces would say that it misleads.
  await expect(page.locator('#pain')).toContainText('The touch beside the wound: the bandage.')

  await page.locator('#look').getByRole('radio', { name: 'tight' }).check()
  await expect(page.getByRole('alert')).toContainText('Cut the bandage first.')
  await page.locator('#look').getByRole('radio', { name: 'loosened or cut' }).check()
  await page.locator('#look').getByRole('radio', { name: 'quiet', exact: true }).check()
  await page.locator('#look').getByRole('button', { name: 'Keep this look' }).click()
  await expect(page.locator('#look').getByRole('radio', { checked: true })).toHaveCount(0)

  await page.locator('#temperature').getByLabel('Temperature in °C').fill('38,x')
  await page.getByRole('button', { name: 'Keep the temperature' }).click()
  await expect(page.locator('#temperature')).toContainText('This cannot be read as a temperature in °C.')
  await page.locator('#temperature').getByLabel('Temperature in °C').fill('38.3')
  await page.getByRole('button', { name: 'Keep the temperature' }).click()
  await expect(page.locator('#temperature')).toContainText('Last: 38.3 °C')

  const owner = page.locator('#owner')
  await expect(owner.getByLabel('What to tell')).toHaveValue(
    /The left eye does not blink yet; that may be the local anaesthetic/,
  )
  await owner.getByRole('radio', { name: 'nobody reached' }).check()
  await owner.getByRole('button', { name: 'Keep the call' }).click()
  await expect(owner).toContainText('nobody reached.')
  await page.goto(`${program.url}/ward`)
  const phone = page.getByRole('link', { name: 'Phone: Phone the owner, Hazel' })
  await phone.click()
  await owner.getByRole('radio', { name: 'reached', exact: true }).check()
  await owner.getByRole('button', { name: 'Keep the call' }).click()
  await expect(owner).toContainText(/Reached last \d\d:\d\d\./)
  await expectAccessible(page)
  await page.getByRole('link', { name: 'All animals in the ward' }).click()
  const late = page.getByRole('region', { name: /^Late/ })
  await expect(late.getByRole('link', { name: 'Phone: Phone the owner, Hazel' })).toHaveCount(0)
  const calls = (await entriesOf(program, page, 'case:hazel')).filter(({ header }) => header.kind === 'call')
  expect(calls.slice(-2).map(({ body }) => [body.about, body.reached, body.text === null])).toEqual([
    ['ward', 'no', true],
    ['ward', 'yes', false],
  ])
})
