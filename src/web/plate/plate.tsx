import { type ReactNode, Suspense, useId, useMemo, useRef, useState } from 'react'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateOnScreen as words } from '#content/wording/app-plate.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { drawPlate } from '#core/plate/draw-plate.ts'
import { emptyHand, type Hand, type Mark, mostStrokes } from '#core/plate/hand.ts'
import { type Layer, type PlateParameters, plateVersion, type View, views } from '#core/plate/parameters.ts'
import type { StructureId } from '#core/plate/scene.ts'
import { sheetOf } from '#core/plate/sheet.ts'
import type { Theme } from '#core/plate/theme.ts'
import { lazyPart } from '../ahead.tsx'
import { Fault } from '../shell/fault.tsx'
import { DrawingSurface } from './drawing-surface.tsx'
import { DrawingTools, type Tool } from './drawing-tools.tsx'
import { InWords } from './in-words.tsx'
import { LayerSwitches } from './layer-switches.tsx'
import styles from './plate.module.css'
import { PlatePicture } from './plate-picture.tsx'
import { TouchLayer } from './touch-layer.tsx'
import { useTheme } from './use-theme.ts'
import { useWidth } from './use-width.ts'

const PartPanel = lazyPart(() => import('./part-panel.tsx'))

/** What was drawn on each view and is not kept yet. */
export type Hands = Readonly<Partial<Record<View, Hand>>>
/** All of a `plate-drawing` body that the plate knows; title, for whom and who watched are asked by whoever writes it. */
export type DrawingToKeep = { readonly plate: number; readonly parameters: PlateParameters } & Hand

export type PlateProps = {
  readonly parameters: PlateParameters
  /** The case that findings, plan and risks come from; without it no panel opens. */
  readonly theCase?: Case
  readonly onEntry?: (entry: string) => void
  readonly onStructure?: (structure: StructureId | null) => void
  /** Drawing is offered where there is somebody to hand it to. Called after every stroke: keep it where it survives. */
  readonly hands?: Hands
  readonly onHands?: (hands: Hands) => void
  readonly onKeep?: (drawing: DrawingToKeep) => void
  readonly theme?: Theme
  /** Level of the headings in it: one below the heading it stands under. */
  readonly level?: 2 | 3
  /** Stands between the switches and the drawing. */
  readonly children?: ReactNode
}

/**
 * The plate of one ear to look at, to touch and to draw on. It keeps view and layers itself; what is drawn belongs to
 * the caller.
 *
 * @example <Plate parameters={parameters} theCase={theCase} hands={hands} onHands={setHands} onKeep={write} />
 */
