import { expect, type Page } from '@playwright/test'

/** The talk about an agreement on its page, as a person goes through it. */
export class AgreementPage {
  readonly page: Page

  constructor(page: Page) {
    this.page = page
  }

  async choose(legend: string | RegExp, answer: string): Promise<void> {
    await this.page.getByRole('group', { name: legend }).getByRole('radio', { name: answer, exact: true }).check()
  }

  /** A contact of the household as the list says it. */
  async nameOf(contact: string): Promise<string> {
    const option = this.page.getByLabel('Who agrees', { exact: true }).locator(`option[value="${contact}"]`)
    return (await option.textContent()) ?? ''
  }

  /** The talk up to how consent is given. */
  async talkOver(who: string, authority: string): Promise<void> {
    const { page } = this
    await page.getByLabel('Who agrees', { exact: true }).selectOption({ label: who })
    await this.choose('On what authority', authority)
    await this.choose(/adult who can decide/, 'yes, asked')
    await this.choose('If the heart stops', 'do all you can')
    await this.choose('If we find that more is needed', 'phone first')
    await page.getByLabel('What exactly may be added').fill('The bulla may be opened from below.')
    await this.choose('Photos', 'for the record only')
    for (const item of ['Which ear is done', 'Care of the eye', 'The collar', 'When to phone']) {
      await this.choose(item, 'own words')
    }
    await this.choose('Two risks', 'not yet')
    await page.getByLabel('Two risks: what was said').fill('That she may not hear.')
  }

  /** Draws a line in the box with the mouse. */
  async sign(): Promise<void> {
    const { page } = this
    const box = await page.getByRole('img', { name: 'Sign in this box' }).boundingBox()
    if (!box) throw new Error('There is no box to sign in.')
    await page.mouse.move(box.x + 60, box.y + 80)
    await page.mouse.down()
    for (let step = 1; step <= 20; step += 1) {
      await page.mouse.move(box.x + 60 + step * 15, box.y + 80 + Math.sin(step) * 40)
    }
    await page.mouse.up()
    await expect(page.getByRole('img', { name: 'Signed, 1 stroke' })).toBeVisible()
  }
}
