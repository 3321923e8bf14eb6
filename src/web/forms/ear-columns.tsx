import { type ReactNode, useId } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { Side } from '#core/animal/species.ts'
import styles from './ear-columns.module.css'

export type EarColumn = { readonly side: Side; readonly rows: readonly ReactNode[] }

/** LEFT beside RIGHT where there is room, LEFT above RIGHT where there is none. The same row stands at the same height. */
export function EarColumns({ columns }: { readonly columns: readonly EarColumn[] }) {
  return (
    <div className={styles.pair}>
      {columns.map((column) => (
        <Column key={column.side} {...column} />
      ))}
    </div>
  )
}

function Column({ side, rows }: EarColumn) {
  const heading = useId()
  return (
    <section className={styles.ear} aria-labelledby={heading}>
      <h3 id={heading} className={styles.side}>
        {formsInEnglish.sides[side]}
      </h3>
      {rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows of a form never change their order
        <div key={index} className={styles.cell}>
          {row}
        </div>
      ))}
    </section>
  )
}
