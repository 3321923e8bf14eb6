/**
 * Keeps what an owner types in this phone's own database with every letter, and sends it when a network lets it: a note
 * has an id that was made here, so that sent twice it is one. Without this script the form sends by itself.
 */
import { openDatabase, written as writtenIn } from './database.js'
import { button, element, part } from './elements.js'
import { ask, newId, sender } from './sending.js'

const form = part('note')
const link = form.dataset.link
const words = JSON.parse(form.dataset.words)
const most = {
  pictures: +form.dataset.pictures,
  bytes: +form.dataset.megabytes * 1024 * 1024,
  letters: +form.dataset.letters,
}
const [trouble, chosen, waits, waiting] = ['trouble', 'chosen', 'waits', 'waiting'].map(part)

/** Both stores at once: a draft, and the notes that wait. */
const written = (change) => writtenIn(database, ['draft', 'note'], change)
const sendSoon = sender(sendAll)

let database
/** Pictures of the draft, made smaller where they were large. */
let pictures = []
let addresses = []

openDatabase().then(
  async (opened) => {
    database = opened
    await takeUp()
    form.addEventListener('input', () => void keepDraft())
    part('pictures').addEventListener('change', () => void choose())
    form.addEventListener('submit', (event) => {
      event.preventDefault()
      void submit()
    })
    part('as-typed').hidden = false
    form.dataset.ready = 'yes'
    sendSoon(0)
  },
  // No database here, as in a private window: the form sends by itself, as it does without a script.
  () => {},
)

async function takeUp() {
  const draft = await written((drafts) => drafts.get(link))
  if (draft) fillIn(draft)
  if (draft && !isEmpty(draft)) say(words.stillHere)
  showPictures()
  // A note that the page itself tells was sent needs no line of its own.
  for (const note of await mine()) {
    if (note.state === 'sent' && document.querySelector(`[data-entry="${note.id}"]`)) {
      await written((_, notes) => notes.delete(note.id))
    }
  }
  await showNotes()
}

function fillIn(draft) {
  form.elements.text.value = draft.text
  form.elements['seen-day'].value = draft.day
  form.elements['seen-time'].value = draft.time
  for (const one of form.elements.ear) one.checked = one.value === draft.ear
  pictures = draft.pictures
}

function draftNow() {
  const { text, ear } = form.elements
  const [day, time] = [form.elements['seen-day'].value, form.elements['seen-time'].value]
  return { link, text: text.value, day, time, ear: ear.value, pictures }
}

function isEmpty({ text, pictures: chosenOnes }) {
  return text.trim() === '' && chosenOnes.length === 0
}

function keepDraft() {
  say('')
  return written((drafts) => drafts.put(draftNow())).catch(noRoom)
}

/** The one thing that must not be promised and not held. */
function noRoom() {
  part('as-typed').hidden = true
  say(words.noRoom)
}

async function mine() {
  const all = await written((_, notes) => notes.getAll())
  return all.filter((note) => note.link === link).sort((a, b) => (a.since < b.since ? -1 : 1))
}

async function choose() {
  const field = part('pictures')
  const files = [...field.files]
  field.value = ''
  let said = ''
  for (const file of files) {
    const picture = await smaller(file)
    if (!/^image\/(jpeg|png|webp)$/.test(picture.type)) said = words.refused['picture-kind']
    else if (picture.size > most.bytes) said = words.refused['picture-large']
    else if (pictures.length >= most.pictures) said = words.refused['picture-many']
    else pictures = [...pictures, { blob: picture, hash: null }]
  }
  await keepDraft()
  say(said)
  showPictures()
}

/** A large photograph takes minutes on a bad network, and the wound is seen as well on a smaller one. */
async function smaller(file) {
  const side = 2400
  if (file.size < 1.5 * 1024 * 1024) return file
  try {
    const drawn = await createImageBitmap(file)
    const scale = Math.min(1, side / Math.max(drawn.width, drawn.height))
    const canvas = document.createElement('canvas')
    canvas.width = Math.round(drawn.width * scale)
    canvas.height = Math.round(drawn.height * scale)
    canvas.getContext('2d').drawImage(drawn, 0, 0, canvas.width, canvas.height)
    const made = await new Promise((done) => canvas.toBlob(done, 'image/jpeg', 0.85))
    return made && made.size < file.size ? made : file
  } catch {
    return file
  }
}

