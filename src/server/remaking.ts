import { setTimeout } from 'node:timers/promises'
import type { Change, Store } from '#actions/store.ts'

/** After trouble with disk or database it is tried again; the lists say meanwhile that they are behind. */
const againAfter = 5_000

/**
 * Makes the lists again, a few cases at a time, whenever a change of the house left them behind, and at the start what
 * an ended server left. Everything else is answered between: it never takes more than half of the time.
 */
export class ListRemaking {
  readonly #store: Store
  readonly #log: (line: string) => void
  readonly #running = new Map<string, Promise<void>>()
  readonly #once = new Set<string>()
  readonly #closing = new AbortController()
  #stop = () => undefined as unknown

  private constructor(store: Store, log: (line: string) => void) {
    this.#store = store
    this.#log = log
  }

  static async open(store: Store, log: (line: string) => void): Promise<ListRemaking> {
    const remaking = new ListRemaking(store, log)
    remaking.#stop = await store.watch({
      changed: (change) => remaking.#changed(change),
      // Another process may have left something behind while this one heard nothing.
      missed: () => remaking.#all(),
    })
    remaking.#all()
    return remaking
  }

  /** Ends after the few lists it is at; the next start goes on from there. */
  async close(): Promise<void> {
    this.#stop()
    this.#closing.abort()
    await Promise.all(this.#running.values())
  }

  #changed({ clinic, streams }: Change): void {
    if (streams.some((one) => one === 'clinic' || one.startsWith('register:'))) this.#begin(clinic)
  }

  #all(): void {
    this.#store.clinics().then(
      (clinics) => {
        for (const clinic of clinics) this.#begin(clinic)
      },
      (error) => this.#log(String(error)),
    )
  }

  #begin(clinic: string): void {
    if (this.#closing.signal.aborted) return
    // What is under way may have looked just before this change: it looks once more.
    this.#once.add(clinic)
    if (this.#running.has(clinic)) return
    const run = this.#untilNoneIsBehind(clinic).finally(() => this.#running.delete(clinic))
    this.#running.set(clinic, run)
  }

  async #untilNoneIsBehind(clinic: string): Promise<void> {
    while (this.#once.delete(clinic)) await this.#work(clinic)
  }

  async #work(clinic: string): Promise<void> {
    while (!this.#closing.signal.aborted) {
      const began = performance.now()
      const left = await this.#next(clinic)
      if (left === 'none') return
      const pause = left === 'failed' ? againAfter : performance.now() - began
      await setTimeout(pause, undefined, { signal: this.#closing.signal }).catch(() => undefined)
    }
  }

  async #next(clinic: string): Promise<'some' | 'none' | 'failed'> {
    try {
      return (await this.#store.remakeNext(clinic)) === null ? 'none' : 'some'
    } catch (error) {
      this.#log(String(error))
      return 'failed'
    }
  }
}
