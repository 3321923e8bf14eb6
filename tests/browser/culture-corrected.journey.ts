import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import { expectAccessible } from './accessible.ts'
import { entriesOf, expect, openInvented, test, writeNow } from './clinic.ts'

test('a corrected report names who acted on the one before, and reads a methicillin-resistant isolate', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const reports = (await entriesOf(program, page, 'case:barley')).filter(
    ({ header }) => header.kind === 'specimen-result',
  )
  const first = reports[0]
  if (!first) throw new Error('The invented practice has no report of Barley.')
  const isolate = printedIsolate('1', 'Staphylococcus pseudintermedius', [
    ['oxacillin', '>=4 mg/L'],
    ['cefalexin', '<=2 mg/L'],
    ['doxycycline', '<=0.12 mg/L'],
    ['rifampicin', '<=0.5 mg/L'],
  ])
  const [corrected] = await writeNow(program, page, 'case:barley', [
    {
      kind: 'specimen-result',
      body: {
        ...emptyReport,
        specimen: String(first.body.specimen),
        status: 'corrected',
        growth: 'growth',
        isolates: [isolate],
      },
      supersedes: [first.header.id],
      reason: 'The laboratory corrected its report.',
    },
  ])
  await page.goto(`${program.url}/case/barley/results/${corrected?.id}`)
  const acted = page.getByText('It replaces an earlier version, and somebody acted on that one')
  await expect(acted).toBeVisible()
  await expect(page.getByRole('link', { name: /Imke Holm read it and decided/ })).toBeVisible()
  await expect(page.getByRole('link', { name: /Imke Holm told the referring vet/ })).toBeVisible()

  // Oxacillin >=4: methicillin-resistant, so no beta-lactam, although cefalexin itself printed <=2.
  const options = page.getByRole('region', { name: 'What can be used, in this ear, today' })
  const option = (name: string) =>
    options.getByRole('listitem').filter({ has: page.getByRole('heading', { name, level: 4 }) })
  await expect(option('Cefalexin')).toContainText('is methicillin-resistant: no penicillin and no cephalosporin works')
  await expect(option('Doxycycline')).toContainText('category D, prudence: the first to be taken')
  // Category A stands behind a person’s word that nothing else is left.
  await expect(option('Rifampicin')).toHaveCount(0)
  await page.getByRole('checkbox', { name: 'I have found no alternative for this animal: show them' }).check()
  await expect(option('Rifampicin')).toBeVisible()
  await expectAccessible(page)
})
