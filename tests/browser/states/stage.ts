import { type Browser, test as base, expect, type Page } from '@playwright/test'

import { enrol, nurse, openEmpty, openInvented, type Person, Program, signIn, surgeon } from '../clinic.ts'
import { copyUntil } from './case-until.ts'

/** Who sits at the screen: in the invented practice, or in a clinic without a case. */
export type Seat = 'first-run' | 'empty' | 'nobody' | 'surgeon' | 'desk' | 'shared'
export const desk: Person = { name: 'Wanda Quist', role: 'desk', login: 'wanda.quist' }

/**
 * Two running clinics and one browser at each seat, opened when the first state asks for it. Whoever needs a state
 * brings a page there and leaves it as it is; the next state begins with an address.
 */
export class Stage {
  readonly invented = new Program()
  readonly empty = new Program()
  readonly #browser: Browser
  readonly #pages = new Map<Seat, Page>()

  private constructor(browser: Browser) {
    this.#browser = browser
  }

  static async open(browser: Browser): Promise<Stage> {
    const stage = new Stage(browser)
    await Promise.all([stage.invented.start(), stage.empty.start()])
    const page = await stage.#newPage('surgeon')
    await openInvented(stage.invented, page)
    await copyUntil(stage.invented, page, 'Bracken', 'baseline')
    await copyUntil(stage.invented, page, 'Clover', 'choice')
    await copyUntil(stage.invented, page, 'Fennel', 'count')
    await copyUntil(stage.invented, page, 'Linden', 'operation-summary')
    return stage
  }

  url(seat: Seat): string {
    return (seat === 'empty' || seat === 'first-run' ? this.empty : this.invented).url
  }

  async page(seat: Seat): Promise<Page> {
    return this.#pages.get(seat) ?? (await this.#sit(seat))
  }

  async #sit(seat: Seat): Promise<Page> {
    const page = await this.#newPage(seat)
    const keeper = this.#pages.get('surgeon')
    if (!keeper) throw new Error('The surgeon opens the clinic and sits there first.')
    if (seat === 'empty') await openEmpty(this.empty, page, 'Wend Hill Referrals')
    if (seat === 'desk') await enrol(this.invented, keeper, desk, '2468', page)
    if (seat === 'shared') {
      await enrol(this.invented, keeper, nurse, '2468', page)
      await signIn(this.invented, page, surgeon, 'device-of-the-second')
    }
    return page
  }

  async #newPage(seat: Seat): Promise<Page> {
    const context = await this.#browser.newContext({ viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    page.setDefaultTimeout(20_000)
    this.#pages.set(seat, page)
    return page
  }

  async close(): Promise<void> {
    for (const page of this.#pages.values()) await page.context().close()
    await Promise.all([this.invented.stop(), this.empty.stop()])
  }
}

/** One stage for all tests of a run: what opens the clinics costs more than most states. */
export const test = base.extend<object, { stage: Stage }>({
  stage: [
    async ({ browser }, use) => {
      const stage = await Stage.open(browser)
      await use(stage)
      await stage.close()
    },
    { scope: 'worker', timeout: 120_000 },
  ],
})
export { expect }
