import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expect, test } from './clinic.ts'

/** What this browser itself says it allows here; the page must not promise more or less. */
const allowed = `({
  secure: isSecureContext,
  offline: 'serviceWorker' in navigator,
  kept: 'storage' in navigator && 'persist' in navigator.storage,
  awake: 'wakeLock' in navigator,
  camera: 'mediaDevices' in navigator,
  unsent: 'indexedDB' in window,
})`
const rows = {
  offline: 'Opening Quiet Ear while the server is away',
  kept: 'The browser promises not to clear what is unsent',
  awake: 'The screen stays lit in theatre',
  camera: 'Camera inside Quiet Ear',
  unsent: 'What is written while the server is away',
} as const
const columns = ['This machine', 'Clinic network, not encrypted', 'Clinic network, encrypted']

test.describe('the page for connecting a tablet', () => {
  test.use({ ignoreHTTPSErrors: true })

  test('says what this browser really allows over each connection, and nothing sticks out', async ({
    page,
    program,
  }) => {
    const port = new URL(program.url).port
    const plain = `http://clinic.lan:${port}/connect`
    await page.goto(plain)
    const secure =
      (await page
        .getByRole('link', { name: /^https:/ })
        .first()
        .textContent()) ?? ''
    const encrypted = `https://clinic.lan:${new URL(secure).port}/connect`
    for (const [url, mode] of [
      [`http://localhost:${port}/connect`, 'This machine'],
      [plain, 'Clinic network, not encrypted'],
      [encrypted, 'Clinic network, encrypted'],
    ] as const) {
      await page.goto(url)
      await expect(page.getByRole('heading', { level: 2 }).first()).toHaveText(`This connection: ${mode}`)
      const really = await page.evaluate<Record<string, boolean>>(allowed)
      expect([mode, really.secure]).toEqual([mode, mode !== 'Clinic network, not encrypted'])
      for (const [what, label] of Object.entries(rows)) {
        const cells = page.getByRole('row', { name: label }).getByRole('cell')
        expect([mode, what, await cells.nth(columns.indexOf(mode)).textContent()]).toEqual([
          mode,
          what,
          really[what] ? 'yes' : 'no',
        ])
      }
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme })
        await expectAccessible(page)
      }
      for (const width of [320, 768, 1280]) {
        await page.setViewportSize({ width, height: 900 })
        await expectNoSidewaysScroll(page)
      }
    }
  })

  test('hands out the certificate whose fingerprint it shows', async ({ page, program }) => {
    await page.goto(`${program.url}/connect`)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Download the certificate' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('quiet-ear.crt')
    const { X509Certificate } = await import('node:crypto')
    const { readFileSync } = await import('node:fs')
    const certificate = new X509Certificate(readFileSync(await download.path()))
    await expect(page.getByRole('group', { name: 'Fingerprint (SHA-256)' })).toHaveText(certificate.fingerprint256)
  })
})
