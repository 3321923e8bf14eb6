import { useState } from 'react'
import { Link } from 'wouter'
import { dividesInEnglish } from '#content/wording/app-formulary.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { shelfInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import { judgeItem, wentOut } from '#core/dosing/shelf-state.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { drugs } from './drugs.ts'
import { SettingsPage } from './frame.tsx'
import { inConflict } from './house-lines.ts'
import { useRefusal } from './may.ts'
import styles from './settings.module.css'
import { ShelfForm } from './shelf-form.tsx'
import { TakeBack } from './take-back.tsx'

type Item = Line<BodyOf<'shelf-item'>>
type Opened = { readonly what: 'form'; readonly item: Item | null } | { readonly what: 'off'; readonly item: Item }

/** The products this clinic really has. */
export function ShelfScreen() {
  const reading = useHouse()
  const refusal = useRefusal(mayWrite['shelf-item'])
  const [opened, setOpened] = useState<Opened | null>(null)
  return (
    <SettingsPage
      part="shelf"
      actions={
        <button
          type="button"
          data-weight="main"
          disabled={refusal !== null}
          onClick={() => setOpened({ what: 'form', item: null })}
        >
          {words.add}
        </button>
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      <ReadingView reading={reading}>
        {({ file, file: { house } }) => (
          <>
            <Items file={file} refusal={refusal} onOpen={setOpened} />
            {opened?.what === 'form' && <ShelfForm house={house} item={opened.item} onClose={() => setOpened(null)} />}
            {opened?.what === 'off' && (
              <TakeBack
                ids={[opened.item.header.id]}
                title={fill(words.offTitle, { label: opened.item.body.label })}
                help={words.offHelp}
                because={words.offBecause}
                verb={words.off}
                onClose={() => setOpened(null)}
              />
            )}
          </>
        )}
      </ReadingView>
    </SettingsPage>
  )
}

function Items(props: {
  readonly file: CaseFile
  readonly refusal: string | null
  readonly onOpen: (opened: Opened) => void
}) {
  const { file, refusal, onOpen } = props
  const { house } = file
  const today = dayOf({ at: useMinute(), zone: file.clinic.zone })
  const items = [...house.live('shelf-item')].sort((a, b) => (a.body.label < b.body.label ? -1 : 1))
  if (items.length === 0) return <p>{words.none}</p>
  return (
    <ul className={`bare ${styles.lines}`}>
      {items.map((item) => (
        <li key={item.header.id} className={styles.line}>
          <div>
            <p className={styles.name}>{item.body.label}</p>
            <p>
              {sayItem(item.body)} ·{' '}
              <Link href={`/sources/formulary/${item.body.drug}`}>
                {drugs.find(({ id }) => id === item.body.drug)?.name ?? item.body.drug}
              </Link>
            </p>
            <p className="soft">{sayStock(item, file)}</p>
            {judgeItem(item.body, today).map(({ code, about }) => (
              <p key={code}>
                <strong>{fill(doseFindingWords[code], about)}</strong>
              </p>
            ))}
            {inConflict(house, item) && (
              <p>
                <strong>{words.conflict}</strong>
              </p>
            )}
          </div>
          <div className="row">
            <button type="button" disabled={refusal !== null} onClick={() => onOpen({ what: 'form', item })}>
              {settingsInEnglish.change}
              <span className="said"> {item.body.label}</span>
            </button>
            <button
              type="button"
              data-weight="quiet"
              disabled={refusal !== null}
              onClick={() => onOpen({ what: 'off', item })}
            >
              {words.off}
              <span className="said"> {item.body.label}</span>
            </button>
          </div>
        </li>
      ))}
    </ul>
  )
}

function sayItem({ form, strength, divides }: BodyOf<'shelf-item'>): string {
  const said = strength ? sayUnit(strength) : words.unknownStrength
  if (divides) return `${said}, ${dividesInEnglish[divides]}`
  return form === 'tablet' ? `${said}, ${words.dividesUnknown}` : said
}

/** Its date, whether there is any and who found that there is none, and whether a register is kept of it. */
function sayStock(item: Item, file: CaseFile): string {
  const { expires, outSince, controlled } = item.body
  const out = wentOut(file.house, item)
  return [
    expires === null ? words.untilUnknown : fill(words.until, { day: sayCalendarDay(expires) }),
    out && outSince !== null && fill(words.outBy, { day: sayCalendarDay(outSince), ...whoWrote(file, out) }),
    controlled === 'yes' && words.controlled,
  ]
    .filter(Boolean)
    .join(' ')
}
