import { useEffect } from 'react'
import { Refused, Unreachable } from './api.ts'
import { keep, putKept } from './database.ts'
import { Signal, useSignal } from './signal.ts'

/** What a screen knows of something it reads: nothing yet, a copy of before, or as the server has it. */
export type Reading<Value> =
  | { readonly kind: 'loading' }
  | { readonly kind: 'read'; readonly value: Value; readonly from: 'server' | 'device'; readonly asOf: string }
  | { readonly kind: 'failed'; readonly because: string; readonly code: string }

/** A reading that the server refused or did not answer; anything else is a fault of the program and is thrown on. */
export function failed(error: unknown): Extract<Reading<never>, { kind: 'failed' }> {
  if (error instanceof Refused) return { kind: 'failed', because: error.message, code: error.code }
  if (error instanceof Unreachable) return { kind: 'failed', because: error.message, code: 'unreachable' }
  throw error
}

/** A thing read from the server, kept on this device, and read again whenever it changed. */
export class Source<Value extends { readonly asOf: string }> {
  readonly reading = new Signal<Reading<Value>>({ kind: 'loading' })
  #run: Promise<boolean> | null = null
  #again = false
  #started = false
  #shown = 0
  readonly #kept: () => Promise<Value | undefined>
  readonly #fetch: (before: Value | undefined) => Promise<Value>
  readonly #put: (value: Value) => Promise<void>

  constructor(parts: {
    readonly kept: () => Promise<Value | undefined>
    readonly fetch: (before: Value | undefined) => Promise<Value>
    readonly put: (value: Value) => Promise<void>
  }) {
    this.#kept = parts.kept
    this.#fetch = parts.fetch
    this.#put = parts.put
  }

  /** Stands on a screen until what is returned is called. */
  show(): () => void {
    this.#shown += 1
    void this.#start()
    return () => {
      this.#shown -= 1
    }
  }

  /** Shows the copy of this device, if any, then asks the server. */
  async #start(): Promise<void> {
    if (!this.#started) {
      this.#started = true
      const kept = await this.#kept()
      if (kept && this.reading.get().kind === 'loading') {
        this.reading.set({ kind: 'read', value: kept, from: 'device', asOf: kept.asOf })
      }
    }
    await this.refresh()
  }

  forget(): void {
    this.reading.set({ kind: 'loading' })
  }

  async refreshWhereShown(): Promise<void> {
    if (this.#shown > 0) await this.refresh()
  }

  /** Resolves once a reading begun after this call has ended: false when the server did not answer it. */
  refresh(): Promise<boolean> {
    if (this.#run) {
      this.#again = true
      return this.#run
    }
    const run = this.#untilStill().finally(() => {
      this.#run = null
    })
    this.#run = run
    return run
  }

  async #untilStill(): Promise<boolean> {
    let answered: boolean
    do {
      this.#again = false
      answered = await this.#once()
    } while (this.#again)
    return answered
  }

  async #once(): Promise<boolean> {
    const now = this.reading.get()
    const before = now.kind === 'read' ? now.value : undefined
    try {
      const value = await this.#fetch(before)
      this.reading.set({ kind: 'read', value, from: 'server', asOf: value.asOf })
      await this.#put(value)
      return true
    } catch (error) {
      const failure = failed(error)
      this.reading.set(before ? { kind: 'read', value: before, from: 'device', asOf: before.asOf } : failure)
      return failure.code !== 'unreachable'
    }
  }
}

const keptSources: { readonly forget: () => void }[] = []

/** A source of which there is one, kept on this device under its name. */
export function keptSource<Value extends { readonly asOf: string }>(
  name: string,
  fetch: (before: Value | undefined) => Promise<Value>,
): Source<Value> {
  const source = new Source<Value>({ kept: () => keep<Value>(name), fetch, put: (value) => putKept(name, value) })
  keptSources.push(source)
  return source
}

/** Takes what they read off the screen. */
export function forgetKeptSources(): void {
  for (const source of keptSources) source.forget()
}

/** A source as it stands, read anew when it comes on the screen. */
export function useSource<Value extends { readonly asOf: string }>(source: Source<Value>): Reading<Value> {
  useEffect(() => source.show(), [source])
  return useSignal(source.reading)
}
