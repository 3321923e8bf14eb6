import { expect, type Locator, type Page } from '@playwright/test'

/** The page on which one entry is written, as a person uses it: by the words on the screen. */
export class EntryForm {
  readonly page: Page
  /** The part of the page that answers are given in. */
  readonly part: Page | Locator

  constructor(page: Page, part: Page | Locator = page) {
    this.page = page
    this.part = part
  }

  static async open(page: Page, url: string, address: string): Promise<EntryForm> {
    await page.goto(`${url}/case/${address}`)
    return EntryForm.here(page)
  }

  /** The form that this page has just come to. */
  static async here(page: Page): Promise<EntryForm> {
    await expect(page.getByRole('heading', { level: 1 })).toContainText(/Write|Correct|Settle/)
    return new EntryForm(page)
  }

  /** A named part of the form: one ear, one item of a list. */
  within(name: string): EntryForm {
    const named = { name, exact: true }
    return new EntryForm(this.page, this.part.getByRole('region', named).or(this.part.getByRole('group', named)))
  }

  async type(label: string, text: string): Promise<void> {
    await this.part.getByLabel(labelled(label)).fill(text)
  }

  /** Takes from a list to open the one line in which these words stand. */
  async pick(label: string, words: string): Promise<void> {
    const list = this.part.getByLabel(labelled(label))
    const value = await list.getByRole('option').filter({ hasText: words }).getAttribute('value')
    await list.selectOption(value)
  }

  /** Takes the one line that says just these words, where others hold them too. */
  async pickOnly(label: string, words: string): Promise<void> {
    await this.part.getByLabel(labelled(label)).selectOption({ label: words })
  }

  /** Chooses one answer of a question. */
  async choose(question: string, answer: string): Promise<void> {
    const named = { name: labelled(question) }
    const group = this.part.getByRole('radiogroup', named).or(this.part.getByRole('group', named))
    await group.getByRole('radio', { name: answer, exact: true }).check()
  }

  async chooseAll(answers: Readonly<Record<string, string>>): Promise<void> {
    for (const [question, answer] of Object.entries(answers)) await this.choose(question, answer)
  }

  async typeAll(texts: Readonly<Record<string, string>>): Promise<void> {
    for (const [label, text] of Object.entries(texts)) await this.type(label, text)
  }

  async tick(words: string): Promise<void> {
    await this.part.getByRole('checkbox', { name: words, exact: true }).check()
  }

  /** One more item of a list; what it asks is answered within it. */
  async add(words: string, item: string): Promise<EntryForm> {
    await this.part.getByRole('button', { name: words, exact: true }).click()
    return this.within(item)
  }

  /** Says that it happened at another time than now. */
  async at(moment: string): Promise<void> {
    await this.page.getByRole('radio', { name: 'At another time', exact: true }).check()
    await this.type('Day and time, as well as you know it', moment)
  }

  async restNotAssessed(): Promise<void> {
    await this.page.getByRole('button', { name: 'All that is still open: not assessed' }).click()
  }

  /** Keeps the entry; ends on the case. Answers with the id of the entry, or of the first of two. */
  async keep(): Promise<string> {
    await this.page.getByRole('button', { name: /^Keep/ }).click()
    await this.page.waitForURL(/\/case\/[^/]+\?kept=/)
    return new URL(this.page.url()).searchParams.get('kept') ?? ''
  }
}

/** A label by all its words; one that may stay empty says so behind them. */
function labelled(label: string): RegExp {
  return new RegExp(`^${label.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}( optional)?$`)
}

/** A weight on the scale, the shortest entry there is. */
export async function writeWeight(page: Page, url: string, stream: string, weight: string): Promise<void> {
  const form = await EntryForm.open(page, url, `${stream}/write/weight`)
  await fillWeight(form, weight)
  await form.keep()
}

export async function fillWeight(form: EntryForm, weight: string): Promise<void> {
  await form.type('Weight with its unit', weight)
  await form.choose('How do we know?', 'on the scale')
  await form.choose('Body condition, 1 thin to 9 fat', '5')
}
