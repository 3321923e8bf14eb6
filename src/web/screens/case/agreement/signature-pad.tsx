import { type PointerEvent, useRef, useState } from 'react'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { signatureBox, strokeLine, strokeOfHand } from '#core/agreement/signature.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { Point } from '#core/plate/geometry.ts'
import styles from './agreement.module.css'

/** A box to sign in with finger, pen or mouse. The name typed below it does the same for whoever cannot draw. */
export function SignaturePad(props: {
  readonly strokes: readonly (readonly number[])[]
  readonly onStrokes: (strokes: readonly (readonly number[])[]) => void
}) {
  const { strokes, onStrokes } = props
  const svg = useRef<SVGSVGElement>(null)
  const growing = useRef<{ readonly pointer: number; readonly points: Point[] } | null>(null)
  const [live, setLive] = useState<readonly number[] | null>(null)

  const place = ({ clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Point => {
    const box = svg.current?.getBoundingClientRect()
    if (!box || box.width === 0) return [0, 0]
    const { width, height } = signatureBox
    return [((clientX - box.left) / box.width) * width, ((clientY - box.top) / box.height) * height]
  }
  const onDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0 || growing.current) return
    event.currentTarget.setPointerCapture(event.pointerId)
    growing.current = { pointer: event.pointerId, points: [place(event)] }
    setLive(strokeOfHand(growing.current.points))
  }
  const onMove = (event: PointerEvent<SVGSVGElement>) => {
    if (growing.current?.pointer !== event.pointerId) return
    const several = event.nativeEvent.getCoalescedEvents?.() ?? []
    growing.current.points.push(...(several.length > 0 ? several : [event]).map(place))
    setLive(strokeOfHand(growing.current.points))
  }
  const onUp = (event: PointerEvent<SVGSVGElement>) => {
    if (growing.current?.pointer !== event.pointerId) return
    onStrokes([...strokes, strokeOfHand(growing.current.points)])
    growing.current = null
    setLive(null)
  }
  const said =
    strokes.length === 0 ? words.signHere : fill(words.signed, { count: sayCount(words.strokes, strokes.length) })
  return (
    <div className={styles.pad}>
      <svg
        ref={svg}
        viewBox={`0 0 ${signatureBox.width} ${signatureBox.height}`}
        role="img"
        aria-label={said}
        onPointerDown={onDown}
        onPointerMove={onMove}
        onPointerUp={onUp}
        onPointerCancel={onUp}
      >
        <title>{said}</title>
        <line x1="200" y1="1600" x2="5800" y2="1600" className={styles.rule} />
        {[...strokes, ...(live ? [live] : [])].map((points, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: strokes are only ever added at the end
          <path key={index} d={strokeLine(points)} className={styles.ink} />
        ))}
      </svg>
      <p className="row">
        <span className="soft" aria-live="polite">
          {said}
        </span>
        {strokes.length > 0 && (
          <button type="button" data-weight="quiet" onClick={() => onStrokes([])}>
            {words.clear}
          </button>
        )}
      </p>
    </div>
  )
}
