import { Fragment, useState } from 'react'
import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { fill } from '#core/outcome/finding.ts'
import { ScrollBox } from '../../design/scroll-box.tsx'
import { Behind } from './cases-behind.tsx'
import styles from './results.module.css'

type Times = OwnFiguresAnswer['times'][number]
type About = Pick<Times, 'species' | 'procedure'> & { readonly steps: Times['tract']['steps'] }

const { time: words } = resultsInEnglish

/** The curve of late tracts as a table; the cases behind a line open under it. */
export function TractTable({ species, procedure, steps }: About) {
  const [open, setOpen] = useState<number | null>(null)
  const heads = Object.values(words.columns)
  return (
    <ScrollBox label={words.table}>
      <table className={styles.course}>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
            <th scope="col" data-screen-only>
              <span className="said">{resultsInEnglish.behind}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ day, followed, events, died, share, interval }) => (
            <Fragment key={day}>
              <tr>
                <th scope="row">{day}</th>
                <td>{followed}</td>
                <td>{events}</td>
                <td>{died}</td>
                <td>{share === null ? words.tooFewInTable : share === 0 ? words.noneInTable : tenth(share)}</td>
                <td>{interval === null ? '–' : `${tenth(interval[0])}–${tenth(interval[1])}`}</td>
                <td data-screen-only>
                  <button
                    type="button"
                    data-weight="quiet"
                    aria-expanded={open === day}
                    aria-label={fill(resultsInEnglish.behindDay, { day: String(day) })}
                    onClick={() => setOpen(open === day ? null : day)}
                  >
                    {resultsInEnglish.behind}
                  </button>
                </td>
              </tr>
              {open === day && (
                <tr data-screen-only>
                  <td colSpan={heads.length + 1} className={styles.opened}>
                    <Behind ask={{ about: 'tract', species, procedure, day }} groups={words.behind} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function tenth(share: number): string {
  return (100 * share).toFixed(1)
}
