import type { Page } from '@playwright/test'
import { leafletEdition } from '#content/wording/leaflet.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { enrol, entriesOf, expect, nurse, openEmpty, type Person, surgeon, test } from './clinic.ts'
import { CasePage } from './pages/case-page.ts'
import { EntryForm } from './pages/entry-form.ts'

const teca = 'Total ear canal ablation with lateral bulla osteotomy'
const firstCall = 'First call after surgery'
const stitches = 'Stitches and wound, LEFT ear'
const afterAYear = 'How the LEFT ear is after a year'
const weighing = 'Weight on the scale'

/** A person at a screen of their own, with the case before them. */
class AtWork {
  readonly person: Person
  readonly page: Page
  readonly case: CasePage

  constructor(person: Person, page: Page) {
    this.person = person
    this.page = page
    this.case = new CasePage(page)
  }

  /** An entry of somebody else stands here by itself, with its author and, where it has one, its side as a word. */
  async sees(id: string, writer: AtWork, side: 'LEFT' | 'RIGHT' | null = null): Promise<void> {
    const line = this.case.entry(id).locator('summary').first()
    await expect(line).toContainText(`by ${writer.person.name}`)
    if (side === null) return
    await expect(line).toContainText(side)
    await expect(line).not.toContainText(side === 'LEFT' ? 'RIGHT' : 'LEFT')
  }
}

