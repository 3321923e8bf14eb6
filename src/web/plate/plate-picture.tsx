import { memo, type ReactNode, type RefObject, useMemo } from 'react'
import type { Hand } from '#core/plate/hand.ts'
import { handNodes } from '#core/plate/hand-nodes.ts'
import type { Sheet } from '#core/plate/sheet.ts'
import { sheetNodes } from '#core/plate/svg.ts'
import styles from './plate.module.css'
import { silent, svgElement } from './svg-element.tsx'

/** The sheet itself: what is printed, what was drawn by hand, and whatever stands above both. */
export function PlatePicture(props: {
  readonly sheet: Sheet
  readonly hand: Hand
  /** Id of the words that describe it. */
  readonly describedBy: string
  readonly svg?: RefObject<SVGSVGElement | null>
  readonly children?: ReactNode
}) {
  const { sheet, hand, describedBy, svg, children } = props
  const { width, height } = sheet.layout
  return (
    <svg
      ref={svg}
      className={styles.sheet}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role={children ? 'group' : 'img'}
      aria-label={`${sheet.scene.title}. ${sheet.scene.subtitle}`}
      aria-describedby={describedBy}
    >
      <Printed sheet={sheet} />
      {svgElement(silent([handNodes(sheet, hand)]), 0)}
      {children}
    </svg>
  )
}

/** Hundreds of lines that change only with the sheet, not with every movement of the pen. */
const Printed = memo(function Printed({ sheet }: { readonly sheet: Sheet }) {
  return useMemo(() => svgElement(silent(sheetNodes(sheet)), 0), [sheet])
})
