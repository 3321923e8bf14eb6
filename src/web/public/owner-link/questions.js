/**
 * Keeps what an owner marks on the questions in this phone's own database with every change, and sends it when it was sent
 * off and a network lets it. Sent twice it is one: its id was made here, and another answer gets another id. Without this
 * script the form sends by itself.
 */
import { openDatabase, written as writtenIn } from './database.js'
import { button, part } from './elements.js'
import { ask, newId, sender } from './sending.js'

const here = part('kept-here')
const { link } = here.dataset
const words = JSON.parse(here.dataset.words)
const form = document.querySelector('form.ask')
/** The time of asking that the form of this page is about; null where it has none. */
const of = form?.elements.of.value ?? null

let database
let pressed = null
/** What was marked another time stands here still, and nothing was changed since. */
let isFound = false
/** The link takes nothing any more: nothing is kept for it either. */
let ended = false
const written = (change) => writtenIn(database, ['answers'], change)
const sendSoon = sender(sendAll)

openDatabase().then(
  async (opened) => {
    database = opened
    await takeUp()
    form?.addEventListener('input', () => void keep())
    form?.addEventListener('click', ({ target }) => {
      pressed = target.closest('button') ?? pressed
    })
    form?.addEventListener('submit', (event) => void submit(event))
    here.dataset.ready = 'yes'
    sendSoon(0)
  },
  // No database here, as in a private window: the form sends by itself, as it does without a script.
  () => {},
)

async function takeUp() {
  const record = (await mine()).find((one) => one.of === of)
  if (record && form) fillIn(record.fields)
  isFound = record !== undefined
  if (form) part('as-marked').hidden = false
  await show()
}

async function mine() {
  const all = await written((answers) => answers.getAll())
  return all.filter((one) => one.link === link)
}

function fillIn(fields) {
  for (const control of form.elements) {
    if (control.type === 'radio') control.checked = fields[control.name] === control.value
    else if (control.tagName === 'TEXTAREA') control.value = fields[control.name] ?? ''
  }
}

/** As it stands on the page now, in the language in which it was asked. */
function recordNow() {
  const all = [...new FormData(form)].filter(([name]) => name !== 'entry' && name !== 'of')
  const about = { key: `${link} ${of}`, link, of, language: document.documentElement.lang }
  const since = new Date().toISOString()
  return { ...about, fields: Object.fromEntries(all), since, do: null, id: null, refused: null }
}

async function keep() {
  if (ended) return
  isFound = false
  try {
    await written((answers) => answers.put(recordNow()))
    say(words.notSent)
  } catch {
    // The one thing that must not be promised and not held.
    say(words.noRoom)
  }
}

async function submit(event) {
  event.preventDefault()
  if (ended) return
  const button = event.submitter ?? pressed
  const record = { ...recordNow(), do: button?.value === 'save' ? 'save' : 'send', id: newId() }
  if (Object.values(record.fields).every((text) => text.trim() === '')) return say(words.refused.nothing)
  try {
    await written((answers) => answers.put(record))
  } catch {
    // No room on this phone: straight to the clinic, as without a script.
    const what = Object.assign(document.createElement('input'), { type: 'hidden', name: 'do', value: record.do })
    form.append(what)
    return HTMLFormElement.prototype.submit.call(form)
  }
  await show()
  here.scrollIntoView({ block: 'start' })
  sendSoon(0)
}

async function sendAll() {
  if (!database || ended) return
  try {
    for (const record of await mine()) if (record.do !== null) await send(record)
  } finally {
    await show()
  }
}

async function send(record) {
  await show(words.sending)
  const named = { of: record.of, entry: record.id, do: record.do, 'kept-since': record.since }
  const request = {
    headers: { accept: 'application/json' },
    body: new URLSearchParams({ ...record.fields, ...named }),
    // A network that neither takes nor refuses it is none.
    signal: AbortSignal.timeout?.(20_000),
  }
  const answer = await ask(`questions?language=${record.language}`, request, 'too-long')
  if (answer.refused === 'closed') return close(answer.isQuiet)
  const next = answer.refused ? { ...record, do: null, id: null, refused: answer.refused } : null
  const stood = await settle(record, next)
  if (next !== null || !stood || (of !== null && of !== record.of)) return
  await forgetKeptPage()
  const done = record.do === 'save' ? 'saved' : 'sent'
  location.replace(`?of=${encodeURIComponent(record.of)}&done=${done}&language=${record.language}`)
}

/** Changed in the meantime, what stands there now is another answer and stays. Whether it was still this one. */
async function settle(record, next) {
  const was = await written((answers) => {
    const asked = answers.get(record.key)
    asked.onsuccess = () => {
      if (asked.result?.id !== record.id) return
      if (next === null) answers.delete(record.key)
      else answers.put(next)
    }
    return asked
  })
  return was?.id === record.id
}

/** The link was ended: what was marked stands on this page alone, to be read to us. After a death not even there. */
async function close(isQuiet) {
  ended = true
  for (const { key } of await mine()) await written((answers) => answers.delete(key))
  if (isQuiet) return location.replace(location.pathname)
  if (!form) return
  part('as-marked').hidden = true
  for (const control of form.querySelectorAll('button')) control.disabled = true
}

/** The page that the phone keeps still asks what was answered now: the next one takes its place. */
async function forgetKeptPage() {
  if (!window.caches) return
  for (const name of await caches.keys()) {
    const cache = await caches.open(name)
    for (const request of await cache.keys()) {
      if (new URL(request.url).pathname === location.pathname) await cache.delete(request)
    }
  }
}

async function show(sending = null) {
  const all = ended ? [] : await mine()
  const waits = all.filter((one) => one.do !== null)
  const over = all.filter((one) => one.refused !== null && one.of !== of)
  const own = all.find((one) => one.of === of)
  const isHidden = waits.some((one) => one.of === of)
  if (form) form.hidden = isHidden
  here.hidden = waits.length === 0 && over.length === 0 && !ended
  here.dataset.state = ended ? 'closed' : waits.length > 0 ? 'waits' : 'over'
  part('kept-here-state').textContent = ended ? words.closed : waits.length > 0 ? (sending ?? words.waits) : words.over
  part('kept-here-now').hidden = !isHidden || !form.querySelector('[data-now]:checked')
  part('kept-here-buttons').replaceChildren(
    ...(waits.length > 0 && sending === null ? [button(words.again, () => sendSoon(0))] : []),
    ...(isHidden && own ? [button(words.change, () => change(own))] : []),
    ...over.map(({ key }) => button(words.drop, () => drop(key))),
  )
  say(own && !isHidden ? stateOf(own) : '')
}

function stateOf({ refused }) {
  if (refused === null) return isFound ? words.stillHere : words.notSent
  return refused === 'over' ? words.over : (words.refused[refused] ?? words.refused['not-kept'])
}

async function change(record) {
  await written((answers) => answers.put({ ...record, do: null, id: null }))
  await show()
  form.scrollIntoView({ block: 'start' })
}

async function drop(key) {
  await written((answers) => answers.delete(key))
  await show()
}

function say(text) {
  for (const line of document.querySelectorAll('.kept-state')) {
    line.textContent = text
    line.hidden = text === ''
  }
}
