import type { Page } from '@playwright/test'
import { entriesOf } from '../clinic.ts'
import type { Stage } from './stage.ts'
import { open, type State } from './state.ts'

type Kind = 'specimen' | 'specimen-result'

/** The n-th entry of a kind in a case of the invented practice. */
async function entryOf(page: Page, stage: Stage, place: string, kind: Kind, at: number): Promise<string> {
  const all = (await entriesOf(stage.invented, page, `case:${place}`)).filter(({ header }) => header.kind === kind)
  return all[at]?.header.id ?? ''
}

function reportOf(name: string, place: string, at: number): State {
  return {
    name,
    seat: 'surgeon',
    printed: true,
    bring: async (page, url, stage) => {
      const report = await entryOf(page, stage, place, 'specimen-result', at)
      await open(page, `${url}/case/${place}/results/${report}`)
      for (const summary of await page.locator('main details > summary').all()) {
        if (/^(Every value|What to ask)/.test((await summary.textContent()) ?? '')) await summary.click()
      }
    },
  }
}

/** A report of a laboratory as it is read, and one while it is typed. */
export const culture: readonly State[] = [
  reportOf('report-of-culture', 'tansy', 0),
  reportOf('report-of-canal-swab', 'sorrel', 0),
  reportOf('report-of-no-growth', 'rowan', 0),
  reportOf('report-of-resistant', 'rowan', 1),
  reportOf('report-of-tissue', 'barley', 1),
  {
    name: 'report-typed-refused',
    seat: 'surgeon',
    bring: async (page, url, stage) => {
      const specimen = await entryOf(page, stage, 'sorrel', 'specimen', 1)
      await open(page, `${url}/case/sorrel/results/type/${specimen}`)
      await page.getByRole('radio', { name: 'growth', exact: true }).check()
      await page.getByLabel('Drug, drug 1 of organism 1').fill('Enrofloxacyne')
      await page.getByLabel('Result, drug 1 of organism 1').fill('0.5')
      await page.getByRole('button', { name: 'Keep the report' }).click()
      await page.locator('[aria-invalid="true"]').first().waitFor()
    },
  },
]
