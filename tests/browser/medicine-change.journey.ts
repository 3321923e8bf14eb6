import { emptyReport } from '#core/culture/empty-report.ts'
import { expectAccessible } from './accessible.ts'
import { entriesOf, expect, openInvented, test, writeNow } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const oxacillin = {
  drug: 'oxacillin',
  agent: 'oxacillin',
  method: 'MIC',
  raw: '>=4',
  disk: null,
  category: 'R',
} as const
const isolate = {
  key: '1',
  organism: 'Staphylococcus pseudintermedius',
  species: 'staphylococcus-pseudintermedius',
  amount: 'heavy',
  results: [oxacillin],
  tests: [],
}

test('a methicillin-resistant isolate changes the medicines, and the new home page says so', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const stream = 'case:sorrel'
  const known = await entriesOf(program, page, stream)
  const specimen = known.findLast(({ header }) => header.kind === 'specimen')
  const home = known.findLast(({ header }) => header.kind === 'discharge')
  const medicines = (home?.body.medicines ?? []) as readonly { readonly label: string }[]
  const label = medicines[0]?.label ?? ''
  const side = specimen?.header.subject.side === 'RIGHT' ? 'RIGHT' : 'LEFT'
  const subject = { kind: 'ear', animal: 'animal', side } as const
  const [result] = await writeNow(program, page, stream, [
    {
      kind: 'specimen-result',
      subject,
      minutesAgo: 30,
      body: {
        ...emptyReport,
        specimen: specimen?.header.id ?? '',
        status: 'final',
        growth: 'growth',
        isolates: [isolate],
      },
    },
  ])
  await writeNow(program, page, stream, [
    {
      kind: 'result-read',
      subject,
      minutesAgo: 20,
      body: { result: result?.id ?? '', decision: 'change', edition: null, text: 'MRSP.' },
    },
  ])
  await page.goto(program.url)
  const toWrite = page.getByRole('listitem').filter({ hasText: 'Change the medicines at home, as was decided' })
  await toWrite.getByRole('link', { name: 'Write it' }).click()

  const form = await EntryForm.here(page)
  await form.pick('Because of which reading of a result?', 'MRSP')
  await form.type('Why', 'Methicillin-resistant.')
  await page.getByRole('button', { name: `Stop ${label}` }).click()
  const stop = form.within('Stopped medicine 1')
  await stop.type('Given no more from (day)', '1 January 2031')
  await stop.type('Given no more from (time)', '12:00')
  await form.tick('nothing starts')
  await expectAccessible(page)
  await form.keep()

  await page.goto(`${program.url}/case/sorrel`)
  await expect(page.getByText(/MRSP \(Staphylococcus pseudintermedius\) on record/).first()).toBeVisible()
  await expect(page.getByText(/Page 2, made by the change of/)).toBeVisible()
  await page.goto(`${program.url}/api/papers/${stream}/home-page.html`)
  await expect(page.getByText(/This is page 2/)).toBeVisible()
  await expect(page.getByText(new RegExp(`Stop: ${label}. Give no more from 1 January 2031, 12:00 on`))).toBeVisible()
  await expect(page.getByText('Its short name is MRSP.')).toBeVisible()
  await page.goto(program.url)
  const tell = page.getByRole('listitem').filter({ hasText: 'Tell the owner of the changed medicines' })
  await expect(tell.first()).toBeVisible()
})
