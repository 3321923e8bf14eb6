/**
 * Keeps the pages for home, for notes and for our questions of a link on the phone that opened them, as they were last seen. The
 * network always comes first; what is kept is given only when no network answers, and the page then says so. A link that
 * is closed, or whose animal has died, takes what was kept with it, and the answers that were marked and never sent.
 */
const name = 'owner-pages-1'
const kept = /^\/o\/[\w-]{43}\/(home|notes|questions)$/
const scripts = ['keep.js', 'note.js', 'questions.js', 'database.js', 'elements.js', 'sending.js']
const shared = ['page.css', ...scripts].map((file) => `/o/${file}`)
const patience = 8_000

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(name)
      .then((cache) => cache.addAll(shared))
      .then(() => self.skipWaiting()),
  )
})

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))

self.addEventListener('message', (event) => {
  const url = new URL(event.data, self.location.origin)
  if (url.origin === self.location.origin && kept.test(url.pathname)) event.waitUntil(fresh(new Request(url)))
})

self.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== self.location.origin) return
  if (shared.includes(pathname)) event.respondWith(fresh(request).catch(() => keptOf(request)))
  else if (request.mode === 'navigate') event.respondWith(visit(request, pathname))
})

async function visit(request, pathname) {
  try {
    return await fresh(request)
  } catch (error) {
    // The address that was handed out leads to the page for home, as the server would lead.
    if (/^\/o\/[\w-]{43}\/?$/.test(pathname)) return Response.redirect(`${pathname.replace(/\/$/, '')}/home`)
    const page = kept.test(pathname) && (await keptOf(request, pathname))
    if (!page) throw error
    const text = (await page.text())
      .replace('<html', '<html data-kept')
      .replace(/(<p class="kept-only"[^>]*) hidden>/, '$1>')
    const headers = new Headers(page.headers)
    // What is kept was unpacked already.
    for (const packed of ['content-encoding', 'content-length']) headers.delete(packed)
    return new Response(text, { status: 200, headers })
  }
}

/** From the network; of a page that may be kept, the newest is. */
async function fresh(request) {
  const { pathname } = new URL(request.url)
  const answer = await withinPatience(request)
  const cache = await caches.open(name)
  if (answer.ok && (kept.test(pathname) || shared.includes(pathname))) await cache.put(request.url, answer.clone())
  if (answer.status === 404 || answer.status === 410) await forget(cache, pathname)
  return answer
}

function withinPatience(request) {
  return new Promise((done, failed) => {
    const timer = setTimeout(() => failed(new Error('no answer')), patience)
    fetch(request)
      .then(done, failed)
      .finally(() => clearTimeout(timer))
  })
}

async function keptOf(request, path) {
  const cache = await caches.open(name)
  const exact = await cache.match(request.url)
  if (exact || path === undefined) return exact ?? Response.error()
  return cache.match(new URL(path, self.location.origin), { ignoreSearch: true })
}

/** Everything of one link. */
async function forget(cache, pathname) {
  const link = pathname.split('/').slice(0, 3).join('/')
  // A file that is not there says nothing of the link; its pages do.
  const isClosed = pathname === link || kept.test(pathname)
  for (const request of await cache.keys()) {
    if (!new URL(request.url).pathname.startsWith(`${link}/`)) continue
    const page = isClosed ? await (await cache.match(request)).text() : ''
    const id = /id="kept-here" data-link="([^"]+)"/.exec(page)?.[1]
    if (id) await forgetAnswers(id)
    await cache.delete(request)
  }
}

/** The answers of a link stand under its id, which only its pages know. */
function forgetAnswers(link) {
  return new Promise((done) => {
    const open = indexedDB.open('quiet-ear-owner')
    // Nothing was ever marked on this phone: no database is made by looking.
    open.onupgradeneeded = () => open.transaction.abort()
    open.onerror = () => done()
    open.onsuccess = () => {
      const database = open.result
      const end = () => {
        database.close()
        done()
      }
      if (!database.objectStoreNames.contains('answers')) return end()
      const tx = database.transaction('answers', 'readwrite')
      tx.objectStore('answers').openCursor().onsuccess = ({ target: { result: cursor } }) => {
        if (cursor?.value.link === link) cursor.delete()
        cursor?.continue()
      }
      tx.oncomplete = end
      tx.onabort = end
    }
  })
}
