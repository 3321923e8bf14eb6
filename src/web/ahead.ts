import { type ComponentType, lazy } from 'react'

const parts: (() => Promise<unknown>)[] = []

/**
 * A part of the app that the first page need not wait for. It is loaded when it is first shown, and otherwise ahead of
 * time: without TLS nothing but the open page keeps the app's own files, and the network may be gone by then.
 */
// biome-ignore lint/suspicious/noExplicitAny: the type of React.lazy itself, so that any component's properties pass
export function lazyPart<Part extends ComponentType<any>>(load: () => Promise<{ default: Part }>) {
  parts.push(load)
  return lazy(load)
}

/** Loads every part that was not opened yet, one after the other; a part that fails is tried again when it is opened. */
export async function loadAhead(): Promise<void> {
  for (const load of parts) {
    try {
      await load()
    } catch {
      return
    }
  }
}
