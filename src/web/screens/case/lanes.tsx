import { useLayoutEffect, useMemo, useRef, useState } from 'react'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { lanesInEnglish, lanesPageInEnglish as words } from '#content/wording/app-lanes.ts'
import { laneItems, sayGap, sayKind } from '#core/chapters/lane-words.ts'
import { type Lane, type Lanes as Layout, lanesOf, type Mark } from '#core/chapters/lanes.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { useCaseView } from './case-view.ts'
import styles from './lanes.module.css'

const step = 24
const head = 26
const axisHeight = 56

/** LEFT above, RIGHT below, the animal as a whole between: every entry a mark that leads to it. */
export function Lanes() {
  const { file } = useCaseView()
  const box = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(1040)
  useLayoutEffect(() => {
    const here = box.current
    if (!here) return
    const measure = () => setWidth(Math.max(300, Math.floor(here.clientWidth)))
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(here)
    return () => watch.disconnect()
  }, [])
  const layout = useMemo(() => lanesOf(file, { width }), [file, width])
  if (layout.marks.length === 0) return null
  return (
    <div className={styles.lanes}>
      <h2>{words.title}</h2>
      <div className={styles.frame}>
        <Names layout={layout} />
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reached by the keyboard */}
        <section ref={box} className={styles.box} tabIndex={0} aria-label={words.title}>
          <Drawing layout={layout} />
        </section>
      </div>
      <p className={styles.scale}>{words.scale}</p>
      <InWords layout={layout} />
    </div>
  )
}

/** The names of the lanes stay in their place while the time beside them is moved. */
function Names({ layout }: { readonly layout: Layout }) {
  const places = placesOf(layout)
  const { lanes } = caseInEnglish
  return (
    <svg
      className={styles.names}
      width={72}
      height={places.total}
      viewBox={`0 0 72 ${places.total}`}
      aria-hidden="true"
    >
      <text x={0} y={(head + places.left) / 2 + 4} className={styles.side}>
        {lanes.left}
      </text>
      <text x={0} y={(places.axis + places.animal) / 2 + 4}>
        {lanes.animal}
      </text>
      <text x={0} y={(places.animal + places.total) / 2 + 4} className={styles.side}>
        {lanes.right}
      </text>
    </svg>
  )
}

/** Heights of the parts, from how many levels each lane needs; between LEFT and the animal lies the axis. */
function placesOf({ levels }: Layout) {
  const height = (of: Lane) => Math.max(1, levels[of]) * step + 8
  const left = head + height('LEFT')
  const axis = left + axisHeight
  const animal = axis + height('animal')
  return { left, axis, animal, total: animal + height('RIGHT') }
}

function Drawing({ layout }: { readonly layout: Layout }) {
  const places = placesOf(layout)
  const yOf = ({ lane: of, level }: Mark) => {
    if (of === 'LEFT') return places.left - level * step - step / 2 - 4
    return (of === 'animal' ? places.axis : places.animal) + level * step + step / 2 + 4
  }
  const { stretches, gaps, ticks, marks, width } = layout
  return (
    <svg
      className={styles.drawing}
      width={width}
      height={places.total}
      viewBox={`0 0 ${width} ${places.total}`}
      aria-label={words.title}
    >
      <rect x={0} y={places.left} width={width} height={axisHeight} className={styles.axis} />
      <line x1={0} x2={width} y1={places.animal} y2={places.animal} className={styles.rule} />
      {stretches.map(({ chapter, x, from }) => (
        <g key={`${chapter} ${from}`}>
          <line x1={x + 0.5} x2={x + 0.5} y1={0} y2={places.total} className={styles.rule} />
          <text x={x + 8} y={16} className={styles.chapter}>
            {chaptersInEnglish.chapters[chapter]}
          </text>
        </g>
      ))}
      {gaps.map((gap) => (
        <g key={gap.from}>
          <line
            x1={gap.x + 4}
            x2={gap.x + gap.width - 4}
            y1={places.axis - 18}
            y2={places.axis - 18}
            className={styles.gap}
          />
          {gap.width > 44 && (
            <text x={gap.x + gap.width / 2} y={places.axis - 5} className={styles.gapWords}>
              {sayGap(gap, lanesInEnglish)}
            </text>
          )}
        </g>
      ))}
      {ticks.map(({ x, label, is }) => (
        <text
          key={`${x} ${label}`}
          x={x}
          y={places.left + (is === 'date' ? 16 : 32)}
          className={is === 'date' ? styles.date : styles.clock}
        >
          {label}
        </text>
      ))}
      {marks.map((mark) => (
        <MarkLink key={mark.lines[0]?.header.id} mark={mark} y={yOf(mark)} />
      ))}
    </svg>
  )
}

/** A round for one ear's entry, a square for the animal's, a ring with a number for several. */
function MarkLink({ mark, y }: { readonly mark: Mark; readonly y: number }) {
  const { x, lines, lane: of, conflict } = mark
  const [first] = lines
  if (!first) return null
  const name = lines
    .map((line) => `${sayKind(line, lanesInEnglish)}, ${sayMoment(line.header.happenedAt)}`)
    .slice(0, 6)
    .join('; ')
  const said = [
    lanesInEnglish.lanes[of],
    ...(lines.length > 1 ? [fill(words.bundle, { count: String(lines.length) })] : []),
    name,
    ...(conflict ? [words.conflict] : []),
    ...(mark.orderUncertain ? [words.orderUncertain] : []),
  ].join(': ')
  return (
    <a href={`#entry-${first.header.id}`} aria-label={said} className={styles.mark} data-conflict={conflict}>
      <title>{said}</title>
      <rect x={x - 12} y={y - 12} width={24} height={24} className={styles.touch} />
      {of === 'animal' ? (
        <rect x={x - 5} y={y - 5} width={10} height={10} className={styles.shape} />
      ) : (
        <circle cx={x} cy={y} r={lines.length > 1 ? 9 : 6} className={styles.shape} data-many={lines.length > 1} />
      )}
      {lines.length > 1 && (
        <text x={x} y={y + 4} className={styles.number}>
          {lines.length}
        </text>
      )}
      {conflict && (
        <text x={x + 8} y={y - 4} className={styles.warn}>
          ▲
        </text>
      )}
    </a>
  )
}

/** The same as an ordered list. */
function InWords({ layout }: { readonly layout: Layout }) {
  const [open, setOpen] = useState(false)
  return (
    <details className={styles.words} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.list}</summary>
      {open && (
        <ol>
          {laneItems(layout, lanesInEnglish).map((item) =>
            item.kind === 'entry' ? (
              <li key={item.line.header.id}>
                <a href={`#entry-${item.line.header.id}`}>{item.said}</a>
              </li>
            ) : (
              <li key={item.said} className={styles.silence}>
                {item.said}
              </li>
            ),
          )}
        </ol>
      )}
    </details>
  )
}
