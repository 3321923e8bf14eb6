import { earFindings } from '#core/journal/kinds/ear-findings.ts'
import { imaging } from '#core/journal/kinds/imaging.ts'
import { referral } from '#core/journal/kinds/referral.ts'
import { entriesOf, expect, openInvented, test, typedWhen, writeNow } from './clinic.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'

const room = (plan: DosePlanPage) => plan.address.replace('/doses/', '/room/')

test('referral left, exam right, report left on a flipped series, both on the list, arrow left: nothing is cut before a person settles it', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const right = { kind: 'ear', animal: 'animal-teasel', side: 'RIGHT' } as const
  await writeNow(program, page, 'case:teasel', [
    { kind: 'referral', body: { ...referral.example, reportedSide: 'LEFT' } },
    { kind: 'ear-findings', subject: right, body: earFindings.example },
    { kind: 'imaging', body: imaging.example },
  ])
  const leftPlan = await DosePlanPage.book(program, page, 'teasel', 'LEFT', typedWhen(20 * 60))
  const rightPlan = await DosePlanPage.book(program, page, 'teasel', 'RIGHT', typedWhen(22 * 60))

  // Both on the list explain nothing: each record says so, and the list too.
  for (const plan of [leftPlan, rightPlan]) {
    await page.goto(room(plan))
    await expect(page.getByText('The side is not settled. Settle it before anything is cut.')).toBeVisible()
    await expect(page.getByText(/Both ears under one anaesthetic/)).toBeVisible()
  }

  await page.goto(`${program.url}/theatre`)
  const disagree = page.getByRole('listitem').filter({ hasText: 'The sources of the side disagree' })
  await expect(disagree.filter({ hasText: 'Teasel' })).toHaveCount(2)

  // The arrow is drawn on the wrong ear, and is one source more.
  await page.goto(room(rightPlan))
  await page.getByRole('button', { name: 'Arrow is on the LEFT' }).click()
  await expect(page.getByText('The arrow is on the LEFT.')).toBeVisible()

  // The second ear begins at the pause between the ears; its own side item is stopped, with every source.
  await page.goto(`${room(leftPlan)}/pause/before-anaesthesia?at=side-spoken-in-full`)
  await expect(page.getByText(/nobody answers YES before a named person has settled it/)).toBeVisible()
  await expect(page.getByRole('button', { name: 'YES', exact: true })).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'NO', exact: true })).toBeVisible()
  await page.goto(`${room(rightPlan)}/pause/before-second-ear?at=second-side-spoken-and-pointed`)
  await expect(page.getByRole('button', { name: 'YES', exact: true })).toHaveCount(0)
  for (const source of [
    /as reported at the first call, by Runa Falk/,
    /the report of the scan/,
    /a stamp in theatre/,
  ]) {
    await expect(page.getByText(source)).toBeVisible()
  }

  // The cut waits: the tap keeps its moment and asks why.
  await page.goto(room(rightPlan))
  await page.getByRole('button', { name: 'Done now: Incision' }).click()
  await expect(page.getByText(/^Not yet there: the side settled; a consent that covers it/)).toBeVisible()
  await page.getByRole('button', { name: 'It did not happen yet' }).click()

  // A named person settles it; what somebody decided is amended, here the arrow.
  await page.goto(`${room(rightPlan)}/pause/before-second-ear?at=second-side-spoken-and-pointed`)
  await page.getByRole('button', { name: 'Settle the side' }).click()
  await page.getByRole('group', { name: 'Which ear is it?' }).getByRole('radio', { name: 'RIGHT' }).check()
  await expect(page.getByRole('link', { name: /^Amend: a stamp in theatre/ })).toBeVisible()
  await page.getByRole('button', { name: 'Keep: it is RIGHT' }).click()
  await expect(page.getByText('Say what you looked at: others act on it.')).toBeVisible()
  await page.getByLabel('How you know').fill('Animal and images in hand: the series was flipped.')
  await page.getByRole('button', { name: 'Keep: it is RIGHT' }).click()
  await expect(page.getByText('the side settled by a named person, by Runa Falk')).toBeVisible()
  // The arrow still stands on the other ear.
  await expect(page.getByRole('button', { name: 'YES', exact: true })).toHaveCount(0)
  await page.goto(room(rightPlan))
  await page.getByRole('button', { name: 'Take back: Arrow on the skin' }).click()
  await page.getByRole('button', { name: 'Arrow is on the RIGHT' }).click()
  await expect(page.getByText('The side is not settled. Settle it before anything is cut.')).toHaveCount(0)
  await page.goto(`${room(rightPlan)}/pause/before-second-ear?at=second-side-spoken-and-pointed`)
  await expect(page.getByRole('button', { name: 'YES', exact: true })).toBeVisible()

  // The other ear of the list is not settled by it, and nobody agreed to either.
  await page.goto(room(leftPlan))
  await expect(page.getByText('The side is not settled. Settle it before anything is cut.')).toBeVisible()
  await page.getByRole('button', { name: 'Done now: Premedication given' }).click()
  await expect(page.getByText(/face and eyes looked at before sedation; the side settled; a consent/)).toBeVisible()

  const settled = (await entriesOf(program, page, 'case:teasel')).filter(({ header }) => header.kind === 'side-settled')
  expect(settled.map(({ body }) => [body.side, (body.overruled as string[]).length])).toEqual([['RIGHT', 2]])
})
