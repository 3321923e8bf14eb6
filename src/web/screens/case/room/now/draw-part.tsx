import { useMemo } from 'react'
import { lowPressure } from '#content/protocols/low-pressure.ts'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { emergencyBars } from '#content/wording/emergency.ts'
import type { EmergencyLine } from '#core/dosing/emergency-line.ts'
import { localRoomOf } from '#core/dosing/local-room.ts'
import { judgedAt } from '#core/dosing/plan-now.ts'
import { shelfBeside } from '#core/dosing/shelf-beside.ts'
import { fill } from '#core/outcome/finding.ts'
import { linesOf, type RoomCall } from '#core/theatre/room-call.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { lineNote } from '#documents/emergency-sheet/line-note.ts'
import type { SheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { sheetRows } from '#documents/emergency-sheet/sheet-rows.ts'
import { runsOf, type Words } from '#documents/render/model.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './now.module.css'

/** What is drawn up for this animal: drug, volume and of what, exactly as on the sheet on the wall. */
export function DrawPart({ made, call }: { readonly made: SheetOfCase; readonly call: RoomCall }) {
  const { file } = useCaseView()
  const minute = useMinute()
  const room = useMemo(() => localRoomOf(file, judgedAt(file.theCase, minute), knowledgeOf(file)), [file, minute])
  if (made.kind !== 'sheet') return null
  const lines = linesOf(call, made.sheet, lowPressure)
  const rows = sheetRows(lines, room)
  return (
    <section aria-labelledby="draw">
      <h2 id="draw">{words.draw}</h2>
      {lines.length === 0 && <p>{words.noRows}</p>}
      <ul className="bare">
        {lines.map((line, index) => {
          const [name = '', volume = '', from = ''] = rows[index] ?? []
          return (
            <li key={line.row.drug} className={styles.dose}>
              <h3 className={styles.drug}>
                <Said words={name} />
              </h3>
              <p className={styles.volume}>
                <Said words={volume} />
              </p>
              <p className={styles.from}>
                <Said words={from} />
              </p>
              <ShelfNote line={line} />
              {line.kind === 'barred' ? (
                <p className={styles.warn}>{emergencyBars[line.because]}</p>
              ) : (
                <details>
                  <summary>{line.row.give}</summary>
                  <p>{lineNote(line)}</p>
                </details>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}

/** Words of the sheet; what stands out there stands out here. */
function Said({ words: said }: { readonly words: Words }) {
  return runsOf(said).map(({ kind, text }) => (kind === 'strong' ? <strong key={text}>{text}</strong> : text))
}

/** The volume is of one strength; a shelf that holds another says so beside it. */
function ShelfNote({ line }: { readonly line: EmergencyLine }) {
  const { file } = useCaseView()
  const beside = shelfBeside(
    line.row,
    file.house.live('shelf-item').map(({ body }) => body),
  )
  if (beside.kind === 'there' || line.kind === 'barred') return null
  if (beside.kind === 'not-there') return <p>{words.shelf['not-there']}</p>
  return <p className={styles.warn}>{fill(words.shelf['other-strength'], { labels: beside.labels.join('; ') })}</p>
}
