import { expect, type Locator, type Page } from '@playwright/test'
import { EntryForm } from './entry-form.ts'

/** The page of one case, as a person uses it: chapters, what is owed in them, and the menus to write. */
export class CasePage {
  readonly page: Page

  constructor(page: Page) {
    this.page = page
  }

  chapter(name: string): Locator {
    return this.page.locator('section', { has: this.page.getByRole('heading', { level: 2, name, exact: true }) })
  }

  /** How a chapter stands: "open", "done", "not reached yet"; beside its name, in the list of chapters. */
  standing(name: string): Locator {
    const contents = this.page.getByRole('navigation', { name: 'On this page' })
    return contents.getByRole('listitem').filter({ has: this.page.getByRole('link', { name, exact: true }) })
  }

  /** The link that writes what settles an owed thing; the same may also stand among what is missing. */
  owed(what: string): Locator {
    return this.page.getByRole('link', { name: spoken(`Write it: ${what}`) }).and(this.page.locator('[href*="owed="]'))
  }

  /** The link that completes an entry in which something is missing. */
  missing(what: string): Locator {
    return this.page.getByRole('link', { name: spoken(`Complete it: ${what}`) })
  }

  entry(id: string): Locator {
    return this.page.locator(`#entry-${id}`)
  }

  /** Opens a form from the menu of a chapter, by its name there. */
  async write(chapter: string, name: string): Promise<EntryForm> {
    const here = this.chapter(chapter)
    await here.locator(`summary[aria-label="Write: ${chapter}"]`).click()
    await here.getByRole('link', { name: spoken(name) }).click()
    return EntryForm.here(this.page)
  }

  async settle(what: string): Promise<EntryForm> {
    await this.owed(what).click()
    const form = await EntryForm.here(this.page)
    await expect(this.page.getByText(`Settles: ${what}`)).toBeVisible()
    return form
  }
}

/** A name of which a part is for the ear alone: the browser may hear a space between the parts. */
function spoken(name: string): RegExp {
  return new RegExp(
    `^${name
      .replaceAll('(', '\\(')
      .replaceAll(')', '\\)')
      .replace(/ ?([:,])/g, ' ?$1')}$`,
  )
}
