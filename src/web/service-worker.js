/**
 * Keeps the app's own files on the device, so that a tablet opens without the server. Data is not its business: what
 * was read and written lives in the page's own database. FILES and VERSION are filled in by the build.
 */
const files = self.__FILES__
const version = self.__VERSION__

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(version)
      .then((cache) => cache.addAll(files))
      .then(() => self.skipWaiting()),
  )
})

self.addEventListener('activate', (event) => {
  // The version before stays: a page of it may still stand open, and load a part only now.
  const dropOld = async () => {
    const others = (await caches.keys()).filter((name) => name !== version)
    for (const name of others.slice(0, -1)) await caches.delete(name)
    await self.clients.claim()
  }
  event.waitUntil(dropOld())
})

self.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== self.location.origin || /^\/(api|connect)\b/.test(pathname)) return
  if (request.mode === 'navigate') {
    event.respondWith(fetch(request).catch(() => caches.open(version).then((cache) => cache.match('/index.html'))))
    return
  }
  event.respondWith(caches.match(request).then((kept) => kept ?? fetch(request)))
})
