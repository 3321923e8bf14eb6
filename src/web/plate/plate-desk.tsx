import { useState } from 'react'
import { plateOnScreen } from '#content/wording/app-plate.ts'
import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { drawingsOf } from '#core/plate/drawings-of.ts'
import { EarPlate } from './ear-plate.tsx'
import { KeepDrawing, type Watcher } from './keep-drawing.tsx'
import { KeptDrawings } from './kept-drawings.tsx'
import styles from './plate.module.css'
import type { DrawingToKeep, Hands } from './plate.tsx'

const words = plateOnScreen.keeping

/**
 * All that is done at the plate of one ear: look, touch, draw, keep, and below what was kept before. The caller keeps
 * the unfinished drawing (`hands`) through a crash and writes the entry.
 *
 * @example <PlateDesk theCase={theCase} side="LEFT" hands={draft} onHands={change} watchers={watchers} onWrite={write} nameOf={nameOf} />
 */
export function PlateDesk(props: {
  readonly theCase: Case
  readonly side: Side
  readonly hands: Hands
  readonly onHands: (hands: Hands) => void
  readonly watchers: readonly Watcher[]
  readonly nameOf: (id: string) => string
  /** Writes the entry; what was drawn on that view is cleared only when this has succeeded. */
  readonly onWrite: (body: BodyOf<'plate-drawing'>) => Promise<void>
  readonly onEntry?: (entry: string) => void
}) {
  const { theCase, side, hands, onHands, watchers, nameOf, onWrite, onEntry } = props
  const [keeping, setKeeping] = useState<DrawingToKeep | null>(null)
  const [news, setNews] = useState('')
  const write = async (drawing: DrawingToKeep, body: BodyOf<'plate-drawing'>) => {
    setKeeping(null)
    await onWrite(body)
    const { [drawing.parameters.view]: _, ...others } = hands
    onHands(others)
    setNews(words.kept)
  }
  return (
    <div className={styles.desk}>
      <h2 className="said">{fill(plateOnScreen.caption, { side })}</h2>
      <EarPlate
        theCase={theCase}
        side={side}
        hands={hands}
        onHands={onHands}
        onKeep={setKeeping}
        {...(onEntry && { onEntry })}
      />
      <p role="status">{news}</p>
      {keeping && (
        <KeepDrawing
          drawing={keeping}
          watchers={watchers}
          onKeep={(body) => write(keeping, body)}
          onClose={() => setKeeping(null)}
        />
      )}
      {drawingsOf(theCase, side).length > 0 && <h2>{fill(words.all, { side })}</h2>}
      <KeptDrawings theCase={theCase} side={side} nameOf={nameOf} />
    </div>
  )
}