function showPictures() {
  for (const address of addresses) URL.revokeObjectURL(address)
  addresses = pictures.map(({ blob }) => URL.createObjectURL(blob))
  chosen.hidden = pictures.length === 0
  chosen.replaceChildren(
    ...pictures.map((picture, at) => {
      const shown = element('img')
      shown.src = addresses[at]
      shown.alt = ''
      const name = words.remove.replace('{number}', String(at + 1))
      const remove = button(name, async () => {
        pictures = pictures.filter((one) => one !== picture)
        await keepDraft()
        showPictures()
      })
      const line = element('li')
      line.append(shown, remove)
      return line
    }),
  )
}

/** From the form to the notes that wait, in one step: closed in between, it is in one of the two. */
async function submit() {
  const draft = draftNow()
  if (isEmpty(draft)) return say(words.refused.nothing)
  if (draft.text.trim().length > most.letters) return say(words.refused['too-long'])
  const note = { ...draft, id: newId(), since: new Date().toISOString(), state: 'waits', because: null, sentAt: null }
  try {
    await written((drafts, notes) => {
      notes.put(note)
      drafts.delete(link)
    })
  } catch {
    return noRoom()
  }
  fillIn({ text: '', day: '', time: '', ear: '', pictures: [] })
  say('')
  showPictures()
  await showNotes()
  waiting.scrollIntoView({ block: 'nearest' })
  sendSoon(0)
}

/** One after another. */
async function sendAll() {
  if (!database) return
  try {
    for (const note of await mine()) if (note.state === 'waits') await send(note)
  } finally {
    await showNotes()
  }
}

async function send(note) {
  await showNotes(note.id)
  for (const picture of note.pictures) {
    if (picture.hash !== null) continue
    const headers = { 'content-type': picture.blob.type, accept: 'application/json' }
    const answer = await ask('picture', { headers, body: picture.blob }, 'picture-large')
    if (answer.refused) return settle(note, 'refused', { because: answer.refused })
    picture.hash = answer.hash
    await written((_, notes) => notes.put(note))
  }
  const body = new FormData()
  const fields = { entry: note.id, text: note.text, 'seen-day': note.day, 'seen-time': note.time, ear: note.ear }
  for (const [name, value] of Object.entries({ ...fields, 'kept-since': note.since })) body.append(name, value)
  for (const { hash } of note.pictures) body.append('picture-taken', hash)
  const answer = await ask(
    `notes${location.search}`,
    { headers: { accept: 'application/json' }, body },
    'picture-large',
  )
  if (answer.refused) return settle(note, 'refused', { because: answer.refused })
  return settle(note, 'sent', { sentAt: answer.time, pictures: [] })
}

function settle(note, state, more) {
  return written((_, notes) => notes.put({ ...note, ...more, state }))
}

async function showNotes(sending = null) {
  const all = await mine()
  waiting.hidden = all.length === 0
  waits.replaceChildren(...all.map((note) => noteShown(note, sending)))
}

function noteShown(note, sending) {
  const box = element('div', 'waits')
  box.dataset.state = note.state
  const text = element('p', 'written')
  text.dir = 'auto'
  text.textContent = note.text
  const state = element('p', 'state')
  state.textContent = stateOf(note, sending)
  box.append(text, state)
  if (note.state === 'waits' && sending !== note.id) box.append(button(words.again, () => sendSoon(0)))
  if (note.state === 'refused') {
    box.append(button(words.change, () => changeAgain(note)))
    box.append(button(words.drop, () => written((_, notes) => notes.delete(note.id)).then(() => showNotes())))
  }
  return box
}

function stateOf({ id, state, because, sentAt }, sending) {
  if (state === 'sent') return words.sentAt.replace('{time}', sentAt)
  if (state === 'refused') return because === 'closed' ? words.closed : (words.refused[because] ?? words.closed)
  return sending === id ? words.sending : words.waits
}

/** Back into the form under a new id; what stands in the form is not thrown away for it. */
async function changeAgain(note) {
  const now = draftNow()
  const text = [now.text, note.text].filter((one) => one.trim() !== '').join('\n\n')
  const all = [...pictures, ...note.pictures].slice(0, most.pictures)
  fillIn({ ...note, text, pictures: all })
  await written((drafts, notes) => {
    drafts.put(draftNow())
    notes.delete(note.id)
  })
  showPictures()
  await showNotes()
  form.elements.text.focus()
}

function say(text) {
  trouble.textContent = text
  trouble.hidden = text === ''
}
