import { paperSheetInEnglish as words } from '#content/wording/app-paper-sheet.ts'
import { sides } from '#core/animal/species.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { SheetFault, TypedPoint } from '#core/theatre/read-sheet.ts'
import type { ToStamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { Choices } from '../../../../design/choices.tsx'
import { TextField } from '../../../../design/text-field.tsx'
import { useCaseView } from '../../case-view.ts'
import { titleOf } from '../stamp-row.tsx'
import styles from './paper.module.css'
import { sayFault } from './use-sheet.ts'

const blank: TypedPoint = { time: '', not: '', side: null }

/** One line for each point in the order of the sheet; what is on record already is not asked again. */
export function PointsPart(props: {
  readonly items: readonly ToStamp[]
  readonly points: Readonly<Record<string, TypedPoint>>
  readonly faults: readonly SheetFault[]
  readonly onPoints: (points: Readonly<Record<string, TypedPoint>>) => void
}) {
  const { items, points, faults, onPoints } = props
  const { file } = useCaseView()
  return (
    <section aria-labelledby="paper-points">
      <h2 id="paper-points">{words.points}</h2>
      <ol className={`bare ${styles.rows}`}>
        {items.map((item) => {
          const what = titleOf(item)
          const [known] = item.stamps
          const point = points[item.id] ?? blank
          const set = (more: Partial<TypedPoint>) => onPoints({ ...points, [item.id]: { ...point, ...more } })
          return (
            <li key={item.id} className={styles.row}>
              <h3 className={styles.what}>{what}</h3>
              {known ? (
                <p className="soft">
                  {fill(words.onRecord, {
                    at: clockOf(known.at, known.header.happenedAt.zone),
                    who: authorNamed(file, known.header.author),
                  })}
                </p>
              ) : (
                <>
                  <TextField
                    label={words.time}
                    aria-label={fill(words.timeSaid, { what })}
                    error={sayFault(faults, `points.${item.id}.time`)}
                    inputMode="numeric"
                    autoComplete="off"
                    value={point.time}
                    onText={(time) => set({ time })}
                  />
                  <TextField
                    label={words.not}
                    aria-label={fill(words.notSaid, { what })}
                    autoComplete="off"
                    value={point.not}
                    onText={(not) => set({ not })}
                  />
                  {item.mark === 'skin-mark' && point.time !== '' && (
                    <Choices
                      legend={words.side}
                      error={sayFault(faults, `points.${item.id}.side`)}
                      value={point.side}
                      options={sides}
                      say={(side) => side}
                      onChoose={(side) => set({ side })}
                    />
                  )}
                </>
              )}
            </li>
          )
        })}
      </ol>
    </section>
  )
}
