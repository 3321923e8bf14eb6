import { type ReactNode, useEffect, useId, useRef } from 'react'
import styles from './modal.module.css'

/** A dialog over the page. Escape and the close button end it; focus goes in and comes back by the browser's own rules. */
export function Modal(props: {
  readonly title: string
  readonly close: string
  readonly onClose: () => void
  readonly wide?: boolean
  readonly children: ReactNode
}) {
  const { title, close, onClose, wide = false, children } = props
  const dialog = useRef<HTMLDialogElement>(null)
  const id = useId()
  useEffect(() => {
    const here = dialog.current
    here?.showModal()
    return () => here?.close()
  }, [])
  return (
    <dialog ref={dialog} aria-labelledby={id} className={wide ? styles.wide : styles.dialog} onClose={onClose}>
      <header className={styles.head}>
        <h2 id={id}>{title}</h2>
        <button type="button" data-weight="quiet" onClick={onClose}>
          {close}
        </button>
      </header>
      {children}
    </dialog>
  )
}
