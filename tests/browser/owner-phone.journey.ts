import type { BrowserContext, Page } from '@playwright/test'
import { ownerNoteLimits } from '#content/follow-up/owner-note-limits.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { act, entriesOf, expect, openInvented, type Program, test, writeNow } from './clinic.ts'

const stream = 'case:sorrel'
const phoneSize = { viewport: { width: 360, height: 740 }, locale: 'es-ES' } as const
const seen = 'Esta mañana el ojo estaba rojo y el collar un poco mojado.'

async function makeLink(page: Page, url: string): Promise<string> {
  const { owners } = await act<{ owners: readonly { contact: string }[] }>(page.context(), url, 'list-owner-links', {
    stream,
  })
  const contact = owners[0]?.contact
  const { path } = await act<{ path: string }>(page.context(), url, 'make-owner-link', {
    stream,
    contact,
    use: 'private',
  })
  return `${url}${path}`
}

/** A photograph as a phone takes it: larger than it needs to be, with noise that no packing makes small. */
async function photograph(phone: Page): Promise<Buffer> {
  const made = await phone.evaluate<string>(`new Promise((done) => {
    const canvas = document.createElement('canvas')
    canvas.width = 1200; canvas.height = 900
    const paint = canvas.getContext('2d')
    const dots = paint.createImageData(1200, 900)
    let seed = 7
    for (let at = 0; at < dots.data.length; at++) { seed = (seed * 1103515245 + 12345) % 2147483648; dots.data[at] = at % 4 === 3 ? 255 : seed % 256 }
    paint.putImageData(dots, 0, 0)
    done(canvas.toDataURL('image/jpeg', 0.9))
  })`)
  return Buffer.from(made.slice(made.indexOf(',') + 1), 'base64')
}

const notesIn = async (program: Program, page: Page) =>
  (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'owner-note')

async function openNotes(context: BrowserContext, address: string): Promise<Page> {
  const phone = await context.newPage()
  await phone.goto(`${address}/notes?language=es`)
  await phone.locator('#note[data-ready]').waitFor()
  return phone
}

test('an owner writes at home while the network drops: nothing is lost, the note arrives once, the answer is read', async ({
  page,
  browser,
  program,
}) => {
  // Two people, a network that goes twice, and three pages read for a screen reader: long where much else runs.
  test.slow()
  await openInvented(program, page)
  const address = await makeLink(page, program.url)
  const context = await browser.newContext(phoneSize)
  let phone = await context.newPage()
  await phone.goto(`${address}?language=es`)
  await expect(phone).toHaveURL(/\/home/)
  await phone.goto(`${address}/home?language=es`)
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('En casa con Sorrel')
  await expectNoSidewaysScroll(phone, 'the page for home at 360')
  await expectAccessible(phone, 'the page for home')
  await phone.getByRole('link', { name: 'Escribirnos y leer las respuestas' }).click()
  await phone.locator('#note[data-ready]').waitFor()
  await expectNoSidewaysScroll(phone, 'the page for notes at 360')
  await expectAccessible(phone, 'the page for notes')
  const picture = await photograph(phone)
  // The worker keeps both pages; it came with the first of them.
  await phone.evaluate('navigator.serviceWorker.ready')
  await phone.reload()
  await phone.locator('#note[data-ready]').waitFor()

  // The network goes while the owner types; the phone puts the page away, and opens it again without one.
  await context.setOffline(true)
  await phone.getByLabel('¿Qué ha visto, o qué quiere preguntar?').pressSequentially(seen)
  await phone.getByLabel('el IZQUIERDO').check()
  await phone.getByLabel('Fotos').setInputFiles({ name: 'IMG_0001.jpg', mimeType: 'image/jpeg', buffer: picture })
  await expect(phone.getByRole('button', { name: 'Quitar la foto 1' })).toBeVisible()
  await phone.close()
  phone = await openNotes(context, address)
  await expect(phone.getByText('Ahora no hay red.')).toBeVisible()
  await expect(phone.getByLabel('¿Qué ha visto, o qué quiere preguntar?')).toHaveValue(seen)
  await expect(phone.getByLabel('el IZQUIERDO')).toBeChecked()
  await expect(phone.getByRole('button', { name: 'Quitar la foto 1' })).toBeVisible()
  await expect(phone.getByText('garganta hinchados')).not.toHaveCount(0)

  await phone.getByRole('button', { name: 'Enviar a la clínica' }).click()
  await expect(phone.getByText('Guardado en este teléfono, aún sin enviar.')).toBeVisible()
  await expect(phone.getByLabel('¿Qué ha visto, o qué quiere preguntar?')).toHaveValue('')
  await phone.close()
  expect(await notesIn(program, page)).toEqual([])

  // Back on the network the first answer is lost on the way: the phone cannot know that the note came through.
  phone = await openNotes(context, address)
  let lost = 0
  await phone.route(/\/notes/, async (route) => {
    if (route.request().method() !== 'POST' || lost > 0) return route.fallback()
    lost += 1
    await route.fetch()
    return route.abort('connectionreset')
  })
  await context.setOffline(false)
  await expect(phone.getByText(/^Enviado a las \d\d:\d\d\.$/)).toBeVisible({ timeout: 30_000 })
  expect(lost).toBe(1)
  const [note, ...others] = await notesIn(program, page)
  expect(others).toEqual([])
  expect(note?.body).toMatchObject({ text: seen, ear: 'LEFT', language: 'es', keptSince: { by: 'clock' } })
  await phone.reload()
  await expect(phone.locator('article.sent')).toContainText(seen)
  await expect(phone.locator('article.sent')).toContainText('Aún no hay respuesta.')
  const kept = phone.getByRole('img', { name: 'Foto 1 de su nota' })
  await kept.scrollIntoViewIfNeeded()
  await expect.poll(() => kept.evaluate((img) => (img as unknown as { naturalWidth: number }).naturalWidth)).toBe(1200)
  await expect(phone.locator('#waiting')).toBeHidden()

  // Somebody here reads it on the case, with the photograph, and answers under their own name.
  await page.goto(`${program.url}/`)
  await page
    .getByRole('link', { name: /Read the note of the owner, and answer/ })
    .first()
    .click()
  const shown = page.getByRole('article', { name: /^Note of / })
  await expect(shown).toContainText(seen)
  await expect(shown.getByRole('link', { name: /photograph-1/ }).locator('img')).toBeAttached()
  await expectAccessible(page, 'the notes of the owner on the case')
  await shown.getByLabel('Your answer').fill('Limpie el ojo con agua templada. La doctora llama hoy.')
  await shown.getByRole('button', { name: 'Keep the answer' }).click()
  await expect(shown.getByText('Limpie el ojo con agua templada.')).toBeVisible()
  await expect
    .poll(
      async () => (await entriesOf(program, page, stream)).filter(({ header }) => header.kind === 'owner-reply').length,
    )
    .toBe(1)
  await phone.reload()
  await expect(phone.locator('article.sent')).toContainText(/Runa Falk respondió el .*:/)
  await expect(phone.locator('article.sent')).toContainText('Limpie el ojo con agua templada.')

  // After a death the page says one sentence, and what the phone had kept of it is gone.
  await writeNow(program, page, stream, [{ kind: 'death' }])
  const gone = await phone.goto(`${address}/notes?language=es`)
  expect(gone?.status()).toBe(410)
  await expect(phone.getByText('Sentimos la muerte de Sorrel.')).toBeVisible()
  await expect(phone.locator('form, nav, script, input')).toHaveCount(0)
  await context.setOffline(true)
  await expect(phone.goto(`${address}/home?language=es`)).rejects.toThrow()
  await context.close()
})