export function Plate(props: PlateProps) {
  const { theCase, onEntry, onStructure, hands = {}, onHands, onKeep, level = 3, children } = props
  const Heading = `h${level}` as const
  const [view, setView] = useState(props.parameters.view)
  const [on, setOn] = useState<readonly Layer[]>(props.parameters.layers)
  const [chosen, setChosen] = useState<StructureId | null>(null)
  const [tool, setTool] = useState<Tool | null>(null)
  const [penDraws, setPenDraws] = useState(false)
  const [news, setNews] = useState('')
  const box = useRef<HTMLDivElement>(null)
  const svg = useRef<SVGSVGElement>(null)
  const id = useId()
  const asked = useTheme()
  const theme = props.theme ?? asked
  const { width, words: larger } = useWidth(box)

  // The same parameters in a new object are the same plate: it is not drawn again at every tick of the page around it.
  const asText = JSON.stringify(props.parameters)
  const parameters = useMemo(
    (): PlateParameters => ({ ...(JSON.parse(asText) as PlateParameters), view, layers: on }),
    [asText, view, on],
  )
  const scene = useMemo(() => drawPlate(parameters, plateFacts, plateInEnglish), [parameters])
  const sheet = useMemo(() => {
    const base = width >= 620 ? 13 : 12
    return sheetOf(scene, { width, theme, ...(larger !== 1 && { pixelLabels: Math.round(base * larger) }) })
  }, [scene, width, theme, larger])
  const hand = hands[view] ?? emptyHand
  const marking = tool === 'ring' || tool === 'arrow'
  const draws = tool === 'pen' || tool === 'marker'

  const put = (next: Hand, said: string) => {
    setNews(said)
    onHands?.({ ...hands, [view]: next })
  }
  const choose = (structure: StructureId | null) => {
    setChosen(structure)
    onStructure?.(structure)
  }
  const onPart = (structure: StructureId) => {
    if (tool === 'ring' || tool === 'arrow') toggle({ structure, sign: tool })
    else choose(structure === chosen ? null : structure)
  }
  const toggle = (mark: Mark) => {
    const same = (one: Mark) => one.structure === mark.structure && one.sign === mark.sign
    const there = hand.marks.some(same)
    const marks = there ? hand.marks.filter((one) => !same(one)) : [...hand.marks, mark]
    const part = plateInEnglish.structures[mark.structure]
    put({ ...hand, marks }, fill(there ? words.drawing.unmarked : words.drawing.marked, { part }))
  }

  return (
    <figure className={styles.plate} aria-label={fill(words.caption, { side: parameters.side })}>
      <div className={styles.head} data-screen-only="">
        <ViewSwitch view={view} onView={setView} />
        {children}
      </div>
      {onHands && (
        <DrawingTools
          tool={tool}
          hand={hand}
          penDraws={penDraws}
          onTool={setTool}
          onUndo={() => put(withoutLast(hand, tool), words.drawing.takenBack)}
          onClear={() => put(emptyHand, words.drawing.cleared)}
          onKeep={() => onKeep?.({ plate: plateVersion, parameters, ...hand })}
        />
      )}
      <div ref={box} className={draws ? `${styles.box} ${styles.drawing}` : styles.box}>
        <PlatePicture sheet={sheet} hand={hand} describedBy={`${id}-words`} svg={svg}>
          <TouchLayer sheet={sheet} chosen={chosen} marking={marking} onPart={onPart} />
          {draws && hand.strokes.length < mostStrokes && (
            <DrawingSurface
              sheet={sheet}
              svg={svg}
              tool={tool}
              onStroke={(stroke) => put({ ...hand, strokes: [...hand.strokes, stroke] }, words.drawing.drawn)}
              onPen={() => setPenDraws(true)}
            />
          )}
        </PlatePicture>
      </div>
      <p role="status" className="said">
        {news}
      </p>
      {chosen && theCase && (
        <section className={styles.panel} aria-label={plateInEnglish.structures[chosen]}>
          <header className={styles.panelHead}>
            <Heading>{plateInEnglish.structures[chosen]}</Heading>
            <button type="button" data-weight="quiet" onClick={() => choose(null)}>
              {words.panel.close}
            </button>
          </header>
          <Fault>
            <Suspense fallback={<p role="status">{words.panel.reading}</p>}>
              <PartPanel theCase={theCase} side={parameters.side} structure={chosen} level={level} onEntry={onEntry} />
            </Suspense>
          </Fault>
        </section>
      )}
      <LayerSwitches parameters={parameters} onLayers={setOn} />
      <InWords id={`${id}-words`} scene={scene} hand={hand} parts={{ sheet, onPart, level }} />
    </figure>
  )
}

function ViewSwitch({ view, onView }: { readonly view: View; readonly onView: (view: View) => void }) {
  return (
    <fieldset className={styles.choice}>
      <legend>{words.views.label}</legend>
      {views.map((one) => (
        <button
          key={one}
          type="button"
          className={styles.switch}
          aria-pressed={one === view}
          onClick={() => onView(one)}
        >
          {words.views[one]}
        </button>
      ))}
    </fieldset>
  )
}

/** The last mark while parts are marked, else the last line; whatever there is when there is only one of both. */
function withoutLast(hand: Hand, tool: Tool | null): Hand {
  const marksFirst = (tool === 'ring' || tool === 'arrow') && hand.marks.length > 0
  if (marksFirst || hand.strokes.length === 0) return { ...hand, marks: hand.marks.slice(0, -1) }
  return { ...hand, strokes: hand.strokes.slice(0, -1) }
}
