import type { Page } from '@playwright/test'
import { theatreStamp } from '#core/journal/kinds/theatre-stamp.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { askedAgain, entriesOf, expect, openInvented, test, writeNow } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'
import { copyUntil } from './states/case-until.ts'

const stream = 'case:yarrow'
const about = { kind: 'operation', animal: 'animal-yarrow', operation: 'operation-yarrow' } as const
const stamp = (checkpoint: string, minutesAgo: number, detail: Record<string, string> = {}) => ({
  kind: 'theatre-stamp' as const,
  subject: about,
  body: { ...theatreStamp.example, checkpoint, detail },
  minutesAgo,
})

test('the surgeon reads what was drafted from the stamps, changes it and signs it; nothing drafted is signed unread', async ({
  page,
  program,
}) => {
  test.slow()
  page.setDefaultTimeout(8_000)
  const { url } = program
  await openInvented(program, page)
  await copyUntil(program, page, 'Yarrow', 'booking')
  await writeNow(program, page, stream, [
    stamp('anaesthesia-start', 110),
    stamp('incision', 90),
    stamp('k3-facial-nerve', 80, { nerve: 'seen', state: 'stuck' }),
    stamp('k12-drain', 20, { drain: 'none' }),
  ])
  const paper = async (name: string) =>
    (
      await page.context().request.get(`${url}/api/papers/case%3Ayarrow/${name}-operation-yarrow.txt`, askedAgain)
    ).text()
  const sign = page.getByRole('link', { name: 'Draft and sign the operation report' })

  // The wound is open: nothing is signed yet.
  await page.goto(`${url}/case/yarrow/room/operation-yarrow`)
  await expect(page.getByRole('button', { name: 'Take back: Incision' })).toBeVisible()
  await expect(sign).toHaveCount(0)
  await writeNow(program, page, stream, [stamp('closed', 5)])
  await expect(sign).toBeVisible({ timeout: 15_000 })
  const pdf = page.getByRole('link', { name: 'Operation report, PDF' })
  expect(await bytesOf(page, url + (await pdf.getAttribute('href')))).toBe('%PDF')
  expect(await paper('operation-report')).toContain('!! Draft')
  expect(await paper('anaesthetic-record')).toContain('!! Draft')

  await sign.click()
  const form = await EntryForm.here(page)
  const findings = page.getByLabel('Findings', { exact: true })
  const drafted = 'The facial nerve was seen. It was stuck to the canal and freed.\nNo drain was placed.'
  await expect(findings).toHaveValue(drafted)
  await expect(page.getByLabel('Plan', { exact: true })).toHaveValue(
    /^The (LEFT|RIGHT) eye is kept wet until it blinks, .* It was stuck to the canal and freed\.$/,
  )
  await expect(page.getByLabel('Indication', { exact: true })).not.toHaveValue('')
  await expect(page.getByRole('radiogroup', { name: 'Was a drain left in?' }).getByLabel('no')).toBeChecked()
  await expect(page.getByRole('group', { name: 'Complications' }).getByRole('checkbox', { checked: true })).toHaveCount(
    0,
  )
  await expect(page.getByLabel(/^Signed by/)).toHaveValue('')
  const unread = page.getByText('Drafted from the stamps; read it.')
  const many = await unread.count()
  expect(many).toBeGreaterThan(6)
  await expectAccessible(page)
  for (const width of [390, 820, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
  }

  // Everything is answered, one thing by hand, one is confirmed by a tap: the rest is named.
  const edited = `${drafted}\nA thick band of scar lay over the meatus.`
  await findings.fill(edited)
  await page.getByRole('button', { name: 'I have read it: Side that was operated' }).click()
  await expect(unread).toHaveCount(many - 2)
  await page.getByRole('group', { name: 'Complications' }).getByRole('checkbox', { name: 'none' }).check()
  await form.pick('Signed by', 'Runa Falk')
  await page.getByRole('button', { name: /^Keep/ }).click()
  await expect(page.getByRole('alert').filter({ hasText: 'Nothing drafted is signed unread' })).toContainText(
    'Drafted and not read yet: Operation, ',
  )
  // The line above the page may not lie over half an answer while it is measured.
  await page.evaluate('scrollTo(0, 0)')
  await expectAccessible(page)
  expect((await entriesOf(program, page, stream)).some(({ header }) => header.kind === 'operation-summary')).toBe(false)

  // What was typed is here after a reload; a later stamp is said and changes nothing by itself.
  await page.reload()
  await expect(findings).toHaveValue(edited)
  await writeNow(program, page, stream, [stamp('k6-bulla', 60, { tool: 'burr' })])
  const anew = page.getByRole('button', { name: 'Draft it anew: Findings' })
  await expect(anew).toBeVisible({ timeout: 15_000 })
  await expect(findings).toHaveValue(edited)
  await anew.click()
  await expect(findings).toHaveValue(
    'The facial nerve was seen. It was stuck to the canal and freed.\n' +
      'The bulla was opened from the side with a burr.\nNo drain was placed.',
  )
  await expect(page.getByText(/^Drafted and not read yet: .*Findings/)).toBeVisible()
  await findings.fill('The bulla was opened with a burr; a thick band of scar lay over the meatus.')
  await page.getByRole('button', { name: 'I have read what was drafted' }).click()
  await expect(unread).toHaveCount(0)
  await form.keep()

  await expect(async () => {
    const report = (await paper('operation-report')).replaceAll(/\s+/g, ' ')
    expect(report).toContain('Summary signed by Runa Falk')
    expect(report).toContain('Findings: The bulla was opened with a burr; a thick band of scar lay over the meatus.')
    expect(report).not.toContain('!! Draft')
    expect(await paper('anaesthetic-record')).not.toContain('!! Draft')
  }).toPass({ timeout: 15_000 })
  // Signed once: the record offers its papers, and no second summary.
  await page.goto(`${url}/case/yarrow/room/operation-yarrow`)
  await expect(pdf).toBeVisible()
  await expect(sign).toHaveCount(0)
})

async function bytesOf(page: Page, address: string): Promise<string> {
  const response = await page.context().request.get(address, askedAgain)
  return (await response.body()).subarray(0, 4).toString()
}
