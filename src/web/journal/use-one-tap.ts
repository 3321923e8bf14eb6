import { useCallback, useRef } from 'react'

/** A second tap of the same finger comes sooner than this. */
const doubleTapMs = 500

/**
 * Runs what a tap keeps, and nothing else until a moment after it was kept: a finger that trembles writes one entry.
 *
 * @example const once = useOneTap(); <button onClick={() => once(() => keep(look))}>
 */
export function useOneTap(): (act: () => Promise<unknown>) => void {
  const busy = useRef(false)
  return useCallback((act) => {
    if (busy.current) return
    busy.current = true
    void act().finally(() => setTimeout(() => void (busy.current = false), doubleTapMs))
  }, [])
}
