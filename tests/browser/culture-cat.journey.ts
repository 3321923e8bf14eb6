import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { entriesOf, expect, openInvented, test, writeNow } from './clinic.ts'

test('a result is typed for a cat and read as sentences; enrofloxacin stays at 5 mg/kg a day; the edition is kept', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await writeNow(program, page, 'clinic', [
    {
      kind: 'shelf-item',
      body: {
        item: 'enrofloxacin-15',
        drug: 'enrofloxacin',
        label: 'Enrofloxacin 15 mg tablets',
        form: 'tablet',
        strength: { value: '15', unit: 'mg/{tablet}' },
        divides: 'halves',
        expires: null,
        outSince: null,
        controlled: null,
      },
    },
  ])
  await page.goto(`${program.url}/case/sorrel/results`)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Specimens and results')
  await expectAccessible(page)
  await page.getByRole('link', { name: 'Type a result of S-1' }).click()
  await page.getByRole('button', { name: 'Keep the report' }).click()
  await expect(page.getByText('Choose one.')).toHaveCount(3)

  await page.getByRole('radio', { name: 'final' }).check()
  await page.getByRole('radio', { name: /from paper/ }).check()
  await page.getByRole('radio', { name: 'growth', exact: true }).check()
  await page.getByLabel('Organism, as printed').fill('E. coli')
  await expect(page.getByText('Read as Escherichia coli.')).toBeVisible()
  const at = (row: number) => `drug ${row} of organism 1`
  const drugs = [
    ['Enrofloxacin', '<=0.25'],
    ['Cephalexin', '16'],
    ['Clindamycin', '>4'],
    ['Doxycyclin hyclat xx', '2'],
  ] as const
  for (const [place, [drug, value]] of drugs.entries()) {
    await page.getByLabel(`Drug, ${at(place + 1)}`).fill(drug)
    await page.getByLabel(`Result, ${at(place + 1)}`).fill(value)
    if (place > 0) await page.getByLabel(`Unit, ${at(place + 1)}`).selectOption('mg/L')
  }
  // A name nobody knows is asked about; a person says which it is. A bare number is asked for its unit.
  await expect(page.getByText('Nobody here knows this name.')).toBeVisible()
  await page.getByRole('button', { name: 'doxycycline', exact: true }).click()
  await expect(page.getByText('Read as doxycycline.')).toBeVisible()
  await page.getByRole('button', { name: 'Keep the report' }).click()
  await expect(page.getByText('Choose the unit: mg/L or mm. A bare number says neither.')).toBeVisible()
  await expectAccessible(page)
  await page.getByLabel(`Unit, ${at(1)}`).selectOption('mg/L')
  await page.reload()
  await expect(page.getByLabel(`Result, ${at(1)}`)).toHaveValue('<=0.25')
  await page.getByRole('button', { name: 'Keep the report' }).click()

  // The report: the sample first, then what grew, then the drugs as sentences.
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Result of S-1')
  await expect(page.getByText(/Bulla, on entry, LEFT ear, taken .* days ago/)).toBeVisible()
  await expect(page.getByText('Antibiotics in the animal when it was taken: cefazolin since 09:25.')).toBeVisible()
  const options = page.getByRole('region', { name: 'What can be used, in this ear, today' })
  const option = (name: string) =>
    options.getByRole('listitem').filter({ has: page.getByRole('heading', { name, level: 4 }) })
  const enrofloxacin = option('Enrofloxacin')
  // Feline row of CLSI VET01S ed7: S at or below 0.5 mg/L.
  await expect(enrofloxacin).toContainText('E. coli is susceptible: <=0.25 mg/L; CLSI VET01S ed7 (2024) calls <=0.5')
  await expect(enrofloxacin).toContainText('By mouth (PO): 5 mg/kg, every 24 h')
  await expect(enrofloxacin).toContainText('more blinds cats')
  await expect(enrofloxacin).toContainText('category B, restrict')
  await expect(option('Clindamycin')).toContainText('always resistant, by its nature')
  await expect(option('Cefalexin')).toContainText('no breakpoint for this species')

  // No dose stands there until somebody types one; 20 mg/kg is refused, 5 mg/kg is counted in tablets.
  await page.getByRole('button', { name: 'Work out a course of enrofloxacin' }).click()
  const dose = page.getByLabel('Dose', { exact: true })
  await expect(dose).toHaveValue('')
  await dose.fill('20 mg/kg')
  await page.getByLabel('For how many days').fill('14')
  await expect(enrofloxacin.getByText('As typed it cannot be given:')).toBeVisible()
  await expect(enrofloxacin).toContainText('the retina')
  await dose.fill('5 mg/kg')
  await page.getByLabel('From the shelf').selectOption('enrofloxacin-15')
  // 4.6 kg × 5 mg/kg = 23 mg: one and a half tablets of 15 mg, fourteen times, would be 5 mg/kg and no more.
  await expect(enrofloxacin).toContainText(
    '1.5 tablets each time (Enrofloxacin 15 mg tablets), every 24 h. For 14 days: 21 tablets',
  )
  await expectAccessible(page)
  for (const width of [390, 820, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  await page.getByRole('button', { name: 'Keep the decision' }).click()
  await expect(page.getByText('Choose what follows.')).toBeVisible()
  await page.getByRole('radio', { name: 'change the treatment' }).check()
  await page.getByLabel('In words').fill('Only enrofloxacin is left; 5 mg/kg once a day, eyes looked at first.')
  await page.getByRole('button', { name: 'Keep the decision' }).click()
  await expect(page.getByText('The decision is kept.')).toBeVisible()
  await expect(page.getByRole('link', { name: 'Write the change of medicine' })).toBeVisible()
  const kept = (await entriesOf(program, page, 'case:sorrel')).filter(({ header }) => header.kind === 'result-read')
  expect(kept.at(-1)?.body).toMatchObject({ decision: 'change', edition: 'clsi-vet01s-7' })
  await page.goto(`${program.url}/case/sorrel/results`)
  await expect(page.getByText(/read by Runa Falk on .*: change the treatment/)).toBeVisible()
})