test('from the call to a year after: a nurse and a surgeon write one course at two screens', async ({
  page,
  browser,
  program,
}) => {
  test.setTimeout(180_000)
  await openEmpty(program, page, 'Wend Hill Referrals')
  const other = await (await browser.newContext()).newPage()
  await enrol(program, page, nurse, '2468', other)
  const knife = new AtWork(surgeon, page)
  const desk = new AtWork(nurse, other)
  for (const { page: screen } of [knife, desk]) screen.setDefaultTimeout(15_000)

  await test.step('the call', async () => {
    await page.goto(`${program.url}/find`)
    await expect(page.getByText('There is no case yet.')).toBeVisible()
    await other.goto(`${program.url}/new`)
    await takeTheCall(other)
    await page.getByRole('link', { name: 'Bramble' }).click()
    for (const { page: screen } of [knife, desk]) {
      await expect(screen.getByRole('heading', { level: 1, name: 'Bramble' })).toBeVisible()
      // Gone if this page is ever loaded again: all that follows has to arrive by itself.
      await screen.evaluate('void (globalThis.stayed = true)')
    }
  })

  await test.step('who it is', async () => {
    await desk.case.missing('The chip number').click()
    const form = await EntryForm.here(other)
    await form.type('Chip number', '000000000004711')
    await form.type('Reason', 'The chip was read at the first visit.')
    await knife.sees(await form.keep(), desk)
    await expect(knife.case.missing('The chip number')).toHaveCount(0)
  })

  await test.step('the work-up', async () => {
    await expect(knife.case.standing('Choice')).toContainText('not reached yet')
    const weight = await desk.case.write('Work-up', 'Weight')
    await weight.at('17 January 2023, 10:00')
    await weight.type('Weight with its unit', '21.4 kg')
    await weight.chooseAll({ 'How do we know?': 'on the scale', 'Body condition, 1 thin to 9 fat': '6' })
    await knife.sees(await weight.keep(), desk)
    await knife.sees(await writeBaseline(desk), desk)

    await writeFindings(knife)
    for (const side of ['LEFT', 'RIGHT'] as const) {
      const [line] = (await entriesOf(program, page, streamOf(page))).filter(
        ({ header }) => header.kind === 'ear-findings' && header.subject.side === side,
      )
      await desk.sees(line?.header.id ?? '', knife, side)
    }
    await knife.sees(await writeImaging(desk), desk)
  })

  await test.step('choice and agreement', async () => {
    await desk.sees(await choose(knife), knife, 'LEFT')
    await expect(desk.case.standing('Choice')).not.toContainText('not reached yet')
    await desk.sees(await agree(knife), knife)
    await expect(desk.case.standing('Agreement')).not.toContainText('not reached yet')
    await knife.sees(await book(desk), desk, 'LEFT')
    await expect(knife.case.owed(weighing)).toBeVisible()
    await expect(knife.case.owed(firstCall)).toHaveCount(0)
  })

  await test.step('theatre', async () => {
    const weight = await desk.case.settle(weighing)
    await weight.at('13 February 2023, 07:45')
    await weight.type('Weight with its unit', '21.1 kg')
    await weight.chooseAll({ 'How do we know?': 'on the scale', 'Body condition, 1 thin to 9 fat': '6' })
    await knife.sees(await weight.keep(), desk)
    await expect(knife.case.owed(weighing)).toHaveCount(0)
    await knife.sees(await stamp(desk, 'Anaesthesia began', '09:05'), desk, 'LEFT')
    await knife.sees(await stamp(desk, 'Incision', '09:40'), desk, 'LEFT')
    await expect(knife.case.standing('Theatre')).not.toContainText('not reached yet')
    const cut = { 'Skin cut': 'The skin was cut in a T over the vertical canal.' }
    await desk.sees(await stamp(knife, 'Skin', '09:42', cut), knife, 'LEFT')
    await desk.sees(await summarise(knife), knife, 'LEFT')
    await expect(desk.case.standing('Ward')).not.toContainText('not reached yet')
  })

  await test.step('going home', async () => {
    const form = await desk.case.write('Home', 'Discharge')
    await form.add('Add a medicine', 'Medicine 1')
    await other.getByRole('button', { name: 'Keep it' }).click()
    await expect(other.getByText(/answers are missing or cannot be read/)).toBeVisible()
    await expectAccessible(other)
    await knife.sees(await dischargeWith(form), desk)
    await expect(knife.case.standing('Home')).toContainText('open')
  })

  await test.step('what is owed at home, and what settles it', async () => {
    for (const { case: file } of [knife, desk]) {
      for (const what of [firstCall, stitches, afterAYear]) await expect(file.owed(what)).toBeVisible()
    }
    await knife.sees(await callHome(desk), desk)
    for (const { case: file } of [knife, desk]) await expect(file.owed(firstCall)).toHaveCount(0)

    await desk.sees(await takeStitchesOut(knife), knife, 'LEFT')
    for (const { case: file } of [knife, desk]) await expect(file.owed(stitches)).toHaveCount(0)
    await expect(desk.case.owed(afterAYear)).toBeVisible()
  })

  await test.step('a year after, found among everything that is owed', async () => {
    await other.getByRole('link', { name: 'Owed', exact: true }).click()
    await expect(other.getByRole('link', { name: firstCall })).toHaveCount(0)
    await other.getByRole('link', { name: afterAYear }).click()
    const form = await desk.case.settle(afterAYear)
    await form.at('19 February 2024, 10:20')
    await form.chooseAll({
      'How do we know?': 'our examination',
      'The ear is': 'solved',
      'Face on this side': 'normal',
      'Would the owner choose it again?': 'yes',
    })
    await form.type('Tries to reach the owner', '1')
    await knife.sees(await form.keep(), desk, 'LEFT')
    for (const { case: file } of [knife, desk]) await expect(file.owed(afterAYear)).toHaveCount(0)
    await expect(knife.case.standing('Year')).not.toContainText('not reached yet')
  })

  await test.step('the finished case', async () => {
    for (const { page: screen } of [knife, desk]) {
      expect(await screen.evaluate('globalThis.stayed')).toBe(true)
      await expect(screen.getByText('LEFT or RIGHT: the sources disagree')).toHaveCount(0)
      await expect(screen.locator('main')).not.toContainText(/\b(?:[Ll]eft|[Rr]ight|[LR]) (?:ear|side)\b/)
    }
    await expectAccessible(page)
    await page.setViewportSize({ width: 390, height: 844 })
    await expectNoSidewaysScroll(page)
    await expectAccessible(page)
  })
  await other.context().close()
})

/** The stream of the case that a page shows. */
function streamOf(page: Page): string {
  return `case:${new URL(page.url()).pathname.split('/')[2]}`
}

async function takeTheCall(page: Page): Promise<void> {
  const form = new EntryForm(page)
  await form.choose('Who calls?', 'the owner')
  const animal = form.within('Animal')
  await animal.typeAll({ Name: 'Bramble', Born: 'May 2016', Breed: 'Cocker Spaniel' })
  await animal.chooseAll({ Species: 'dog', 'Flat-faced?': 'no', Sex: 'female', 'Neutered?': 'yes' })
  await form.within('Owner').typeAll({ Name: 'Hedy Marlowe', Phone: '01632 960301' })
  await form.chooseAll({ 'Which ear, as the caller says it?': 'LEFT', 'Head tilt': 'no' })
  await form.type('What is wrong, in their words', 'It smells and she cries when it is touched.')
  await page.getByRole('button', { name: 'No to all that are still open' }).click()
  await form.chooseAll({
    'Was a drug ever not tolerated?': 'no',
    'May we fetch the records?': 'yes',
    'Your decision': 'this week',
  })
  await form.type('In your words', 'Painful, eats and drinks.')
  await page.getByRole('button', { name: 'Keep the referral' }).click()
  await page.getByRole('link', { name: 'Open the case of Bramble' }).click()
}

