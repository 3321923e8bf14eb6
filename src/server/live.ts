import type { Change, Store } from '#actions/store.ts'

const text = new TextEncoder()

/** How often a listener hears that the server is there. */
const hereEvery = 15_000
/** What a browser waits before it comes again. */
const comeAgainAfter = 2_000

/** One screen that listens, and what it has not been told yet. */
type Line = {
  readonly clinic: string
  readonly tell: (event: string) => void
  readonly end: () => void
  /** False once the session was ended: whoever signed out somewhere else hears no more. */
  readonly stillMay: () => Promise<boolean>
}

/**
 * Tells every listening screen which cases changed, as server-sent events. Nothing of a case itself leaves here: a
 * screen that hears of a change asks for it, and is answered what it may see.
 */
export class Live {
  readonly #lines = new Set<Line>()
  readonly #timer: ReturnType<typeof setInterval>
  #stop = () => undefined as unknown

  private constructor(every: number) {
    this.#timer = setInterval(() => this.#here(), every)
    this.#timer.unref()
  }

  static async open(store: Pick<Store, 'watch'>, every = hereEvery): Promise<Live> {
    const live = new Live(every)
    live.#stop = await store.watch({
      changed: (change) => live.#changed(change),
      // Sent away, every screen comes again and reads what it missed.
      missed: () => live.#endAll(),
    })
    return live
  }

  /** How many screens listen. */
  get size(): number {
    return this.#lines.size
  }

  /** The answer to a screen that listens to a clinic from now on. */
  listen(clinic: string, stillMay: () => Promise<boolean>): Response {
    const waiting = new Waiting()
    const line: Line = { clinic, stillMay, tell: (event) => waiting.put(event), end: () => waiting.end() }
    this.#lines.add(line)
    waiting.put(`retry: ${comeAgainAfter}\nevent: here\ndata: {}\n\n`)
    const body = new ReadableStream<Uint8Array>(
      {
        pull: async (controller) => {
          const next = await waiting.next()
          if (next !== undefined) return controller.enqueue(text.encode(next))
          this.#lines.delete(line)
          controller.close()
        },
        cancel: () => {
          this.#lines.delete(line)
          waiting.end()
        },
      },
      { highWaterMark: 0 },
    )
    return new Response(body, {
      headers: {
        'content-type': 'text/event-stream',
        'cache-control': 'no-store',
        // A proxy before the server must pass every event on at once.
        'x-accel-buffering': 'no',
      },
    })
  }

  /** Ends every line; nobody is told anything afterwards. */
  close(): void {
    clearInterval(this.#timer)
    this.#stop()
    this.#endAll()
  }

  #changed({ clinic, position, streams }: Change): void {
    const event = `event: change\ndata: ${JSON.stringify({ position, streams })}\n\n`
    for (const line of this.#lines) if (line.clinic === clinic) line.tell(event)
  }

  #here(): void {
    for (const line of this.#lines) {
      line.stillMay().then(
        (may) => (may ? line.tell('event: here\ndata: {}\n\n') : line.end()),
        () => line.end(),
      )
    }
  }

  #endAll(): void {
    for (const line of this.#lines) line.end()
  }
}

/** More than this unread, and the screen is sent away: it comes again and reads the whole. */
const mostWaiting = 1_000

/** What one screen has still to read. It waits here, not in the network's buffers, and it never grows without end. */
class Waiting {
  #events: string[] = []
  #ended = false
  #wake: (() => void) | undefined

  put(event: string): void {
    if (this.#ended) return
    this.#events.push(event)
    if (this.#events.length > mostWaiting) this.end()
    this.#wake?.()
  }

  end(): void {
    this.#ended = true
    this.#events = []
    this.#wake?.()
  }

  /** Everything that waits, in one piece; undefined once it ended. */
  async next(): Promise<string | undefined> {
    while (this.#events.length === 0 && !this.#ended) {
      await new Promise<void>((resolve) => {
        this.#wake = resolve
      })
    }
    if (this.#events.length === 0) return undefined
    return this.#events.splice(0).join('')
  }
}
