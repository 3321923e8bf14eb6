import { useSyncExternalStore } from 'react'

/** A value that many places of the screen look at. Changing it draws them anew. */
export class Signal<Value> {
  #value: Value
  readonly #listeners = new Set<() => void>()

  constructor(value: Value) {
    this.#value = value
  }

  get = (): Value => this.#value

  set(value: Value): void {
    if (Object.is(value, this.#value)) return
    this.#value = value
    for (const listener of this.#listeners) listener()
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }
}

export function useSignal<Value>(signal: Signal<Value>): Value {
  return useSyncExternalStore(signal.subscribe, signal.get, signal.get)
}
