import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { keepFormer } from '../../scripts/build.mjs'
import { expectAccessible } from './accessible.ts'
import { expect, openInvented, Program, test } from './clinic.ts'
import { EntryForm } from './pages/entry-form.ts'

const repository = fileURLToPath(new URL('../..', import.meta.url))

/** A copy of the built program whose files a journey may take away, served over a data folder of its own. */
async function withBundle(doing: (program: Program, bundle: string) => Promise<void>): Promise<void> {
  const bundle = mkdtempSync(join(repository, '.cache/bundle-'))
  cpSync(join(repository, 'dist'), bundle, { recursive: true })
  const program = new Program(join(bundle, 'cli.js'))
  try {
    await program.start()
    await doing(program, bundle)
  } finally {
    await program.stop()
    rmSync(bundle, { recursive: true, force: true })
  }
}

/** The files that only a later page needs, by the manifest of the bundle. */
function laterParts(web: string): string[] {
  const manifest = JSON.parse(readFileSync(join(web, '.vite/manifest.json'), 'utf8')) as Record<
    string,
    { readonly file: string; readonly isEntry?: boolean; readonly imports?: readonly string[] }
  >
  const first = new Set(Object.keys(manifest).filter((name) => manifest[name]?.isEntry))
  for (const name of first) for (const imported of manifest[name]?.imports ?? []) first.add(imported)
  const names = Object.keys(manifest).filter((name) => !first.has(name) && manifest[name]?.file.endsWith('.js'))
  return names.map((name) => manifest[name]?.file ?? '')
}

/** Serves the app without what a later page needs, as after a newer build: the open page knows only the old names. */
async function withoutLaterParts(program: Program, bundle: string, doing: () => Promise<void>): Promise<void> {
  const web = join(bundle, 'web')
  const gone = laterParts(web).flatMap((file) => [file, `${file}.gz`, `${file}.br`])
  const there = gone.filter((file) => readdirSync(join(web, 'assets')).includes(file.replace('assets/', '')))
  for (const file of there) renameSync(join(web, file), join(web, `${file}.gone`))
  await program.kill()
  await program.start()
  await doing()
  for (const file of there) renameSync(join(web, `${file}.gone`), join(web, file))
  await program.kill()
  await program.start()
}

test('a part that a newer build took away says so, and the new version is loaded with what was typed', async ({
  browser,
}) => {
  await withBundle(async (program, bundle) => {
    // Without TLS there is no service worker: only the open page has the app's files.
    const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
    await openInvented(program, page)
    const form = await EntryForm.open(page, program.url, 'tansy/write/weight')
    await form.type('Weight with its unit', '18.7 kg')
    await withoutLaterParts(program, bundle, async () => {
      // This device has never opened that page, so its browser has no copy of the parts either.
      await (await page.context().newCDPSession(page)).send('Network.clearBrowserCache')
      await page.goto(program.url)
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
      await page.evaluate("history.pushState(null, '', '/case/tansy/write/weight')")
      await expect(page.getByRole('heading', { name: 'This part of the program cannot be loaded' })).toBeVisible()
      await expect(page.getByText('1 draft that was begun in a form')).toBeVisible()
      await expectAccessible(page)
      await page.screenshot({ path: test.info().outputPath('part-gone.png'), fullPage: true })
    })
    await page.getByRole('button', { name: 'Load the new version' }).click()
    await expect(page.getByLabel('Weight with its unit')).toHaveValue('18.7 kg')
  })
})

test('a first visit that loses the connection says what is not here yet, and goes on when it is back', async ({
  browser,
}) => {
  await withBundle(async (program, bundle) => {
    const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
    await openInvented(program, page)
    await withoutLaterParts(program, bundle, async () => {
      await page.goto(program.url)
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
    })
    await page.context().setOffline(true)
    await page.getByRole('link', { name: 'Sources', exact: true }).click()
    await expect(page.getByText(/It is not on this device yet, and the server does not answer/)).toBeVisible()
    await page.screenshot({ path: test.info().outputPath('part-away.png'), fullPage: true })
    await page.getByRole('button', { name: 'Try again' }).click()
    await expect(page.getByText(/It is not on this device yet, and the server does not answer/)).toBeVisible()
    await page.context().setOffline(false)
    await page.getByRole('button', { name: /Try again|Load the new version/ }).click()
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Sources/, { timeout: 30_000 })
  })
})

/** Writes a draft into the page's own database as an older version might have left it. */
async function leaveDraft(page: Page, kind: string, draft: unknown): Promise<void> {
  await page.evaluate(`new Promise((done) => {
    const open = indexedDB.open('quiet-ear')
    open.onsuccess = () => {
      const drafts = open.result.transaction('drafts', 'readwrite').objectStore('drafts')
      const keys = drafts.getAllKeys()
      keys.onsuccess = () => {
        const key = keys.result.find((one) => one.includes('${kind}'))
        drafts.put({ draft: ${JSON.stringify(draft)}, at: '2026-01-05T10:00:00Z', person: key.split(' ')[0] }, key)
        drafts.transaction.oncomplete = () => { open.result.close(); done(null) }
      }
    }
  })`)
}

test('a page that fails says what is kept; a draft it cannot show is copied and set aside', async ({
  page,
  program,
}) => {
  await openInvented(program, page)
  const form = await EntryForm.open(page, program.url, 'tansy/write/weight')
  await form.type('Weight with its unit', '18.7 kg')
  await leaveDraft(page, 'weight', { weighed: '18.7 kg' })
  await page.reload()
  await expect(page.getByRole('heading', { name: 'This page failed' })).toBeVisible()
  await expect(page.getByText('1 draft that was begun in a form')).toBeVisible()
  await expect(page.getByRole('navigation')).toBeVisible()
  await expectAccessible(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await page.screenshot({ path: test.info().outputPath('fault.png'), fullPage: true })
  await page.getByRole('button', { name: 'Load again' }).click()
  await expect(page.getByRole('heading', { name: 'This page failed' })).toBeVisible()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /Take a copy of what was typed here/ }).click(),
  ])
  expect(readFileSync(await download.path(), 'utf8')).toContain('"weighed": "18.7 kg"')
  await expect(page.getByLabel('Weight with its unit')).toHaveValue('')
})

test('the parts of the build before stay beside the new ones', () => {
  const former = mkdtempSync(join(repository, '.cache/bundle-'))
  const next = mkdtempSync(join(repository, '.cache/bundle-'))
  try {
    cpSync(join(repository, 'dist/web'), former, { recursive: true })
    cpSync(join(repository, 'dist/web/index.html'), join(next, 'index.html'))
    cpSync(join(repository, 'dist/web/assets'), join(next, 'assets'), { recursive: true })
    const [part = ''] = laterParts(former)
    rmSync(join(next, part))
    keepFormer(former, next)
    expect(readFileSync(join(next, part))).toEqual(readFileSync(join(former, part)))
  } finally {
    for (const folder of [former, next]) rmSync(folder, { recursive: true, force: true })
  }
})
