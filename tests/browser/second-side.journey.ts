import { check as checkKind } from '#core/journal/kinds/check.ts'
import { choice } from '#core/journal/kinds/choice.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, openInvented, test, typedWhen, writeNow } from './clinic.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'

const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const

test('the second ear is asked anew: what the first had is shown with its date and not used, until it is written again', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const part = page.locator('#second-side')
  await page.goto(`${program.url}/case/rowan`)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Rowan')
  await expect(part).toHaveCount(0)

  // The right face is weak since its operation, and the left ear is chosen for an operation now.
  const weak = { ...checkKind.example, blink: 'weak' } as const
  await writeNow(program, page, 'case:rowan', [
    // The estimate of the first side, as it was written before its operation.
    { kind: 'estimate', minutesAgo: 155 * 24 * 60 },
    { kind: 'check', subject: { ...left, side: 'RIGHT' }, body: weak, minutesAgo: 9 },
    { kind: 'choice', subject: left, body: choice.example, minutesAgo: 5 },
  ])
  await page.reload()
  await expect(part.getByRole('heading', { level: 2 })).toHaveText('Second side: LEFT ear')
  await expect(part).toContainText(/The RIGHT eye does not blink as it should: weak on/)
  await expect(part).toContainText('neither eye closes by itself')
  const need = (name: string) => part.getByRole('listitem').filter({ hasText: name })
  await expect(need('Choice for this ear')).toContainText('new,')
  await expect(need('Estimate')).toContainText(/an older one of .*; not used/)
  await expect(need('Consent that names this side')).toContainText(/not used/)
  await expect(need('Weight of the day')).toContainText(/not used/)
  await expect(need('Operation booked')).toContainText('missing')
  await expect(part.getByRole('heading', { name: /^RIGHT ear, operated on/ })).toBeVisible()
  await expectAccessible(page)
  for (const width of [1280, 820, 360]) {
    await page.setViewportSize({ width, height: 900 })
    await expectNoSidewaysScroll(page)
    if (process.env.LOOK) await part.screenshot({ path: `${process.env.LOOK}/second-side-${width}.png` })
  }
  await page.setViewportSize({ width: 1280, height: 900 })

  // The estimate that was accepted for the first side stands there as older, and cannot be signed on.
  await page.goto(`${program.url}/case/rowan/agreement`)
  await expect(page.getByText(/before the LEFT ear was decided as a second side after the RIGHT ear/)).toBeVisible()
  await expect(page.getByText(/The newest estimate was written before this second side was decided/)).toBeVisible()

  // Booked for tomorrow: weight, look and consent are owed to it anew, and the operation names the first.
  await DosePlanPage.book(program, page, 'rowan', 'LEFT', typedWhen(24 * 60 - 30))
  await page.goto(`${program.url}/case/rowan`)
  await expect(need('Operation booked')).toContainText('new,')
  await expect(page.locator('#chapter-theatre')).toContainText(/Second side: the RIGHT ear was operated on/)
  await expect(page.locator('#chapter-agreement')).toContainText('The booking names no agreement that counts.')

  await writeNow(program, page, 'case:rowan', [{ kind: 'baseline' }, { kind: 'weight' }])
  await page.reload()
  await expect(need('Face, eyes and balance before sedation')).toContainText('new,')
  await expect(need('Weight of the day')).toContainText('new,')
  await expect(need('Consent that names this side')).toContainText('not used')
})
