import type { Change, ChangeListener } from '#actions/store.ts'

/** Who listens to a store. A listener that fails stops nobody else, and no write. */
export class Listeners {
  readonly #all = new Set<ChangeListener>()

  /** Returns how to take it out again. */
  add(listener: ChangeListener): () => void {
    this.#all.add(listener)
    return () => this.#all.delete(listener)
  }

  changed(change: Change): void {
    for (const listener of this.#all) quietly(() => listener.changed(change))
  }

  missed(): void {
    for (const listener of this.#all) quietly(() => listener.missed())
  }
}

function quietly(telling: () => void): void {
  try {
    telling()
  } catch {
    // What was written is on disk whether or not somebody could be told.
  }
}
