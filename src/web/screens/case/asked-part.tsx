import { type ReactNode, useState } from 'react'
import { connection } from '../../journal/live.ts'
import { useSignal } from '../../journal/signal.ts'
import chapter from './chapter.module.css'
import panels from './panels.module.css'

/** A part of the case page that is asked of the server when it is opened, and says so while there is no server. */
export function AskedPart(props: {
  readonly id: string
  readonly words: { readonly title: string; readonly open: string; readonly away: string }
  readonly children: ReactNode
}) {
  const { id, words, children } = props
  const [open, setOpen] = useState(false)
  const away = useSignal(connection) === 'lost'
  return (
    <section aria-labelledby={`${id}-title`} className={chapter.chapter} data-screen-only>
      <h2 id={`${id}-title`}>{words.title}</h2>
      <details
        id={id}
        className={panels.opener}
        open={open}
        tabIndex={-1}
        onToggle={(event) => setOpen(event.currentTarget.open)}
      >
        <summary>{words.open}</summary>
        {open && (away ? <p role="status">{words.away}</p> : children)}
      </details>
    </section>
  )
}
