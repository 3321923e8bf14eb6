import { act, entriesOf, expect, openInvented, test } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

test('a result that comes while the surgeon is on leave is the deputy’s, and goes back when the leave ends', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const context = page.context()
  const me = await act<{ active: string }>(context, program.url, 'who-am-i', {})
  const { today } = await act<{ today: string }>(context, program.url, 'list-people', {})
  const stream = 'case:barley'
  const known = await entriesOf(program, page, stream)
  const results = known.filter(({ header }) => header.kind === 'specimen-result')
  const read = new Set(known.flatMap(({ header, body }) => (header.kind === 'result-read' ? [body.result] : [])))
  const open = results.find(({ header }) => !read.has(header.id))
  const specimen = known.find(({ header }) => header.id === open?.body.specimen)
  const label = String(specimen?.body.label)

  const rowOf = (what: string) => page.getByRole('listitem').filter({ hasText: what }).filter({ hasText: 'Barley' })
  await page.goto(program.url)
  await expect(rowOf(`Read the result of ${label}`).getByText('Imke Holm')).toBeVisible()
  await page.getByRole('radio', { name: 'Mine' }).check()
  await expect(rowOf(`Read the result of ${label}`)).toHaveCount(0)

  const leave = { person: 'person-holm', from: today, until: today, deputy: me.active }
  await act(context, program.url, 'set-leave', leave)
  await page.goto(program.url)
  await expect(rowOf(`Read the result of ${label}`)).toHaveCount(1)
  await page.goto(`${program.url}/case/barley`)
  const strips = page.getByRole('region', { name: 'From swab to owner told' })
  await expect(strips.getByText(/Runa Falk for Imke Holm/).first()).toBeVisible()

  const side = specimen?.header.subject.side
  const form = await EntryForm.open(page, program.url, `barley/write/result-read?side=${side}`)
  await page.getByLabel('Which result?').selectOption(open?.header.id ?? '')
  await form.choose('What follows?', 'go on as before')
  await form.type('In words', 'No tumour.')
  await form.keep()
  await page.goto(program.url)
  await expect(rowOf(`Tell the owner the result of ${label}`)).toHaveCount(1)

  await act(context, program.url, 'set-leave', { ...leave, deputy: null })
  await page.goto(program.url)
  await expect(rowOf(`Tell the owner the result of ${label}`)).toHaveCount(0)
  await page.getByRole('radio', { name: 'Everyone’s' }).check()
  await expect(rowOf(`Tell the owner the result of ${label}`).getByText('Imke Holm')).toBeVisible()
})
