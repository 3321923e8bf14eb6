import { useCallback, useRef } from 'react'

/** A second tap of the same finger comes sooner than this. */
const doubleTapMs = 500

/**
 * Runs what a tap keeps, and nothing else until a moment after it was kept: a finger that trembles writes one entry.
 * `rest` is nought where what was kept leaves nothing behind that a second tap could keep.
 *
 * @example const once = useOneTap(); <button onClick={() => once(() => keep(look))}>
 */
export function useOneTap(rest = doubleTapMs): (act: () => Promise<unknown>) => void {
  const busy = useRef(false)
  return useCallback(
    (act) => {
      if (busy.current) return
      busy.current = true
      const free = () => {
        busy.current = false
      }
      void act().finally(() => (rest === 0 ? free() : setTimeout(free, rest)))
    },
    [rest],
  )
}
