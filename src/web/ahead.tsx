import { type ComponentProps, type ComponentType, lazy } from 'react'
import { PartNotLoaded } from './part-not-loaded.ts'

const parts: (() => Promise<unknown>)[] = []

/**
 * A part of the app that the first page need not wait for. It is loaded when it is first shown, and otherwise ahead of
 * time: without TLS nothing but the open page keeps the app's own files, and the network may be gone by then. A part
 * that cannot be loaded is said by the nearest `Fault` around it.
 */
// biome-ignore lint/suspicious/noExplicitAny: the type of React.lazy itself, so that any component's properties pass
export function lazyPart<Part extends ComponentType<any>>(load: () => Promise<{ default: Part }>) {
  parts.push(load)
  const whole = () =>
    load().catch((cause: unknown) => {
      throw new PartNotLoaded(cause, () => {
        now = lazy(whole)
      })
    })
  let now = lazy(whole)
  // biome-ignore lint/correctness/noComponentHookFactories: called once for each part, where its module is read
  return function LazyPart(props: ComponentProps<Part>) {
    const Now = now
    return <Now {...props} />
  }
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
