import type { Context, Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { keepNote } from '#actions/owner/keep-note.ts'
import { largestOwnerPicture, takePicture } from '#actions/owner/take-picture.ts'
import { ownerNoteLimits } from '#content/follow-up/owner-note-limits.ts'
import { entryId } from '#core/journal/entry-id.ts'
import { ownerNotesOf } from '#core/owed/owner-notes.ts'
import { clockOf } from '#core/time/moment.ts'
import { destinations } from '#documents/owner-link/destinations.ts'
import { readNote } from '#documents/owner-link/note-sent.ts'
import { type NotesInput, type NoteTrouble, notesPage, tooLargePage } from '#documents/owner-link/notes.ts'
import type { Fields } from '#documents/owner-page/asked.ts'
import { languageFor, ownerPageInLanguages } from '#documents/owner-page/words.ts'
import type { MakeWorld } from '../world.ts'
import { type Behind, behindLink, closedFor } from './behind-link.ts'

const nothingTyped: Fields = { get: () => null }
/** All pictures of one note and its words, as a form without a script sends them. */
const largestForm = ownerNoteLimits.pictures.value * largestOwnerPicture + 256 * 1024

/**
 * Notes from home: the page with its form, which works without a script; pictures one by one, for the script that sends
 * them again where a connection broke; and an owner's own pictures, to be seen again.
 */
export function offerNotes(app: Hono, worldOf: MakeWorld): void {
  const open = (c: Context, then: (behind: Behind) => Response | Promise<Response>) =>
    behindLink(c, worldOf, async (behind) =>
      destinations.some(({ path, open: isOpen }) => path === 'notes' && isOpen(behind.input))
        ? then(behind)
        : c.html(await closedFor(c, behind.world, false), 404),
    )
  app.get('/o/:token/notes', (c) =>
    open(c, (behind) => {
      const told = c.req.query('note') === 'kept' ? 'kept' : null
      return c.html(pageOf(behind, told, nothingTyped))
    }),
  )
  app.post('/o/:token/notes', limited(largestForm), (c) => open(c, (behind) => takeNote(c, behind)))
  app.post('/o/:token/picture', limited(largestOwnerPicture), (c) =>
    open(c, async ({ opened, world }) => {
      const mediaType = (c.req.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? ''
      const taken = await takePicture(opened, { mediaType, bytes: new Uint8Array(await c.req.arrayBuffer()) }, world)
      return taken.kind === 'taken' ? c.json({ hash: taken.hash }) : c.json({ refused: taken.because }, 422)
    }),
  )
  app.get('/o/:token/picture/:hash{[0-9a-f]{64}}', (c) =>
    open(c, async ({ opened, input, world }) => {
      const hash = c.req.param('hash')
      const picture = isOwn(input, hash) ? await world.store.file(opened.link.clinic, hash) : undefined
      if (!picture) return c.html(await closedFor(c, world, false), 404)
      return c.body(picture.bytes as Uint8Array<ArrayBuffer>, 200, {
        'content-type': picture.mediaType,
        'content-disposition': 'inline; filename="photograph"',
      })
    }),
  )
}

/** Turned away before it is read. The script is told by a code; a browser without it by a page in its language. */
function limited(maxSize: number) {
  return bodyLimit({
    maxSize,
    onError: (c) => {
      if (c.req.path.endsWith('/picture')) return c.json({ refused: 'picture-large' }, 413)
      const asked = new URL(c.req.url).searchParams.get('language')
      const language = languageFor(asked, c.req.header('accept-language')?.split(/[,;]/)[0])
      return c.html(tooLargePage(ownerPageInLanguages[language]), 413)
    },
  })
}

function pageOf({ opened: { link, now }, input, world }: Behind, told: NotesInput['told'], typed: Fields): string {
  return notesPage({ ...input, link: link.id, entry: entryId(Date.parse(now), world.secrets.bytes(10)), told, typed })
}

/** The script asks for JSON and is told what became of it; a browser is led back to the page. */
async function takeNote(c: Context, behind: Behind): Promise<Response> {
  const { opened, input, world } = behind
  const sent = await c.req.parseBody({ all: true })
  const form: Fields = { get: (name) => [sent[name]].flat().find((one) => typeof one === 'string') ?? null }
  const asScript = c.req.header('accept') === 'application/json'
  const refuse = (because: NoteTrouble) =>
    asScript ? c.json({ refused: because }, 422) : c.html(pageOf(behind, because, form), 422)
  const files = [sent.picture].flat().filter((one): one is File => one instanceof File && one.size > 0)
  const named = [sent['picture-taken']].flat().filter((one): one is string => typeof one === 'string')
  if (files.length + named.length > ownerNoteLimits.pictures.value) return refuse('picture-many')
  const body = readNote(form, {
    pictures: files.length + named.length,
    language: input.words.page.language,
    now: input.on,
  })
  if (typeof body === 'string') return refuse(body)
  const pictures = [...named]
  for (const file of files) {
    const bytes = new Uint8Array(await file.arrayBuffer())
    const taken = await takePicture(opened, { mediaType: file.type, bytes }, world)
    if (taken.kind === 'refused') return refuse(taken.because)
    pictures.push(taken.hash)
  }
  const outcome = await keepNote(opened, { id: form.get('entry') ?? '', body, pictures }, world)
  if (outcome !== 'kept') return refuse(outcome)
  if (asScript) return c.json({ kept: true, time: clockOf(opened.now, input.file.clinic.zone) })
  const language = input.asked.language === null ? '' : `language=${input.asked.language}&`
  // Asked for again with another address, so that going back or reading anew sends nothing twice.
  return c.redirect(`?${language}note=kept#told`, 303)
}

function isOwn({ contact, file }: Behind['input'], hash: string): boolean {
  return ownerNotesOf(file.theCase).some(
    ({ note: { header } }) =>
      header.author.kind === 'owner-link' &&
      header.author.contact === contact &&
      header.attachments.some((one) => one.hash === hash),
  )
}