async function writeBaseline({ case: file }: AtWork): Promise<string> {
  const form = await file.write('Work-up', 'Face, eye and balance')
  await form.at('17 January 2023, 10:10')
  await form.choose('Was this looked at before any sedative?', 'yes')
  await form.tick('none')
  for (const side of ['LEFT', 'RIGHT']) {
    const ear = form.within(side)
    await ear.chooseAll({
      Blink: 'normal',
      'Lip or ear droops': 'no',
      Nostril: 'moist',
      Pupil: 'normal',
      'Third eyelid up': 'no',
      'Fluorescein on the cornea': 'no stain',
    })
    await ear.type('Tear test', side === 'LEFT' ? '16' : '18')
  }
  await form.restNotAssessed()
  return form.keep()
}

async function writeFindings({ case: file }: AtWork): Promise<void> {
  const form = await file.write('Work-up', 'BOTH')
  await form.at('17 January 2023, 10:20')
  const ill = form.within('LEFT')
  await ill.chooseAll({
    'The animal was': 'awake',
    'Ear flap': 'hangs',
    'Canal feels': 'hard as bone',
    'Pain on pressing': 'yes',
    Discharge: 'purulent',
    Narrowing: 'closed',
    'Ear drum': 'could not be seen',
    Mass: 'no',
  })
  await form.within('RIGHT').chooseAll({ 'The animal was': 'awake', 'Ear flap': 'hangs', 'Canal feels': 'soft' })
  for (const side of ['LEFT', 'RIGHT']) {
    const rest = `Rest of the ${side} ear: not assessed`
    await form.within(side).part.getByRole('button', { name: rest }).click()
  }
  await form.keep()
}

async function writeImaging({ case: file }: AtWork): Promise<string> {
  const form = await file.write('Work-up', 'Imaging')
  await form.at('17 January 2023, 12:00')
  await form.choose('Study', 'CT')
  await form.typeAll({ 'Reported by': 'Dr Okoro', 'The report in short': 'LEFT bulla filled, its wall thick.' })
  const answer = 'Does the report speak of this ear?'
  const ill = form.within('LEFT')
  await ill.choose(answer, 'described')
  await ill.chooseAll({ Bulla: 'filled', 'Wall of the bulla': 'thick', 'Mineral in the canal': 'yes', Mass: 'no' })
  await form.within('RIGHT').choose(answer, 'not mentioned')
  return form.keep()
}

async function choose({ case: file }: AtWork): Promise<string> {
  const form = await file.write('Choice', 'Choice: LEFT')
  await form.at('17 January 2023, 14:00')
  await form.type('Speaks for an operation', 'The canal is closed and hard as bone.')
  await form.type('Speaks against, or must be known first', 'The face may be weak afterwards.')
  const options = [
    ['total ear canal ablation', 'chosen', 'Nothing else reaches the bulla.'],
    ['no treatment', 'declined', 'It hurts every day.'],
  ] as const
  for (const [index, [option, answer, because]] of options.entries()) {
    const item = `Option ${index + 1}`
    const one = index === 0 ? form.within(item) : await form.add('Add an option', item)
    await one.pick('Option', option)
    await one.choose('Answer', answer)
    await one.type('Because', because)
  }
  await form.choose('Session', 'one ear only')
  return form.keep()
}

async function agree({ case: file }: AtWork): Promise<string> {
  const form = await file.write('Agreement', 'Agreement and consent')
  await form.at('17 January 2023, 15:00')
  await form.within('Ear 1').chooseAll({ Side: 'LEFT', Operation: teca })
  await form.pick('Who operates', surgeon.name)
  await form.typeAll({
    'Leaflet that was read': leafletEdition,
    'Language of the talk': 'en',
    'We expect at least': '2600.00',
    'We expect at most': '3400.00',
    'Never more than this without the owner’s word': '3600.00',
  })
  await form.chooseAll({
    'If the heart stops': 'do all you can',
    'If we find that more is needed': 'phone first',
    Photos: 'for the record only',
  })
  for (const [index, item] of ['which ear', 'two risks', 'eye care', 'the collar', 'when to phone'].entries()) {
    const one = await form.add('Add an item', `Item ${index + 1}`)
    await one.choose('Item', item)
    await one.choose('First answer', 'in own words')
    await one.choose('After explaining again', 'not asked again')
  }
  await form.pick('Talked over by', surgeon.name)
  await form.pick('Who consents', 'Hedy Marlowe')
  await form.pickOnly('On what authority', 'the owner')
  await form.chooseAll({
    'How the owner authorised this person': 'not authorised by another',
    'An adult who can decide?': 'yes',
    'How consent was given': 'signed on paper',
    'Copy for the owner': 'given on paper',
  })
  return form.keep()
}

