import { Signal } from './signal.ts'

/** What the server tells by itself: which streams changed, and that it is there. */
export type Connection = 'starting' | 'live' | 'lost'
export const connection = new Signal<Connection>('starting')

type Change = { readonly position: number; readonly streams: readonly string[] }
/** Called with the streams that changed; null when the connection was away and anything may have. */
export const onChange = new Set<(streams: readonly string[] | null) => void>()

/** Called when the server answered the line and would not have it: it says so, but not why. */
export const onTurnedAway = new Set<() => void>()

let source: EventSource | undefined
let silence: ReturnType<typeof setTimeout> | undefined
/** The server is heard every 15 s; after this long without a word the line counts as lost and is made anew. */
const longestSilence = 40_000

/** Listens until `hangUp`; a lost line is shown and tried again by itself. */
export function listen(): void {
  if (source && source.readyState !== EventSource.CLOSED) return
  const line = new EventSource('/api/live')
  source = line
  const heard = () => {
    clearTimeout(silence)
    silence = setTimeout(again, longestSilence)
  }
  line.onopen = () => {
    heard()
    connection.set('live')
    for (const listener of onChange) listener(null)
  }
  line.addEventListener('here', heard)
  line.addEventListener('change', (event) => {
    heard()
    const { streams } = JSON.parse(String(event.data)) as Change
    for (const listener of onChange) listener(streams)
  })
  line.onerror = () => {
    connection.set('lost')
    // The browser tries again by itself, except after an answer that was no stream of events.
    if (line.readyState === EventSource.CLOSED) {
      clearTimeout(silence)
      silence = setTimeout(again, 2_000)
      for (const listener of onTurnedAway) listener()
    }
  }
}

function again(): void {
  hangUp()
  connection.set('lost')
  listen()
}

export function hangUp(): void {
  clearTimeout(silence)
  source?.close()
  source = undefined
}
