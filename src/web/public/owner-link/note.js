/**
 * Keeps what an owner types in this phone's own database with every letter, and sends it when a network lets it: a note
 * has an id that was made here, so that sent twice it is one. Without this script the form sends by itself.
 */
const form = document.getElementById('note')
const link = form.dataset.link
const words = JSON.parse(form.dataset.words)
const most = {
  pictures: +form.dataset.pictures,
  bytes: +form.dataset.megabytes * 1024 * 1024,
  letters: +form.dataset.letters,
}
const part = (id) => document.getElementById(id)
const [trouble, chosen, waits, waiting] = ['trouble', 'chosen', 'waits', 'waiting'].map(part)

/** One draft for each link, and the notes that wait. */
function openDatabase() {
  return new Promise((done, failed) => {
    const open = indexedDB.open('quiet-ear-owner', 1)
    open.onupgradeneeded = () => {
      open.result.createObjectStore('draft', { keyPath: 'link' })
      open.result.createObjectStore('note', { keyPath: 'id' })
    }
    open.onsuccess = () => done(open.result)
    open.onerror = () => failed(open.error)
  })
}

/** Done when it is on disk: what `change` asks of both stores happens together or not at all. */
function written(change) {
  return new Promise((done, failed) => {
    const tx = database.transaction(['draft', 'note'], 'readwrite')
    const asked = change(tx.objectStore('draft'), tx.objectStore('note'))
    tx.oncomplete = () => done(asked?.result)
    tx.onabort = () => failed(tx.error)
  })
}

let database
/** Pictures of the draft, made smaller where they were large. */
let pictures = []
let addresses = []
let working = false
let pause = 0
let timer

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
    addEventListener('online', () => sendSoon(0))
    addEventListener('visibilitychange', () => document.visibilityState === 'visible' && sendSoon(0))
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

/** The shape of UUID version 7: 48 bits of time, the rest chance. */
function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(10))
  bytes[0] = 0x70 | (bytes[0] & 0x0f)
  bytes[2] = 0x80 | (bytes[2] & 0x3f)
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  const time = Date.now().toString(16).padStart(12, '0')
  return `${time.slice(0, 8)}-${time.slice(8)}-${hex.slice(0, 4)}-${hex.slice(4, 8)}-${hex.slice(8)}`
}

function sendSoon(milliseconds) {
  clearTimeout(timer)
  timer = setTimeout(() => void sendAll(), milliseconds)
}

/** One after another; after a failure again in five seconds, then later and later, a minute at most. */
async function sendAll() {
  if (working) return
  working = true
  try {
    for (const note of await mine()) if (note.state === 'waits') await send(note)
    pause = 0
  } catch (error) {
    pause = Math.min(60_000, error?.again ?? (pause === 0 ? 5_000 : pause * 2))
    sendSoon(pause)
  } finally {
    working = false
    await showNotes()
  }
}

async function send(note) {
  await showNotes(note.id)
  for (const picture of note.pictures) {
    if (picture.hash !== null) continue
    const headers = { 'content-type': picture.blob.type, accept: 'application/json' }
    const answer = await ask('picture', { headers, body: picture.blob })
    if (answer.refused) return settle(note, 'refused', { because: answer.refused })
    picture.hash = answer.hash
    await written((_, notes) => notes.put(note))
  }
  const body = new FormData()
  const fields = { entry: note.id, text: note.text, 'seen-day': note.day, 'seen-time': note.time, ear: note.ear }
  for (const [name, value] of Object.entries({ ...fields, 'kept-since': note.since })) body.append(name, value)
  for (const { hash } of note.pictures) body.append('picture-taken', hash)
  const answer = await ask(`notes${location.search}`, { headers: { accept: 'application/json' }, body })
  if (answer.refused) return settle(note, 'refused', { because: answer.refused })
  return settle(note, 'sent', { sentAt: answer.time, pictures: [] })
}

function settle(note, state, more) {
  return written((_, notes) => notes.put({ ...note, ...more, state }))
}

/** What the clinic answered, or what it refused and why; thrown when it could not be asked and is to be asked again. */
async function ask(path, request) {
  const answer = await fetch(path, { method: 'POST', cache: 'no-store', ...request })
  if (answer.ok) return answer.json()
  if (answer.status === 404 || answer.status === 410) return { refused: 'closed' }
  if (answer.status === 422 || answer.status === 413) return answer.json().catch(() => ({ refused: 'picture-large' }))
  const wait = Date.parse(answer.headers.get('retry-after') ?? '') - Date.now()
  throw Object.assign(new Error(String(answer.status)), wait > 0 ? { again: wait } : {})
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

function element(name, kind = '') {
  const made = document.createElement(name)
  if (kind !== '') made.className = kind
  return made
}

function button(text, act) {
  const made = element('button', 'plain')
  made.type = 'button'
  made.textContent = text
  made.addEventListener('click', () => void act())
  return made
}
