import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { caution } from '#content/wording/caution.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { expectAccessible } from './accessible.ts'
import { askedAgain, expect, openInvented, type Program, test } from './clinic.ts'

/** Line breaks are the page's, not the sentence's. */
function unspaced(text: string): string {
  return text.replaceAll(/[\s\u200b\u00ad]/g, '')
}

async function openPapers(page: Page, program: Program, animal: string): Promise<void> {
  await page.goto(`${program.url}/case/${animal}`)
  await page.getByText('Show the papers of this case').click()
}

test('the papers of a case are printed from its page, each with its side and the one line of caution', async ({
  page,
  program,
}) => {
  ensureDebian(['poppler-utils'])
  await openInvented(program, page)
  await openPapers(page, program, 'barley')
  const link = page.getByRole('link', { name: /^Dose sheet.*, (LEFT|RIGHT) ear, PDF$/ })
  await expect(link).toBeVisible()
  const answer = await page
    .context()
    .request.get(new URL((await link.getAttribute('href')) ?? '', program.url).href, askedAgain)
  expect(answer.headers()['content-type']).toBe('application/pdf')
  const file = join(program.folder, 'sheet.pdf')
  writeFileSync(file, await answer.body())
  const printed = unspaced(execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }))
  expect(printed).toContain(unspaced(caution))
  expect(printed).toContain('Barley')
  await expectAccessible(page)

  const leaflet = page.waitForEvent('popup')
  await page.getByRole('link', { name: /leaflet.*, page$/i }).click()
  await expect((await leaflet).getByRole('heading', { level: 1 })).toBeVisible()
})

test('a paper that is not reached says what it waits for, and none is offered while the server is away', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  await openPapers(page, program, 'teasel')
  await expect(page.getByText(/the animal has not gone home yet\.$/).first()).toBeVisible()
  await expect(page.getByRole('link', { name: /home.*PDF/i })).toHaveCount(0)
  await page.evaluate('navigator.serviceWorker.ready.then(() => null)')
  await page.context().setOffline(true)
  await page.reload()
  await page.getByText('Show the papers of this case').click()
  await expect(page.getByText(/^Papers are made by the server\./)).toBeVisible({ timeout: 30_000 })
  await page.context().setOffline(false)
  await expect(page.getByRole('link', { name: /emergency.*PDF/i })).toBeVisible({ timeout: 30_000 })
})
