import { expectAccessible } from './accessible.ts'
import { enrol, entriesOf, expect, nurse, openInvented, test } from './clinic.ts'
import { DosePlanPage } from './pages/dose-plan-page.ts'
import { EntryForm, writeWeight } from './pages/entry-form.ts'

const juniper = (url: string) => `${url}/case/juniper/doses/operation-juniper`

test('a cat is not given the plan of a dog, and the page says why', async ({ page, program }) => {
  await openInvented(program, page)
  await writeWeight(page, program.url, 'sorrel', '4.6 kg')
  const plan = await DosePlanPage.book(program, page, 'sorrel', 'RIGHT', '10 February 2031, 09:00')
  await plan.open()
  await page.getByRole('link', { name: /^Plan the doses from a usual plan/ }).click()
  await expect(page.getByText(/^Not for a cat, and so not to be chosen here: “our usual plan, dog”/)).toBeVisible()
  await expect(page.getByRole('radio', { name: /^our usual plan, cat/ })).toBeVisible()
  await expect(page.getByRole('radio', { name: /^our usual plan, dog/ })).toHaveCount(0)
})

test('a dog that turns out to be a cat: every line is worked out again, and every second name is void, saying why', async ({
  page,
  browser,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const second = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', second)
  await writeWeight(page, program.url, 'juniper', '5.2 kg')
  const plan = new DosePlanPage(page, juniper(program.url))
  await plan.open()
  await page.getByRole('button', { name: 'Plan these lines again for 5.2 kg' }).click()
  await page.getByLabel('Why they are planned again').fill('Weighed this morning.')
  await page.getByRole('button', { name: 'Plan them again', exact: true }).click()
  await expect(page.getByText('The plan is older than the animal')).toHaveCount(0)
  const there = plan.at(second)
  await there.open()
  await there.sign('I agree', null)
  await expect(second.getByText('Every line that waits has a second name.')).toBeVisible()
  const lines = page.getByRole('listitem').filter({ hasText: 'Why this dose' })
  await expect(lines.filter({ hasText: `Checked by ${nurse.name}` })).not.toHaveCount(0)
  const checked = await lines.filter({ hasText: `Checked by ${nurse.name}` }).count()
  expect(checked).toBe(await lines.count())
  await expect(page.getByText(/^Nothing to draw while it is refused/)).toHaveCount(0)

  const identity = (await entriesOf(program, page, 'case:juniper')).filter(({ header }) => header.kind === 'identity')
  const form = await EntryForm.open(page, program.url, `juniper/write/identity?amend=${identity.at(-1)?.header.id}`)
  await form.choose('Species', 'cat')
  await form.type('Reason', 'The file was begun as a dog.')
  await form.keep()
  await plan.open()
  await expect(lines.filter({ hasText: 'The species was dog and is cat now.' })).toHaveCount(checked)
  await expect(lines.filter({ hasText: `Checked by ${nurse.name}` })).toHaveCount(0)
  // Block and splash of 1 mg/kg each are all that a dog may have; a cat may have half of that.
  const splash = lines.filter({ hasText: 'bupivacaine' }).filter({ hasText: 'splashed on, splash' })
  await expect(splash).toContainText('Nothing to draw while it is refused.')
  await expect(splash).toContainText('full limit 5.2 mg')
  await expectAccessible(page)
  await second.context().close()
})

/** A day so long ago, as people write it. */
function daysAgo(count: number): string {
  const day = new Date(Date.now() - count * 86_400_000)
  return day.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'Europe/London' })
}

test('a depot of eighteen days ago under a trade name: which active is asked, and what is left to wait is said', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  await writeWeight(page, program.url, 'juniper', '26.4 kg')
  const letter = await EntryForm.open(page, program.url, 'juniper/write/medicine-before')
  await letter.choose('What it is about', 'the animal')
  await letter.type('As written on the box or letter', 'Itchaway long-acting')
  await letter.pick('Active substance', 'not settled yet')
  await letter.choose('How it was given', 'depot injection')
  await letter.choose('Is it still given?', 'no')
  await letter.type('Last given', daysAgo(18))
  await letter.choose('What it did', 'better')
  const id = await letter.keep()
  const plan = new DosePlanPage(page, juniper(program.url))
  const nsaid = plan.line('meloxicam')
  await plan.open()
  await expect(nsaid).toContainText('Itchaway long-acting')
  await expect(nsaid).toContainText('a depot lasts for weeks')

  const settle = async (active: string, how: string, last: string) => {
    const form = await EntryForm.open(page, program.url, `juniper/write/medicine-before?amend=${await newest()}`)
    await form.part.getByLabel(/^Active substance/).selectOption({ label: active })
    await form.choose('How it was given', how)
    await form.type('Last given', last)
    await form.type('Reason', 'The other practice rang back.')
    await form.keep()
    await plan.open()
  }
  const newest = async () => {
    const entries = await entriesOf(program, page, 'case:juniper')
    return entries.find(({ header }) => header.supersedes.includes(id))?.header.id ?? id
  }
  await settle('methylprednisolone acetate', 'depot injection', daysAgo(18))
  // The guideline says only "longer" than seven days for a depot: no number of days is made up.
  await expect(nsaid).toContainText('a depot steroid lasts for weeks; the paper says only "longer"')
  await expect(nsaid).not.toContainText('Itchaway')

  await settle('prednisolone', 'by mouth', daysAgo(3))
  // Seven days after a short-acting steroid, counted from the end of the last day it was given.
  await expect(nsaid).toContainText(/meets prednisolone.*: NSAID and steroid, .* [45] days to wait/)
  await expectAccessible(page)
})
