import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import styles from './scroll-box.module.css'

/**
 * A table or drawing that may be wider than the page: it scrolls by itself. Only while it is wider can the keyboard stop
 * at it, so that nobody tabs through tables that need no scrolling.
 *
 * @example <ScrollBox label="Old and new"><table>…</table></ScrollBox>
 */
export function ScrollBox({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null)
  const [wider, setWider] = useState(false)
  useLayoutEffect(() => {
    const here = box.current
    if (!here) return
    const measure = () => setWider(here.scrollWidth > here.clientWidth)
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(here)
    return () => watch.disconnect()
  }, [])
  return (
    <div ref={box} className={styles.box} {...(wider && { tabIndex: 0, role: 'group', 'aria-label': label })}>
      {children}
    </div>
  )
}
