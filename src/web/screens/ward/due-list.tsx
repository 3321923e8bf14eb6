import { useState } from 'react'
import { wardInEnglish as words } from '#content/wording/app-ward.ts'
import type { WardBand } from '#core/ward/due-list.ts'
import { ListGroup } from '../../design/list-group.tsx'
import { Notice } from '../../design/notice.tsx'
import { DueLine, type Kept, type WardDue } from './due-line.tsx'
import styles from './ward.module.css'

const bands: readonly WardBand[] = ['late', 'now', 'next']

/** What is due, late first; what was done with one tap is said at once and can be taken back. */
export function DueList(props: { readonly dues: readonly WardDue[]; readonly now: string; readonly named: boolean }) {
  const { dues, now, named } = props
  const [kept, setKept] = useState<Kept | null>(null)
  return (
    <>
      {kept && (
        <Notice live>
          <p>{kept.said}</p>
          <button type="button" data-weight="quiet" onClick={() => void kept.takeBack().then(() => setKept(null))}>
            {words.takeBack}
          </button>
        </Notice>
      )}
      {dues.length === 0 && <p role="status">{words.nothingDue}</p>}
      {bands.map((band) => {
        const some = dues.filter(({ due }) => due.band === band)
        if (some.length === 0) return null
        return (
          <ListGroup
            key={band}
            id={`ward-${band}`}
            title={words.bands[band]}
            beside={some.length}
            quiet={band === 'next'}
          >
            <ul className={`bare ${styles.lines}`}>
              {some.map((one) => (
                <DueLine
                  key={`${one.file.stream} ${one.due.item.id}`}
                  {...one}
                  now={now}
                  named={named}
                  onKept={setKept}
                />
              ))}
            </ul>
          </ListGroup>
        )
      })}
    </>
  )
}
