import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test } from './clinic.ts'
import { writeWeight } from './pages/entry-form.ts'

const plan = '/case/juniper/doses/operation-juniper'

test('an infusion is planned with its syringe and loading dose, made up step by step, and follows the weight', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await writeWeight(page, program.url, 'juniper', '20 kg')
  await page.goto(`${program.url}${plan}`)
  await page.getByRole('link', { name: 'Add a line' }).click()
  await page.getByLabel('Name of the line').fill('ketamine infusion')
  await page.getByLabel('Drug', { exact: true }).selectOption('ketamine')
  await page.getByRole('radio', { name: /^infusion/ }).check()
  await page.getByRole('radio', { name: 'into the vein (IV)', exact: true }).check()
  await page.getByLabel('Dose', { exact: true }).fill('0.6 mg/kg/h')
  await page.getByLabel('Why this dose').fill('Low, for the bulla.')
  await page.getByLabel('Strength on the label').fill('100 mg/mL')
  await page.getByLabel('What it runs from').selectOption('a syringe')
  await page.getByLabel('Its volume').fill('50')
  await page.getByRole('button', { name: 'Keep this line' }).click()
  // The rate is missing: its field says so, and nothing is worked out meanwhile.
  await expect(page.getByText('Nothing is worked out before')).toBeVisible()
  await page.getByLabel('Rate of the pump').fill('5 mL/h')
  await page.getByLabel('Fluid in it').selectOption('sodium chloride 0.9 %')
  await page.getByLabel('Loading dose before it').fill('0.5 mg/kg')
  const worked = page
    .getByRole('region')
    .or(page.locator('section'))
    .filter({ hasText: 'Worked out with the whole plan' })
  // 0.6 mg/kg/h × 20 kg = 12 mg/h; 50 mL at 5 mL/h last 10 h: 120 mg = 1.2 mL of 100 mg/mL.
  await expect(worked).toContainText('Draw up 1.2 mL into the syringe, pump 5 mL/h')
  await expect(worked).toContainText('Label: ketamine 120 mg in 50 mL, 5 mL/h, for 10 h.')
  // 0.5 mg/kg × 20 kg = 10 mg = 0.1 mL.
  await expect(worked).toContainText('First, at once: 0.1 mL (10 mg).')
  await expectAccessible(page)
  await page.setViewportSize({ width: 320, height: 700 })
  await expectNoSidewaysScroll(page)
  await page.setViewportSize({ width: 1280, height: 900 })
  await page.getByLabel('Why it is right all the same').fill('Our handout gives half a milligram.')
  await page.getByRole('button', { name: 'Keep this line' }).click()

  const line = page.getByRole('listitem').filter({ hasText: 'ketamine' }).filter({ hasText: 'Why this dose' })
  await expect(line).toContainText('Draw up 1.2 mL into the syringe, pump 5 mL/h of 100 mg/mL')
  await expect(line).toContainText('Draw 48.8 mL of fluid beside it: 50 mL in all.')
  await expect(line).toContainText('Although: Our handout gives half a milligram.')
  await expectAccessible(page)
  const kept = async () =>
    (await entriesOf(program, page, 'case:juniper'))
      .filter(({ header, body }) => header.kind === 'planned-line' && body.line === 'ketamine infusion')
      .map(({ body }) => body)
  await expect.poll(kept).toMatchObject([
    {
      drawn: { value: '1.2', unit: 'mL' },
      how: { container: { kind: 'syringe', name: 'ketamine infusion', volume: { value: '50', unit: 'mL' } } },
      worked: { rate: { value: '5', unit: 'mL/h' }, label: { value: '120', unit: 'mg' } },
    },
  ])

  // The loading dose is given: the infusion still waits.
  await line.getByRole('button', { name: 'Write as given' }).click()
  await page.getByRole('radio', { name: /^the loading dose alone: 0.1 mL/ }).check()
  await page.getByRole('button', { name: 'Keep it as given now' }).click()
  await expect(line).toContainText('Draw up 1.2 mL into the syringe')

  await writeWeight(page, program.url, 'juniper', '25 kg')
  await page.goto(`${program.url}${plan}`)
  // 0.6 mg/kg/h × 25 kg = 15 mg/h: 150 mg in the same syringe, 1.5 mL.
  await expect(line).toContainText(
    'It was written as 1.2 mL into the syringe, pump 5 mL/h; worked out now it is 1.5 mL',
  )
  await page.getByRole('button', { name: 'Plan these lines again for 25 kg' }).click()
  await page.getByLabel('Why they are planned again').fill('Weighed again.')
  await page.getByRole('button', { name: 'Plan them again', exact: true }).click()
  await expect(line).toContainText('Label: ketamine 150 mg in 50 mL, 5 mL/h, for 10 h.')

  await line.getByRole('link', { name: /^Change/ }).click()
  await expect(page.getByLabel('Rate of the pump')).toHaveValue('5 mL/h')
  await page.getByLabel('Rate of the pump').fill('10 mL/h')
  await page.getByLabel('Why it is changed').fill('A faster pump.')
  await page.getByLabel('Why it is right all the same').fill('As before.')
  await page.getByRole('button', { name: 'Keep this line' }).click()
  await expect(line).toContainText('Label: ketamine 75 mg in 50 mL, 10 mL/h, for 5 h.')
})

test('tablets for home are planned with the course, and counted', async ({ page, program }) => {
  await openInvented(program, page)
  await writeWeight(page, program.url, 'juniper', '20 kg')
  await page.goto(`${program.url}${plan}`)
  await page.getByRole('link', { name: 'Add a line' }).click()
  await page.getByLabel('Name of the line').fill('tablets home')
  await page.getByLabel('Drug', { exact: true }).selectOption('amoxicillin-clavulanate')
  await page.getByRole('radio', { name: /^antibiotic course/ }).check()
  await page.getByRole('radio', { name: 'by mouth (PO)', exact: true }).check()
  await page.getByLabel('Dose', { exact: true }).fill('12.5 mg/kg')
  await page.getByLabel('Why this dose').fill('The label dose.')
  await page.getByLabel('From our shelf').selectOption('amoxiclav-250')
  await page.getByLabel('For how many days').fill('7')
  await page.getByRole('button', { name: 'Keep this line' }).click()
  const line = page.getByRole('listitem').filter({ hasText: 'tablets home' }).filter({ hasText: 'Why this dose' })
  // 12.5 mg/kg × 20 kg = 250 mg: one tablet, twice a day for 7 days.
  await expect(line).toContainText('1 tablet')
  await expect(line).toContainText('of 250 mg each')
  await expect(line).toContainText('For 7 days: 14 doses, 14 tablets in all.')
})
