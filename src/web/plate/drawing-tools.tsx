import { useEffect, useRef, useState } from 'react'
import { plateOnScreen as words } from '#content/wording/app-plate.ts'
import { fill } from '#core/outcome/finding.ts'
import { drawnTools, type Hand, mostStrokes, signs } from '#core/plate/hand.ts'
import { Modal } from '../design/modal.tsx'
import styles from './plate.module.css'

export const tools = [...drawnTools, ...signs] as const
export type Tool = (typeof tools)[number]

/** What can be done with the hand: choose a tool, take the last one back, clear, keep. */
export function DrawingTools(props: {
  readonly tool: Tool | null
  readonly hand: Hand
  readonly penDraws: boolean
  readonly onTool: (tool: Tool | null) => void
  readonly onUndo: () => void
  readonly onClear: () => void
  readonly onKeep: () => void
}) {
  const { tool, hand, penDraws, onTool, onUndo, onClear, onKeep } = props
  const [asking, setAsking] = useState(false)
  const { drawing } = words
  const start = useRef<HTMLButtonElement>(null)
  const wasOpen = useRef(false)
  const closed = tool === null && hand.strokes.length + hand.marks.length === 0
  useEffect(() => {
    // Who closed the tools with the keyboard stands on the button that opens them again.
    if (closed && wasOpen.current) start.current?.focus({ preventScroll: true })
    wasOpen.current = !closed
  }, [closed])
  const count = hand.strokes.length + hand.marks.length
  const draws = tool === 'pen' || tool === 'marker'
  if (closed) {
    return (
      <p data-screen-only="">
        <button ref={start} type="button" onClick={() => onTool('pen')}>
          {drawing.start}
        </button>
      </p>
    )
  }
  return (
    <div className={styles.tools} data-screen-only="">
      <div role="toolbar" aria-label={drawing.toolbar} className={styles.row}>
        {tools.map((one) => (
          <button
            key={one}
            type="button"
            className={styles.switch}
            aria-pressed={tool === one}
            onClick={() => onTool(one)}
          >
            {drawing.tools[one]}
          </button>
        ))}
        {tool && (
          <button type="button" onClick={() => onTool(null)}>
            {drawing.stop}
          </button>
        )}
      </div>
      <div className={styles.row}>
        <button type="button" disabled={count === 0} onClick={onUndo}>
          {drawing.undo}
        </button>
        <button type="button" disabled={count === 0} onClick={() => setAsking(true)}>
          {drawing.clear}
        </button>
        <button type="button" data-weight="main" disabled={count === 0} onClick={onKeep}>
          {drawing.keep}
        </button>
      </div>
      {tool && <p className={styles.help}>{draws && penDraws ? drawing.penDraws : drawing.help[tool]}</p>}
      {hand.strokes.length >= mostStrokes && <p className={styles.warn}>{drawing.full}</p>}
      {count > 0 && <p className={styles.help}>{fill(drawing.notKept, { count: String(count) })}</p>}
      {asking && (
        <Modal title={drawing.clearTitle} close={drawing.clearNo} onClose={() => setAsking(false)}>
          <p>{drawing.clearHelp}</p>
          <button
            type="button"
            data-weight="main"
            onClick={() => {
              setAsking(false)
              onClear()
            }}
          >
            {drawing.clearYes}
          </button>
        </Modal>
      )}
    </div>
  )
}
