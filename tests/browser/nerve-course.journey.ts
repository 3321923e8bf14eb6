import { check as checkKind } from '#core/journal/kinds/check.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test, writeNow } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const course = '#nerve-course'

test('a weak blink is new since the operation; what an owner tells does not end it, an examination does', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await page.goto(`${program.url}/case/rowan`)
  const part = page.locator(course)
  await expect(part.getByRole('heading', { name: /^RIGHT ear, operated on/ })).toBeVisible()
  await expect(part).toContainText(/Normal whenever looked at: .*blink/)
  await expect(part.getByRole('img')).toBeVisible()

  const form = await EntryForm.open(page, program.url, 'rowan/write/check?side=RIGHT')
  await form.choose('Seen by', 'us')
  await form.choose('Blink', 'weak')
  await form.choose('Could a local block still be at work?', 'no')
  await page.getByRole('button', { name: /^Balance looked at/ }).click()
  for (const sign of ['Head tilt', 'Eyes beat from side to side (nystagmus)', 'Unsteady gait']) {
    await expect(
      page.getByRole('radiogroup', { name: sign }).getByRole('radio', { name: 'no', exact: true }),
    ).toBeChecked()
  }
  await expect(page.getByRole('button', { name: /^Balance looked at/ })).toHaveCount(0)
  await form.restNotAssessed()
  await form.keep()
  await page.goto(`${program.url}/case/rowan`)
  await expect(part).toContainText(/Blink: weak on .*our examination\); normal before\. New since the operation\./)
  await expect(part).toContainText(/Not lasting by the rule so far; it is when a look on .* \(day 180\) or later/)
  const next = part.getByRole('link', { name: /^(Next look|Late)/ })
  await expect(next).toBeVisible()

  const told = { ...checkKind.example, seenBy: 'owner-words', blink: 'normal', lipOrEarDroop: 'not-assessed' } as const
  const subject = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const
  await writeNow(program, page, 'case:rowan', [{ kind: 'check', subject, body: { ...told, tearTest: null } }])
  await page.reload()
  await expect(part).toContainText(/Blink: weak on/)
  await expect(part).toContainText(/Blink: normal, told on .* by the owner\. An account is not an examination\./)

  const seen = { ...told, seenBy: 'referring-vet' } as const
  await writeNow(program, page, 'case:rowan', [{ kind: 'check', subject, body: seen }])
  await page.reload()
  await expect(part).toContainText(/The change lies in between; on which day nobody saw\./)
  await expect(part).not.toContainText('An account is not an examination')

  await part.getByText('All looks as a table').click()
  const row = part.getByRole('row').filter({ hasText: 'the owner’s account' })
  await expect(row).toContainText('told, not examined')
  await expect(row).toContainText('not assessed')
  await expectAccessible(page)
  for (const width of [1280, 820, 360]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
    if (process.env.LOOK) await part.screenshot({ path: `${process.env.LOOK}/nerve-course-${width}.png` })
  }

  await page.goto(`${program.url}/api/papers/case%3Arowan/referring-letter.html`)
  await expect(page.locator('body')).toContainText('Face, balance and eye against the look before the operation')
  await expect(page.locator('body')).toContainText(/RIGHT ear, operated on .*before any sedative/)
})

test('a blink missing in the ward is a possible block effect, and is graded by the look after it', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await page.goto(`${program.url}/case/hazel`)
  const part = page.locator(course)
  await expect(part).toContainText(/possible block effect/)
  await part.getByText('All looks as a table').click()
  await expect(part.getByRole('row').filter({ hasText: 'in the ward' }).first()).toContainText(
    'possible block effect, not graded',
  )
  await expectAccessible(page)
})
