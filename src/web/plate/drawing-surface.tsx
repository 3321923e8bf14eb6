import { type PointerEvent, type RefObject, useRef, useState } from 'react'
import type { Point } from '#core/plate/geometry.ts'
import type { DrawnTool, Stroke } from '#core/plate/hand.ts'
import { handNodes } from '#core/plate/hand-nodes.ts'
import { afterPointer, handAway, type PointerKind, type PointerNews, type PointerState } from '#core/plate/pointer.ts'
import { type Sheet, toScene } from '#core/plate/sheet.ts'
import { strokeFrom } from '#core/plate/stroke.ts'
import styles from './plate.module.css'
import { silent, svgElement } from './svg-element.tsx'

/** Takes what pen, finger and mouse do over the drawing, shows the line while it grows, and hands it out when it is whole. */
export function DrawingSurface(props: {
  readonly sheet: Sheet
  readonly svg: RefObject<SVGSVGElement | null>
  readonly tool: DrawnTool
  readonly onStroke: (stroke: Stroke) => void
  readonly onPen: () => void
}) {
  const { sheet, svg, tool, onStroke, onPen } = props
  const hand = useRef<PointerState>(handAway)
  const [growing, setGrowing] = useState<readonly Point[] | null>(null)

  const tell = (news: PointerNews) => {
    const before = hand.current
    const { state, finished } = afterPointer(before, news)
    hand.current = state
    if (state.penDraws && !before.penDraws) onPen()
    if (finished) onStroke(strokeFrom(finished, tool))
    setGrowing(state.drawing?.points ?? null)
  }
  const place = ({ clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Point => {
    const box = svg.current?.getBoundingClientRect()
    if (!box || box.width === 0) return [0, 0]
    const pixels = sheet.layout.width / box.width
    return toScene(sheet, [(clientX - box.left) * pixels, (clientY - box.top) * pixels])
  }
  const onDown = (event: PointerEvent<SVGRectElement>) => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    tell({ news: 'down', pointer: event.pointerId, kind: kindOf(event.pointerType), at: place(event) })
  }
  const onMove = (event: PointerEvent<SVGRectElement>) => {
    if (hand.current.drawing?.pointer !== event.pointerId) return
    const several = event.nativeEvent.getCoalescedEvents?.() ?? []
    const through = (several.length > 0 ? several : [event]).map(place)
    tell({ news: 'move', pointer: event.pointerId, through })
  }
  const { drawing } = sheet.layout
  const live = growing && growing.length > 0 ? { strokes: [strokeFrom(growing, tool)], marks: [] } : null
  return (
    <>
      {live && svgElement(silent([handNodes(sheet, live)]), 0)}
      <rect
        x={drawing.x}
        y={drawing.y}
        width={drawing.width}
        height={drawing.height}
        className={styles.surface}
        onPointerDown={onDown}
        onPointerMove={onMove}
        onPointerUp={({ pointerId }) => tell({ news: 'up', pointer: pointerId })}
        onPointerCancel={({ pointerId }) => tell({ news: 'cancel', pointer: pointerId })}
      />
    </>
  )
}

function kindOf(type: string): PointerKind {
  return type === 'pen' || type === 'touch' ? type : 'mouse'
}
