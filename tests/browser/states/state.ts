import type { Page } from '@playwright/test'
import { expect } from '@playwright/test'
import type { Seat, Stage } from './stage.ts'

/** A screen in one of its states: who sits there, and how a page comes there. */
export type State = {
  readonly name: string
  readonly seat: Seat
  readonly bring: (page: Page, url: string, stage: Stage) => Promise<void>
  /** Undoes what would follow the page into the next state. */
  readonly leave?: (page: Page) => Promise<void>
  /** Also looked at on paper. */
  readonly printed?: boolean
}

/** A state that is an address and no more. */
export function at(seat: Seat, name: string, path: string, printed = false): State {
  return { name, seat, printed, bring: (page, url) => open(page, `${url}${path}`) }
}

/** Opens an address and waits until it stands there. */
export async function open(page: Page, address: string): Promise<void> {
  await page.goto(address)
  await page.locator('h1').first().waitFor()
  await expect(page.getByText('Reading …')).toHaveCount(0, { timeout: 30_000 })
}