test('what cannot be taken is said beside the form, what was typed stays, and without a script the form sends by itself', async ({
  page,
  browser,
  program,
}) => {
  await openInvented(program, page)
  const address = await makeLink(page, program.url)
  const context = await browser.newContext({ ...phoneSize, locale: 'en-GB' })
  const phone = await context.newPage()
  await phone.goto(`${address}/notes?language=en`)
  await phone.locator('#note[data-ready]').waitFor()
  await phone.getByRole('button', { name: 'Send to the clinic' }).click()
  await expect(phone.getByRole('alert')).toHaveText(/^Nothing was written/)
  const paper = { name: 'letter.pdf', mimeType: 'application/pdf', buffer: Buffer.from('%PDF-1.7') }
  await phone.getByLabel('What did you see').fill('The flap is swollen.')
  await phone.getByLabel('Photographs').setInputFiles(paper)
  await expect(phone.getByRole('alert')).toHaveText(/no photograph we can keep/)
  const large = {
    name: 'a.png',
    mimeType: 'image/png',
    buffer: Buffer.alloc(ownerNoteLimits.pictureMegabytes.value * 1024 * 1024 + 1),
  }
  await phone.getByLabel('Photographs').setInputFiles(large)
  await expect(phone.getByRole('alert')).toHaveText(/larger than 8 MB/)
  await expect(phone.getByLabel('What did you see')).toHaveValue('The flap is swollen.')
  await context.close()

  const plain = await (await browser.newContext({ ...phoneSize, javaScriptEnabled: false })).newPage()
  await plain.goto(`${address}/notes?language=en`)
  await plain.getByLabel('What did you see').fill('May the collar come off for meals?')
  await plain.getByRole('button', { name: 'Send to the clinic' }).click()
  await expect(plain.getByRole('status')).toHaveText(/^Thank you\. We have it\./)
  await expect(plain.locator('article.sent')).toContainText('May the collar come off for meals?')
  await expect(plain.locator('article.sent')).toContainText('No answer yet.')
  expect(await notesIn(program, page)).toHaveLength(1)
  await plain.context().close()
})
