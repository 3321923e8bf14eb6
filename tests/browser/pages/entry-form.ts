import { expect, type Page } from '@playwright/test'

/** The page on which one entry is written, as a person uses it: by the words on the screen. */
export class EntryForm {
  readonly page: Page

  constructor(page: Page) {
    this.page = page
  }

  static async open(page: Page, url: string, address: string): Promise<EntryForm> {
    await page.goto(`${url}/case/${address}`)
    await expect(page.getByRole('heading', { level: 1 })).toContainText(/Write|Correct|Settle/)
    return new EntryForm(page)
  }

  async type(label: string, text: string): Promise<void> {
    await this.page.getByLabel(label, { exact: true }).fill(text)
  }

  /** Chooses one answer of a question. */
  async choose(question: string, answer: string): Promise<void> {
    const named = { name: question, exact: true }
    const group = this.page.getByRole('radiogroup', named).or(this.page.getByRole('group', named))
    await group.getByRole('radio', { name: answer, exact: true }).check()
  }

  async restNotAssessed(): Promise<void> {
    await this.page.getByRole('button', { name: 'All that is still open: not assessed' }).click()
  }

  /** Keeps the entry; ends on the case. */
  async keep(): Promise<void> {
    await this.page.getByRole('button', { name: /^Keep/ }).click()
    await this.page.waitForURL(/\/case\/[^/]+(#.*|\?.*)?$/)
  }
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
