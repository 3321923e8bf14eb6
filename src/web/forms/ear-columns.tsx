import { type ReactNode, useId } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { Side } from '#core/animal/species.ts'
import styles from './ear-columns.module.css'

export type EarColumn = { readonly side: Side; readonly rows: readonly ReactNode[] }

/** LEFT beside RIGHT where there is room, LEFT above RIGHT where there is none. The same row stands at the same height. */
export function EarColumns({ columns, level }: { readonly columns: readonly EarColumn[]; readonly level: 2 | 3 }) {
  return (
    <div className={styles.pair}>
      {columns.map((column) => (
        <Column key={column.side} {...column} level={level} />
      ))}
    </div>
  )
}

function Column({ side, rows, level }: EarColumn & { readonly level: 2 | 3 }) {
  const heading = useId()
  const Heading = `h${level}` as const
  return (
    <section className={styles.ear} aria-labelledby={heading}>
      <Heading id={heading} className={styles.side}>
        {formsInEnglish.sides[side]}
      </Heading>
      {rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows of a form never change their order
        <div key={index} className={styles.cell}>
          {row}
        </div>
      ))}
    </section>
  )
}
