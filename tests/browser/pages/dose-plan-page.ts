import { expect, type Locator, type Page } from '@playwright/test'
import { entriesOf, nurse, type Program } from '../clinic.ts'
import { EntryForm } from './entry-form.ts'

/** A line as it is planned by hand. */
type TypedLine = {
  readonly name: string
  readonly drug: string
  readonly use: RegExp
  readonly route: string
  readonly dose: string
  readonly strength: string
}

/** The dose plan of one operation, as a person uses it. */
export class DosePlanPage {
  readonly page: Page
  readonly address: string

  constructor(page: Page, address: string) {
    this.page = page
    this.address = address
  }

  /** Books one ear of an animal, and gives the dose plan of that operation. */
  static async book(program: Program, page: Page, animal: string, side: 'LEFT' | 'RIGHT', when: string) {
    const booking = await EntryForm.open(page, program.url, `${animal}/write/booking`)
    await booking.choose('Side', side)
    await booking.choose('Operation', 'Total ear canal ablation with lateral bulla osteotomy')
    await booking.type('Planned for', when)
    await booking.pick('Surgeon', 'Imke Holm')
    await booking.pick('Anaesthetist', 'Tomas Adeyemi')
    await booking.pick('Under which agreement?', 'no agreement yet')
    const id = await booking.keep()
    const find = async () => {
      const entries = await entriesOf(program, page, `case:${animal}`)
      return entries.find(({ header }) => header.id === id)?.header.subject as { operation?: string } | undefined
    }
    await expect.poll(async () => (await find())?.operation).toBeTruthy()
    const { operation = '' } = (await find()) ?? {}
    return new DosePlanPage(page, `${program.url}/case/${animal}/doses/${encodeURIComponent(operation)}`)
  }

  /** The same plan on another person's screen. */
  at(page: Page): DosePlanPage {
    return new DosePlanPage(page, this.address)
  }

  async open(): Promise<void> {
    await this.page.goto(this.address)
    await expect(this.page.getByRole('heading', { level: 1, name: 'Dose plan' })).toBeVisible()
  }

  line(drug: string): Locator {
    return this.page.getByRole('listitem').filter({ hasText: drug }).filter({ hasText: 'Why this dose' })
  }

  /** Types a line; whether it can be kept is for the journey to see. */
  async type({ name, drug, use, route, dose, strength }: TypedLine): Promise<void> {
    await this.open()
    await this.page.getByRole('link', { name: 'Add a line' }).click()
    await this.page.getByLabel('Name of the line').fill(name)
    await this.page.getByLabel('Drug', { exact: true }).selectOption(drug)
    await this.page.getByRole('radio', { name: use }).first().check()
    await this.page.getByRole('radio', { name: route, exact: true }).first().check()
    await this.page.getByLabel('Dose', { exact: true }).fill(dose)
    await this.page.getByLabel('Why this dose').fill('Chosen by the anaesthetist of this journey.')
    const typed = this.page.getByLabel('Strength on the label')
    if (!(await typed.isVisible())) await this.page.getByLabel('From our shelf').selectOption('')
    await typed.fill(strength)
  }

  async keep(): Promise<void> {
    const why = this.page.getByLabel('Why it is right all the same')
    if (await why.isVisible()) await why.fill('Looked at, and meant so.')
    await this.page.getByRole('button', { name: 'Keep this line' }).click()
    await expect(this.page.getByRole('heading', { level: 1, name: 'Dose plan' })).toBeVisible()
  }

  /** Every line that waits is ticked and signed by the second person at this screen. */
  async sign(verdict: 'I agree' | 'Nobody available', text: string | null, who = nurse.name): Promise<void> {
    const ticks = this.page.getByRole('group', { name: 'Tick the lines you worked out again.' }).getByRole('checkbox')
    await expect(ticks.first()).toBeVisible()
    for (let at = 0; at < (await ticks.count()); at += 1) await ticks.nth(at).check()
    await this.page.getByRole('radio', { name: verdict, exact: true }).check()
    if (text !== null) await this.page.getByLabel('In words').fill(text)
    await this.page.getByRole('button', { name: `Sign: ${who}` }).click()
  }
}
