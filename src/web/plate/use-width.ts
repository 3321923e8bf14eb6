import { type RefObject, useLayoutEffect, useState } from 'react'

const narrowest = 280
/** Higher than this a plate no longer stands on one screen. */
const widest = 860

/** The width in whole pixels that an element really has, and how much larger than usual its reader wants words. */
export function useWidth(element: RefObject<HTMLElement | null>): { readonly width: number; readonly words: number } {
  const [width, setWidth] = useState(narrowest)
  useLayoutEffect(() => {
    const here = element.current
    if (!here) return
    const measure = () => setWidth(Math.min(Math.max(Math.floor(here.clientWidth), narrowest), widest))
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(here)
    return () => observer.disconnect()
  }, [element])
  const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize)
  return { width, words: Number.isFinite(root) && root > 0 ? root / 16 : 1 }
}
