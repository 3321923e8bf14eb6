import { askedAgain, entriesOf, expect, openInvented, test } from './clinic.ts'

test('an anaesthetic over midnight and over the change of the clocks: order, minutes and paper are those of real time', async ({
  page,
  program,
}) => {
  test.slow()
  await openInvented(program, page)
  const room = `${program.url}/case/juniper/room/operation-juniper`
  await page.goto(`${room}/paper`)
  await page.getByLabel('Day on the sheet').fill('24 October 2026')
  const time = (what: string) => page.getByLabel(`Time of: ${what}`)
  await time('Anaesthesia began').fill('23:10')
  await time('Incision').fill('23:40')
  await time('Wound closed').fill('1:50')
  await time('Tube out').fill('02:05')
  // 01:30 was twice in that night; 02:05 came once, after the clocks had gone back.
  const looks = [
    ['23:55', '90'],
    ['1:30+01:00', '95'],
    ['1:30+00:00', '99'],
  ] as const
  for (const [index, [at, rate]] of looks.entries()) {
    await page.getByRole('button', { name: 'One more observation' }).click()
    const look = page.getByRole('group', { name: `Observation ${index + 1}` })
    await look.getByLabel('Time', { exact: true }).fill(at)
    await look.getByLabel(/^Heart rate/).fill(rate)
  }
  await page.getByRole('button', { name: /^Keep/ }).click()
  await expect(page.getByText('One place must be put right; nothing is kept before.')).toBeVisible()
  await expect(page.getByText(/showed 1:50 twice.*01:50\+01:00, 01:50\+00:00/)).toBeVisible()
  await time('Wound closed').fill('01:50+00:00')
  await page.getByRole('button', { name: 'Keep 7 entries' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('In theatre')
  await expect(page.getByText('kept here')).toHaveCount(0, { timeout: 20_000 })

  const written = (await entriesOf(program, page, 'case:juniper')).filter(
    ({ header }) => header.reason === 'Typed in from the paper sheet.',
  )
  const at = written.map(({ header, body }) => [body.checkpoint ?? header.kind, header.happenedAt.at.slice(5, 16)])
  expect(at.sort(([, a], [, b]) => String(a).localeCompare(String(b)))).toEqual([
    ['anaesthesia-start', '10-24T22:10'],
    ['incision', '10-24T22:40'],
    ['observation', '10-24T22:55'],
    ['observation', '10-25T00:30'],
    ['observation', '10-25T01:30'],
    ['closed', '10-25T01:50'],
    ['tube-out', '10-25T02:05'],
  ])

  // The ledger stands in real order, says that the clock went back, and counts minutes that passed.
  await page.goto(`${room}/ledger`)
  await expect(page.getByText(/The clock goes back: .* Minutes are real ones\./)).toBeVisible()
  await expect(page.getByText('NOTHING MEASURED from 23:55 to 01:30: 95 min')).toBeVisible()
  await expect(page.getByText('NOTHING MEASURED from 01:30 to 01:30: 60 min')).toBeVisible()
  const record = await (
    await page
      .context()
      .request.get(`${program.url}/api/papers/case%3Ajuniper/anaesthetic-record-operation-juniper.txt`, askedAgain)
  ).text()
  // 23:10 in summer time to 02:05 in winter time is 3 h 55 min.
  expect(record).toContain('235 min')
  expect(record).toMatch(/The clock goes back/)
})
