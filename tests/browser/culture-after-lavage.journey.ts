import { expectAccessible } from './accessible.ts'
import { entriesOf, expect, openInvented, test, writeNow } from './clinic.ts'

test('the sample on entry grew nothing, the one after lavage did: both are read, one leads, and one counts among what grows here', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const taken = { laboratory: 'contact-laboratory', antibioticsOnBoard: null, expectedBy: null } as const
  const pot = (site: 'bulla-on-entry' | 'bulla-after-lavage', label: string, minutesAgo: number) => ({
    kind: 'specimen' as const,
    minutesAgo,
    body: { ...taken, site, label, tests: ['aerobic-culture' as const], operation: 'operation-hazel' },
  })
  await writeNow(program, page, 'case:hazel', [
    pot('bulla-on-entry', 'H-1', 300),
    pot('bulla-after-lavage', 'H-2', 280),
  ])
  const typed = async (label: string, growth: 'no growth' | 'growth') => {
    await page.goto(`${program.url}/case/hazel/results`)
    await page.getByRole('link', { name: `Type a result of ${label}` }).click()
    await page.getByRole('radio', { name: 'final' }).check()
    await page.getByRole('radio', { name: /read out/ }).check()
    await page.getByRole('radio', { name: growth, exact: true }).check()
  }
  const decided = async (name: string, words: string) => {
    await page.getByRole('radio', { name }).check()
    await page.getByLabel('In words').fill(words)
    await page.getByRole('button', { name: 'Keep the decision' }).click()
    await expect(page.getByText('The decision is kept.')).toBeVisible()
  }

  // Nothing grew: that is not “no infection”, and the page names the other pot of this operation.
  await typed('H-1', 'no growth')
  await page.getByRole('button', { name: 'Keep the report' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Result of H-1')
  await expect(page.getByText('No growth is not “no infection”', { exact: false })).toBeVisible()
  await decided('read; the decision waits', 'Wait for the sample after lavage.')

  // After lavage something grew that is resistant to methicillin: one value makes every beta-lactam resistant.
  await typed('H-2', 'growth')
  await page.getByLabel('Organism, as printed').fill('Staph. pseudintermedius')
  const drugs = [
    ['Oxacillin', '>=4'],
    ['Cephalexin', '<=2'],
    ['Amikacin', '<=4'],
  ] as const
  for (const [place, [drug, value]] of drugs.entries()) {
    const at = `drug ${place + 1} of organism 1`
    await page.getByLabel(`Drug, ${at}`).fill(drug)
    await page.getByLabel(`Result, ${at}`).fill(value)
    await page.getByLabel(`Unit, ${at}`).selectOption('mg/L')
  }
  await page.getByRole('button', { name: 'Keep the report' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Result of H-2')
  await expect(page.getByRole('heading', { name: 'Also taken at this operation' })).toBeVisible()
  await expect(page.getByText(/on entry \(H-1\): no growth/)).toBeVisible()
  await expectAccessible(page)
  await decided('change the treatment', 'Resistant to methicillin; nothing that is swallowed is given without a plan.')
  const reads = (await entriesOf(program, page, 'case:hazel')).filter(({ header }) => header.kind === 'result-read')
  expect(reads).toHaveLength(2)

  // What grows here: the isolate counts where it grew, its cefalexin as resistant, and nothing stands for the entry.
  await page.goto(`${program.url}/results`)
  await page.getByRole('link', { name: 'What grows here' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What grows here')
  const lavage = page.getByRole('region', { name: 'Dogs: bulla, after lavage' })
  // Rowan's of the summer, and Hazel's.
  await expect(
    lavage.getByRole('table', { name: /Staphylococcus pseudintermedius, 2 isolates \(fewer than 30\)/ }),
  ).toBeVisible()
  await expect(lavage.getByRole('row', { name: /^cefalexin/ })).toContainText('0 of 2')
  await expect(lavage.getByRole('row', { name: /^amikacin/ })).toContainText('2 of 2')
  await expectAccessible(page)
  await page.getByLabel('Places of sampling').selectOption('together')
  await expect(page.getByRole('heading', { name: 'Dogs: all places' })).toBeVisible()
  const saved = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save for a spreadsheet' }).click()
  expect((await saved).suggestedFilename()).toMatch(/^What-grows-here-.*\.csv$/)

  // A period that ends before it begins is said, and no table stands under it.
  await page.getByLabel('Sampled from').fill('2026-06-01')
  await page.getByLabel('Sampled until').fill('2026-05-01')
  await expect(page.getByText('This day lies before the first one.', { exact: false })).toBeVisible()
  await expect(page.getByRole('table')).toHaveCount(0)
  await page.getByLabel('Sampled until').fill('')
  await expect(page.getByRole('table').first()).toBeVisible()
})
