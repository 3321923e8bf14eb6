/** The shape of UUID version 7: 48 bits of time, the rest chance. Made here, so that what is sent twice is one. */
export function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(10))
  bytes[0] = 0x70 | (bytes[0] & 0x0f)
  bytes[2] = 0x80 | (bytes[2] & 0x3f)
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  const time = Date.now().toString(16).padStart(12, '0')
  return `${time.slice(0, 8)}-${time.slice(8)}-${hex.slice(0, 4)}-${hex.slice(4, 8)}-${hex.slice(8)}`
}

/**
 * Calls `sendAll` soon after it is asked to, when the network is back and when the page is looked at again; one at a time.
 * After a failure again in five seconds, then later and later, a minute at most.
 */
export function sender(sendAll) {
  let [working, again, pause] = [false, false, 0]
  let timer
  const soon = (milliseconds) => {
    clearTimeout(timer)
    timer = setTimeout(() => void run(), milliseconds)
  }
  const run = async () => {
    // What came in the meantime may not be among what is being sent.
    if (working) {
      again = true
      return
    }
    ;[working, again] = [true, false]
    try {
      await sendAll()
      pause = 0
      if (again) soon(0)
    } catch (error) {
      pause = Math.min(60_000, error?.again ?? (pause === 0 ? 5_000 : pause * 2))
      soon(pause)
    } finally {
      working = false
    }
  }
  addEventListener('online', () => soon(0))
  addEventListener('visibilitychange', () => document.visibilityState === 'visible' && soon(0))
  return soon
}

/**
 * What the clinic answered, or what it refused and why: `closed` when the link takes nothing any more, quiet where the animal has died; `tooLarge` when it
 * was not even read. Thrown when it could not be asked and is to be asked again.
 */
export async function ask(path, request, tooLarge) {
  const answer = await fetch(path, { method: 'POST', cache: 'no-store', ...request })
  if (answer.ok || answer.status === 409 || answer.status === 422) return answer.json()
  if (answer.status === 404 || answer.status === 410) return { refused: 'closed', isQuiet: answer.status === 410 }
  if (answer.status === 413) return { refused: tooLarge }
  const wait = Date.parse(answer.headers.get('retry-after') ?? '') - Date.now()
  throw Object.assign(new Error(String(answer.status)), wait > 0 ? { again: wait } : {})
}
