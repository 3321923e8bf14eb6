import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { expectAccessible } from './accessible.ts'
import { entriesOf, expect, openInvented, test, writeNow } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const side = { kind: 'ear', animal: 'animal', side: 'LEFT' } as const

test('a report that is corrected after the owner was told goes round again and names who had acted', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const stream = 'case:rowan'
  const minute = 60
  const [specimen] = await writeNow(program, page, stream, [
    {
      kind: 'specimen',
      subject: side,
      minutesAgo: 100 * minute,
      body: {
        site: 'canal',
        tests: ['aerobic-culture'],
        label: 'C-77',
        laboratory: null,
        antibioticsOnBoard: null,
        expectedBy: null,
        operation: null,
      },
    },
  ])
  const report = (rows: Parameters<typeof printedIsolate>[2], status: 'final' | 'corrected') => {
    return {
      ...emptyReport,
      specimen: specimen?.id ?? '',
      status,
      growth: 'growth',
      isolates: [printedIsolate('1', 'Proteus mirabilis', rows)],
    } satisfies BodyOf<'specimen-result'>
  }
  const [first] = await writeNow(program, page, stream, [
    {
      kind: 'specimen-result',
      subject: side,
      minutesAgo: 50 * minute,
      body: report([['marbofloxacin', '<=0.5 mg/L']], 'final'),
    },
  ])
  await writeNow(program, page, stream, [
    {
      kind: 'result-read',
      subject: side,
      minutesAgo: 49 * minute,
      body: { result: first?.id ?? '', decision: 'no-change', edition: null, text: 'Susceptible.' },
    },
    {
      kind: 'told',
      subject: side,
      minutesAgo: 48 * minute,
      body: { about: first?.id ?? '', who: 'owner', contact: 'contact-1', by: 'phone', text: null },
    },
  ])
  await page.goto(`${program.url}/case/rowan`)
  const strips = page.getByRole('region', { name: 'From swab to owner told' })
  await expect(strips.getByText('C-77')).toHaveCount(1)

  const [second] = await writeNow(program, page, stream, [
    {
      kind: 'specimen-result',
      subject: side,
      minutesAgo: 20,
      supersedes: [first?.id ?? ''],
      reason: 'The laboratory corrected it.',
      body: report([['marbofloxacin', '4 mg/L']], 'corrected'),
    },
  ])
  await page.goto(`${program.url}/case/rowan`)
  await expect(strips.getByText('Acted on the version before:')).toBeVisible()
  await expect(strips.getByText(/Runa Falk read it/)).toBeVisible()
  await expect(strips.getByText(/the owner was told by Runa Falk/)).toBeVisible()
  await expectAccessible(page)

  await page.goto(program.url)
  const row = page.getByRole('listitem').filter({ hasText: 'Read the result of C-77 and decide' })
  await expect(row.getByText(/The owner was told of the version before/)).toBeVisible()

  const read = await EntryForm.open(
    page,
    program.url,
    `rowan/write/result-read?side=LEFT&owed=result-to-read:${second?.id}`,
  )
  await read.pick('Which result?', 'corrected')
  await read.choose('What follows?', 'stop the treatment')
  await read.type('In words', 'Resistant after all.')
  await read.keep()
  const isRead = async () => {
    const entries = await entriesOf(program, page, stream)
    return entries.some(({ header, body }) => header.kind === 'result-read' && body.result === second?.id)
  }
  await expect.poll(isRead).toBe(true)
  await page.goto(program.url)
  const call = page.getByRole('listitem').filter({ hasText: 'Tell the owner the result of C-77' })
  await expect(call.getByText(/The owner was told of the version before/)).toBeVisible()
})
