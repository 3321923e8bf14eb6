import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { enrol, entriesOf, expect, nurse, openInvented, test } from './clinic.ts'
import { writeWeight } from './pages/entry-form.ts'

const plan = '/case/juniper/doses/operation-juniper'

test('a plan is checked by a second person; another weight voids the name, says why, and is planned again', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', second)
  await writeWeight(page, program.url, 'juniper', '26.4 kg')
  await page.goto(`${program.url}${plan}`)
  await expect(page.getByRole('heading', { level: 1, name: 'Dose plan' })).toBeVisible()
  const methadone = page.getByRole('listitem').filter({ hasText: 'methadone' }).filter({ hasText: 'Why this dose' })
  // 0.3 mg/kg × 26.4 kg ÷ 10 mg/mL = 0.792 mL, drawn in hundredths.
  await expect(methadone).toContainText('Draw up 0.79 mL')
  await expect(methadone).toContainText('No second check.')

  await second.goto(`${program.url}${plan}`)
  await second.getByRole('button', { name: `Sign: ${nurse.name}` }).click()
  await expect(second.getByText('No line is ticked.')).toBeVisible()
  await expectAccessible(second)
  const ticks = second.getByRole('group', { name: 'Tick the lines you worked out again.' }).getByRole('checkbox')
  const count = await ticks.count()
  expect(count).toBeGreaterThan(5)
  for (let at = 0; at < count; at += 1) await ticks.nth(at).check()
  await second.getByRole('radio', { name: 'I agree', exact: true }).check()
  await second.getByRole('button', { name: `Sign: ${nurse.name}` }).click()
  await expect(second.getByText('Every line that waits has a second name.')).toBeVisible()
  // The planner's own screen hears of it.
  await expect(methadone).toContainText(`Checked by ${nurse.name}`)

  await writeWeight(second, program.url, 'juniper', '20.1 kg')
  await expect(methadone).toContainText(`The check of ${nurse.name}`)
  await expect(methadone).toContainText('The weight was 26.4 kg and is 20.1 kg now.')
  // 0.3 mg/kg × 20.1 kg ÷ 10 mg/mL = 0.603 mL.
  await expect(methadone).toContainText('It was written as 0.79 mL; worked out now it is 0.6 mL.')
  await expectAccessible(page)

  // The page of the case says the same of the same line.
  const panel = second.getByRole('table').filter({ hasText: 'Draw up' })
  await second.goto(`${program.url}/case/juniper`)
  await expect(panel).toContainText('It was written as 0.79 mL; worked out now it is 0.6 mL.')
  await expect(panel.getByRole('row').filter({ hasText: 'methadone' })).toContainText('0.6 mL')
  await expectAccessible(second)
  await page.setViewportSize({ width: 320, height: 700 })
  await expectNoSidewaysScroll(page)
  await page.setViewportSize({ width: 1280, height: 900 })
  await page.getByRole('button', { name: 'Plan these lines again for 20.1 kg' }).click()
  await page.getByLabel('Why they are planned again').fill('Weighed again without the lead.')
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Plan them again', exact: true }).click()
  await expect(page.getByText('The plan is older than the animal')).toHaveCount(0)
  await expect(methadone).toContainText('Draw up 0.6 mL')
  await expect(methadone).toContainText('no longer counts')

  await methadone.getByRole('button', { name: 'Write as given' }).click()
  await page.getByRole('button', { name: 'Keep it as given now' }).click()
  await expect(page.getByText('Say how much was given.')).toBeVisible()
  await page.getByRole('radio', { name: 'all that was to be drawn: 0.6 mL' }).check()
  await page.getByLabel('Ampoule').fill('A-17')
  await page.getByRole('button', { name: 'Keep it as given now' }).click()
  await expect(methadone).toContainText('Given: 0.6 mL')
  await expect(panel.getByRole('row').filter({ hasText: 'methadone' })).toContainText('given: 0.6 mL')
  await expect(panel).not.toContainText('It was written as')
  await expect
    .poll(async () =>
      (await entriesOf(program, page, 'case:juniper'))
        .filter(({ header }) => header.kind === 'drug-given')
        .map(({ body }) => [body.drug, body.amount, body.line, body.ampoule]),
    )
    .toContainEqual(['methadone', { value: '0.6', unit: 'mL' }, 'opioid', 'A-17'])
  await second.context().close()
})

test('a line beyond the one limit of the animal is refused with its reason and cannot be kept', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await writeWeight(page, program.url, 'juniper', '26.4 kg')
  await page.goto(`${program.url}${plan}`)
  await page.getByRole('link', { name: 'Add a line' }).click()
  await page.getByLabel('Name of the line').fill('one more splash')
  await page.getByLabel('Drug', { exact: true }).selectOption('bupivacaine')
  await page.getByRole('radio', { name: /^local block: beside the nerve/ }).check()
  await page.getByRole('radio', { name: 'splashed on', exact: true }).check()
  await page.getByLabel('Dose', { exact: true }).fill('1 mg/kg')
  await page.getByLabel('Why this dose').fill('The other side as well.')
  await page.getByLabel('Strength on the label').fill('5 mg/mL')
  // Block and splash of the plan take 2 mg/kg, all that there is.
  await expect(page.getByText('Nothing to draw while it is refused.')).toBeVisible()
  // Where the page was scrolled to decides how near an answer is to the head that stays in sight.
  await page.evaluate('scrollTo(0, 0)')
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Keep this line' }).click()
  await expect(page.getByText('This line cannot be planned.')).toBeVisible()
  await expect(page).toHaveURL(/\/line$/)
  // Nothing typed is lost by a reload.
  await page.reload()
  await expect(page.getByLabel('Name of the line')).toHaveValue('one more splash')
})
