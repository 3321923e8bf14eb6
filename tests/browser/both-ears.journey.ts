import { expectAccessible } from './accessible.ts'
import { enrol, entriesOf, expect, nurse, openInvented, test } from './clinic.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'
import { EntryForm, writeWeight } from './pages/entry-form.ts'

const block = { name: 'block LEFT', drug: 'lidocaine', use: /^local block/, route: 'beside the nerve' } as const
const splash = { name: 'splash RIGHT', drug: 'bupivacaine', use: /^local block/, route: 'splashed on' } as const

test('block LEFT and splash RIGHT share one limit; a weight corrected after the second check voids it, and all is planned again', async ({
  page,
  browser,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', second)
  await writeWeight(page, program.url, 'teasel', '8.2 kg')
  const left = await DosePlanPage.book(program, page, 'teasel', 'LEFT', '10 February 2031, 09:00')
  const right = await DosePlanPage.book(program, page, 'teasel', 'RIGHT', '10 February 2031, 10:30')

  await left.type({ ...block, dose: '3 mg/kg', strength: '20 mg/mL' })
  await left.keep()
  // 3 of the 5 mg/kg of lidocaine in a dog: 3 × 8.2 kg ÷ 20 mg/mL = 1.23 mL.
  await expect(left.line('lidocaine')).toContainText('Draw up 1.2 mL')
  await expect(left.line('lidocaine')).toContainText('After this line: 0.6 of 1 of the limit')

  // The other ear, another drug, the same limit: 0.6 + 1 of 2 mg/kg is 1.1.
  await right.type({ ...splash, dose: '1 mg/kg', strength: '5 mg/mL' })
  await expect(page.getByText(/would bring local anaesthetic to 1\.1 of the animal’s limit of 1/)).toBeVisible()
  await expect(page.getByText(/Left for this drug: 6\.56 mg \(full limit 16\.4 mg\)/)).toBeVisible()
  await page.getByRole('button', { name: 'Keep this line' }).click()
  await expect(page.getByText('This line cannot be planned.')).toBeVisible()
  await page.getByLabel('Dose', { exact: true }).fill('0.8 mg/kg')
  await right.keep()
  const whole = 'Local anaesthetic, both ears and all routes together: 1 of 1.'
  await expect(right.line('bupivacaine')).toContainText('After this line: 1 of 1 of the limit')
  await expect(page.getByText(whole)).toBeVisible()
  await left.open()
  await expect(page.getByText(whole)).toBeVisible()
  await expect(left.line('lidocaine')).toContainText('After this line: 0.6 of 1 of the limit')

  for (const plan of [left, right]) {
    const there = plan.at(second)
    await there.open()
    await there.sign('I agree', null)
    await expect(second.getByText('Every line that waits has a second name.')).toBeVisible()
  }
  await expect(left.line('lidocaine')).toContainText(`Checked by ${nurse.name}`)

  const weights = (await entriesOf(program, page, 'case:teasel')).filter(({ header }) => header.kind === 'weight')
  const correction = await EntryForm.open(page, program.url, `teasel/write/weight?amend=${weights.at(-1)?.header.id}`)
  await correction.type('Weight with its unit', '2.8 kg')
  await correction.type('Reason', 'Read from the wrong line of the scale.')
  await correction.keep()
  for (const [plan, drug, was, is] of [
    [left, 'lidocaine', '1.2 mL', '0.42 mL'],
    [right, 'bupivacaine', '1.3 mL', '0.44 mL'],
  ] as const) {
    await plan.open()
    await expect(plan.line(drug)).toContainText('The weight was 8.2 kg and is 2.8 kg now.')
    await expect(plan.line(drug)).toContainText(`It was written as ${was}; worked out now it is ${is}.`)
    await expect(page.getByText(/^Nothing can be signed as it stands/)).toBeVisible()
    await expect(page.getByText('Every line that waits has a second name.')).toHaveCount(0)
    await page.getByRole('button', { name: 'Plan these lines again for 2.8 kg' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('button', { name: 'Plan them again', exact: true }).click()
    await expect(dialog.locator('input:invalid')).toHaveCount(1)
    await dialog.getByLabel('Why they are planned again').fill('The weight was read wrongly.')
    await dialog.getByRole('button', { name: 'Plan them again', exact: true }).click()
    await expect(plan.line(drug)).toContainText(`Draw up ${is}`)
    await expect(plan.line(drug)).not.toContainText('It was written as')
    await expect(plan.line(drug)).toContainText(`The check of ${nurse.name}`)
  }
  await expectAccessible(page)

  // 2 mg/kg × 2.8 kg is all there is of bupivacaine now, and none of it is left.
  await right.type({ ...splash, name: 'one more splash', dose: '1 mg/kg', strength: '5 mg/mL' })
  await expect(page.getByText(/Left for this drug: 0 mg \(full limit 5\.6 mg\)/)).toBeVisible()
  await page.getByRole('button', { name: 'Keep this line' }).click()
  await expect(page.getByText('This line cannot be planned.')).toBeVisible()
  await second.context().close()
})
