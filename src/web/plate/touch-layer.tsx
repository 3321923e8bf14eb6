import { type KeyboardEvent, useRef, useState } from 'react'
import { plateOnScreen as words } from '#content/wording/app-plate.ts'
import { fill } from '#core/outcome/finding.ts'
import type { StructureId } from '#core/plate/scene.ts'
import type { Sheet } from '#core/plate/sheet.ts'
import { type TouchTarget, touchTargets } from '#core/plate/touch.ts'
import styles from './plate.module.css'

/** The parts as things to touch and to go through with the keyboard: one stop of the tab key, arrows inside. */
export function TouchLayer(props: {
  readonly sheet: Sheet
  readonly chosen: StructureId | null
  readonly marking: boolean
  readonly onPart: (structure: StructureId) => void
}) {
  const { sheet, chosen, marking, onPart } = props
  const targets = touchTargets(sheet)
  const [last, setLast] = useState<StructureId | null>(null)
  const group = useRef<SVGGElement>(null)
  const stop = targets.some(({ structure }) => structure === last) ? last : targets[0]?.structure

  const goTo = (structure: StructureId | undefined) => {
    if (structure === undefined) return
    setLast(structure)
    group.current?.querySelector<SVGGElement>(`[data-part="${structure}"]`)?.focus()
  }
  const onKey = (event: KeyboardEvent, at: number) => {
    const to = keyTarget(event.key, at, targets.length)
    if (to !== null) {
      event.preventDefault()
      goTo(targets[to]?.structure)
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault()
      const part = targets[at]
      if (part) onPart(part.structure)
    }
  }
  // Large areas are painted first, so that a small part above them can be hit; the keyboard keeps the anatomical order.
  const painted = targets.map((target, order) => ({ target, order })).sort((a, b) => b.target.size - a.target.size)
  const side = sheet.scene.side
  return (
    <g
      ref={group}
      role="toolbar"
      aria-label={fill(marking ? words.parts.toolbarMarking : words.parts.toolbar, { side })}
      className={styles.parts}
    >
      {painted.map(({ target, order }) => (
        // biome-ignore lint/a11y/useSemanticElements: a button element cannot stand inside a drawing
        <g
          key={target.structure}
          role="button"
          data-part={target.structure}
          tabIndex={target.structure === stop ? 0 : -1}
          aria-label={target.name}
          aria-pressed={marking ? undefined : target.structure === chosen}
          className={target.structure === chosen ? `${styles.part} ${styles.chosen}` : styles.part}
          onClick={() => {
            setLast(target.structure)
            onPart(target.structure)
          }}
          onFocus={() => setLast(target.structure)}
          onKeyDown={(event) => onKey(event, order)}
        >
          <Area target={target} />
        </g>
      ))}
    </g>
  )
}

/** Invisible until it is pointed at, focused or chosen. */
function Area({ target: { area, spot, word } }: { readonly target: TouchTarget }) {
  const [x, y] = spot.at
  return (
    <>
      {area && <path d={area} className={styles.area} />}
      <circle cx={x} cy={y} r={spot.radius} className={styles.spot} />
      <rect x={word.x} y={word.y} width={word.width} height={word.height} rx={3} className={styles.word} />
    </>
  )
}

function keyTarget(key: string, at: number, count: number): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return (at + 1) % count
    case 'ArrowLeft':
    case 'ArrowUp':
      return (at - 1 + count) % count
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return null
  }
}
