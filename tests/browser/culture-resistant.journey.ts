import type { BodyOf } from '#core/journal/fold.ts'
import { expectAccessible } from './accessible.ts'
import { askedAgain, expect, openInvented, test, writeNow } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10)
const asTyped = (iso: string) =>
  new Date(`${iso}T12:00:00Z`).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })

test('a methicillin-resistant isolate: no beta-lactam is left, the drug is changed, the page at home follows and names the germ', async ({
  page,
  program,
}) => {
  test.setTimeout(120_000)
  await openInvented(program, page)
  const empirical: BodyOf<'medicine-change'>['starts'][number] = {
    drug: 'amoxicillin-clavulanate',
    label: 'Amoxicillin with clavulanate 250 mg tablets',
    purpose: 'infection',
    form: 'tablet',
    strength: { value: '250', unit: 'mg/{tablet}' },
    each: '1',
    side: null,
    times: ['08:00', '20:00'],
    firstDay: day(-4),
    firstTime: '20:00',
    days: 28,
    withFood: 'yes',
    onDays: 'every-day',
    steps: [],
  }
  await writeNow(program, page, 'case:barley', [
    {
      kind: 'medicine-change',
      body: { read: null, because: 'Until the culture is back.', stops: [], starts: [empirical] },
      minutesAgo: 4 * 24 * 60,
    },
    {
      kind: 'specimen',
      body: {
        site: 'bulla-after-lavage',
        tests: ['aerobic-culture'],
        label: 'B-9',
        laboratory: 'contact-laboratory',
        antibioticsOnBoard: null,
        expectedBy: null,
        operation: null,
      },
      minutesAgo: 5 * 24 * 60,
    },
  ])
  const paper = async (name: string) =>
    (await page.context().request.get(`${program.url}/api/papers/case%3Abarley/${name}.txt`, askedAgain)).text()
  const before = (await paper('home-page')).replaceAll(/\s+/g, ' ')
  expect(before).toContain('Amoxicillin with clavulanate 250 mg tablets')
  expect(before).not.toContain('many medicines do not kill')

  // What the paper says is typed as it is printed.
  await page.goto(`${program.url}/case/barley/results`)
  await page.getByRole('link', { name: 'Type a result of B-9' }).click()
  await page.getByRole('radio', { name: 'final' }).check()
  await page.getByRole('radio', { name: /from paper/ }).check()
  await page.getByRole('radio', { name: 'growth', exact: true }).check()
  await page.getByLabel('Number of the report').fill('LW-2201')
  await page.getByLabel('Organism, as printed').fill('Staph. pseudintermedius')
  await expect(page.getByText('Read as Staphylococcus pseudintermedius.')).toBeVisible()
  const printed = [
    ['Oxacillin', '>=4'],
    ['Cephalexin', '<=2'],
    ['Amox/clav', '<=0.25'],
    ['Clindamycin', '>4'],
    ['Chloramphenicol', '2'],
  ] as const
  for (const [place, [drug, value]] of printed.entries()) {
    const at = `drug ${place + 1} of organism 1`
    const more = page.getByLabel(`Drug, ${at}`)
    if ((await more.count()) === 0) await page.getByRole('button', { name: /drug/i }).last().click()
    await more.fill(drug)
    await page.getByLabel(`Result, ${at}`).fill(value)
    await page.getByLabel(`Unit, ${at}`).selectOption('mg/L')
  }
  await page.getByRole('button', { name: 'Keep the report' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Result of B-9')

  // Cefalexin reads S by its number (CLSI VET01S ed7, canine: S at or below 2 mg/L); methicillin resistance overrides it, and says so.
  const options = page.getByRole('region', { name: 'What can be used, in this ear, today' })
  const option = (name: string) =>
    options.getByRole('listitem').filter({ has: page.getByRole('heading', { name, level: 4 }) })
  await expect(option('Cefalexin')).toContainText(/methicillin/i)
  await expect(option('Amoxicillin with clavulanic acid')).toContainText(/methicillin/i)
  await expect(page.getByText(/amoxicillin.*, sent home from/)).toBeVisible()
  await expect(page.getByText(/MRSP/).first()).toBeVisible()
  await expect(option('Chloramphenicol')).toContainText('is susceptible')
  await expectAccessible(page)

  await page.getByRole('radio', { name: 'change the treatment' }).check()
  await page.getByLabel('In words').fill('MRSP: no beta-lactam works. Chloramphenicol by mouth, gloves for the owner.')
  await page.getByRole('button', { name: 'Keep the decision' }).click()
  await page.getByRole('link', { name: 'Write the change of medicine' }).click()
  const form = await EntryForm.here(page)
  await form.pick('Because of which reading of a result?', 'change the treatment')
  await form.type('Why', 'Resistant to what she went home with.')
  const stop = await form.add('Stop another medicine', 'Stopped medicine 1')
  await stop.pick('Drug', 'moxicillin')
  await stop.type('Name as on the home page', 'Amoxicillin with clavulanate 250 mg tablets')
  await stop.type('Given no more from (day)', asTyped(day(0)))
  await stop.type('Given no more from (time)', '12:00')
  const start = await form.add('Start another medicine', 'Started medicine 1')
  await start.pick('Drug', 'hloramphenicol')
  await start.typeAll({
    'Name on the box': 'Chloramphenicol 250 mg tablets',
    'What it is for, in plain words': 'infection',
    Strength: '250 mg in a tablet',
    'Each time': '3',
    'Clock times': '06:00, 14:00, 22:00',
    'First day': asTyped(day(0)),
    'First time on that day': '14:00',
    'For how many days': '21',
  })
  await start.choose('Form', 'tablet')
  await start.choose('On which days', 'every day')
  await start.choose('With food?', 'either way')
  await form.keep()

  const after = (await paper('home-page')).replaceAll(/\s+/g, ' ')
  expect(after).toContain('many medicines do not kill')
  expect(after).toContain('MRSP')
  expect(after).toContain('It takes the place of the page of')
  expect(after).toContain('Stop: Amoxicillin with clavulanate 250 mg tablets.')
  expect(after).toContain('New: Chloramphenicol 250 mg tablets.')
  expect(after).toContain('Chloramphenicol 250 mg tablets: In some people this medicine harms the blood')

  // The calls close the loop; until then each is owed by name.
  const owed = (what: string) => page.getByRole('listitem').filter({ hasText: what })
  for (const [who, what, contact] of [
    ['owner', 'Tell the owner the result of B-9', 'Ana Wetherlow'],
    ['referring vet', 'Tell the referring vet the result of B-9', 'Femi Oyelaran'],
  ] as const) {
    await page.goto(`${program.url}/`)
    await expect(owed(what)).toContainText('Imke Holm')
    await owed(what)
      .getByRole('link', { name: /^Write it/ })
      .click()
    const told = await EntryForm.here(page)
    await page.getByRole('radio', { name: 'LEFT ear' }).check()
    await told.pick('About which entry?', 'Staph. pseudintermedius')
    await told.choose('Who was told?', who)
    await told.pick('Person', contact)
    await told.choose('How', 'by phone')
    await told.keep()
  }
  await page.goto(`${program.url}/`)
  await expect(page.getByText(/result of B-2/)).toBeVisible()
  await expect(page.getByText(/result of B-9/)).toHaveCount(0)
})
