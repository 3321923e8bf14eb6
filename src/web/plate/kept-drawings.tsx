import { useId, useMemo, useRef } from 'react'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { keptDrawingInEnglish, plateInEnglish } from '#content/wording/plate.ts'
import type { Side } from '#core/animal/species.ts'
import type { Case } from '#core/journal/fold.ts'
import { drawPlate } from '#core/plate/draw-plate.ts'
import { drawingsOf, type KeptDrawing, sayDrawing } from '#core/plate/drawings-of.ts'
import { sheetOf } from '#core/plate/sheet.ts'
import { InWords } from './in-words.tsx'
import styles from './plate.module.css'
import { PlatePicture } from './plate-picture.tsx'
import { useTheme } from './use-theme.ts'
import { useWidth } from './use-width.ts'

/**
 * The drawings somebody kept of one ear, newest first, each from its own parameters and exactly as it was drawn.
 *
 * @example <KeptDrawings theCase={theCase} side="LEFT" nameOf={(id) => personNamed(file, id)} />
 */
export function KeptDrawings(props: {
  readonly theCase: Case
  readonly side: Side
  /** The name of a person or contact. */
  readonly nameOf: (id: string) => string
}) {
  const { theCase, side, nameOf } = props
  return drawingsOf(theCase, side)
    .reverse()
    .map((drawing) => <Kept key={drawing.line.header.id} drawing={drawing} nameOf={nameOf} />)
}

function Kept({ drawing, nameOf }: { readonly drawing: KeptDrawing; readonly nameOf: (id: string) => string }) {
  const box = useRef<HTMLDivElement>(null)
  const { width } = useWidth(box)
  const theme = useTheme()
  const id = useId()
  const { body } = drawing.line
  const scene = useMemo(() => drawPlate(body.parameters, plateFacts, plateInEnglish), [body])
  const sheet = useMemo(() => sheetOf(scene, { width, theme }), [scene, width, theme])
  const { caption, doubts } = sayDrawing(drawing, keptDrawingInEnglish, nameOf)
  return (
    <figure className={styles.plate}>
      <div ref={box} className={styles.box}>
        <PlatePicture sheet={sheet} hand={body} describedBy={id} />
      </div>
      <figcaption className={styles.caption}>{caption}</figcaption>
      {doubts.map((doubt) => (
        <p key={doubt} className={styles.doubt}>
          {doubt}
        </p>
      ))}
      <InWords id={id} scene={scene} hand={body} />
    </figure>
  )
}