async function book({ case: file }: AtWork): Promise<string> {
  const form = await file.write('Agreement', 'Booking')
  await form.at('17 January 2023, 15:30')
  await form.chooseAll({ Side: 'LEFT', Operation: teca })
  await form.type('Planned for', '13 February 2023, 09:00')
  await form.pick('Surgeon', surgeon.name)
  await form.pick('Under which agreement?', '17 January 2023')
  return form.keep()
}

async function stamp(
  { case: file }: AtWork,
  checkpoint: string,
  time: string,
  details: Readonly<Record<string, string>> = {},
): Promise<string> {
  const form = await file.write('Theatre', 'Checkpoint: LEFT ear, an operation')
  await form.at(`13 February 2023, ${time}`)
  await form.part.getByLabel('Which point?').selectOption({ label: checkpoint })
  await form.choose('Done?', 'done')
  await form.chooseAll(details)
  return form.keep()
}

async function summarise({ case: file }: AtWork): Promise<string> {
  const form = await file.write('Theatre', 'Summary of the operation: LEFT ear, an operation')
  await form.at('13 February 2023, 11:30')
  await form.chooseAll({ 'Side that was operated': 'LEFT', Operation: teca, 'Was a drain left in?': 'no' })
  await form.typeAll({
    Incision: '13 February 2023, 09:40',
    Closed: '13 February 2023, 11:05',
    Indication: 'Closed, mineral canal with filled bulla.',
    Findings: 'Bulla full of debris; nerve seen and left alone.',
    Plan: 'One night in the ward.',
  })
  await form.pick('Surgeon', surgeon.name)
  await form.within('Complications').tick('none')
  await form.pick('Signed by', surgeon.name)
  await form.page.getByRole('button', { name: 'I have read what was drafted' }).click()
  return form.keep()
}

/** Answers the form of a discharge in which one medicine was added already. */
async function dischargeWith(form: EntryForm): Promise<string> {
  await form.at('14 February 2023, 10:00')
  const medicine = form.within('Medicine 1')
  await medicine.pick('Drug', 'Meloxicam')
  await medicine.typeAll({
    'Name on the box': 'Meloxicam chewable tablet 1 mg',
    'What it is for, in plain words': 'pain and swelling',
    Strength: '1 mg in a tablet',
    'Each time': '2',
    'Clock times': '08:00',
    'First day at home': '15 February 2023',
    'First time on that day': '08:00',
    'For how many days': '7',
  })
  await medicine.chooseAll({ Form: 'tablet', 'On which days': 'every day', 'With food?': 'with food' })
  await form.typeAll({
    'Collar until': '27 February 2023',
    Food: 'Soft food for two weeks.',
    'Rest and walks': 'Short walks on the lead.',
    'Next visit': '27 February 2023',
  })
  await form.choose('Stitches', 'to come out')
  await form.choose('when to phone', 'in own words')
  await form.pick('Talked over by', nurse.name)
  return form.keep()
}

async function callHome({ case: file }: AtWork): Promise<string> {
  const form = await file.settle(firstCall)
  await form.choose('What it is about', 'the household')
  await form.at('15 February 2023, 15:00')
  await form.pick('With whom', 'Hedy Marlowe')
  await form.chooseAll({ 'Who called?': 'we called', How: 'phone', 'Reached?': 'yes' })
  await form.pick('About', firstCall.toLowerCase())
  await form.type('What was said', 'Eats, wears the collar, blinks.')
  return form.keep()
}

async function takeStitchesOut({ case: file }: AtWork): Promise<string> {
  const form = await file.settle(stitches)
  await form.at('27 February 2023, 09:30')
  await form.chooseAll({
    'Seen by': 'us',
    Wound: 'closed',
    'What did the wound need?': 'nothing',
    Stitches: 'out',
    Painful: 'no',
    Blink: 'normal',
    'Lip or ear droops': 'no',
    'Could a local block still be at work?': 'no',
    'Horner’s syndrome': 'no',
    'Head tilt': 'no',
    'Fluorescein on the cornea': 'no stain',
  })
  await form.type('Tear test', '15')
  await form.restNotAssessed()
  return form.keep()
}
