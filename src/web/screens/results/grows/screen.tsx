import { useState } from 'react'
import { antibiogramInEnglish } from '#content/wording/antibiogram.ts'
import { whatGrowsInEnglish as words } from '#content/wording/app-what-grows.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { antibiogramSheet } from '#documents/what-grows/antibiogram-sheet.ts'
import { Caution } from '../../../design/caution.tsx'
import { Page } from '../../../design/page.tsx'
import { ReadingView } from '../../../design/reading-view.tsx'
import { saveText } from '../../../design/save-text.ts'
import { sayWhen } from '../../../design/say-when.ts'
import { useAction } from '../../../journal/cases.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { useWho } from '../../../session/use-who.ts'
import { Asked } from './asked.tsx'
import styles from './grows.module.css'
import type { GrowsAnswer, GrowsInput } from './grows-answer.ts'
import { HowCounted } from './how-counted.tsx'
import { OrganismTable } from './organism-table.tsx'

/** The clinic's own cumulative antibiogram: what our samples grew, counted from the record as it now stands. */
export function GrowsScreen() {
  const [asked, setAsked] = useState<GrowsInput>({ method: 'calendar-year', sites: 'apart' })
  const backwards = asked.from !== undefined && asked.until !== undefined && asked.until < asked.from
  const reading = useAction<GrowsAnswer>('read-what-grows', backwards ? { ...asked, until: asked.from } : asked)
  const { pen, clinic } = useWho()
  const now = useMinute()
  const answer = reading.kind === 'read' && !backwards ? reading.value : null
  return (
    <Page
      title={words.title}
      lead={words.lead}
      actions={
        answer &&
        answer.organisms.length > 0 && (
          <>
            <button
              type="button"
              onClick={() => saveText(fill(words.file, { day: answer.today }), antibiogramSheet(answer), 'csv')}
            >
              {words.save}
            </button>
            <button type="button" onClick={() => window.print()}>
              {words.print}
            </button>
          </>
        )
      }
    >
      <p className={styles.printed}>{fill(words.printed, { clinic: clinic.row.name, when: sayWhen(now, pen.zone) })}</p>
      <Asked asked={asked} backwards={backwards} onAsk={setAsked} />
      {!backwards && (
        <ReadingView reading={reading} again={reading.again}>
          {(grown) => <Grown grown={grown} />}
        </ReadingView>
      )}
      <Caution />
    </Page>
  )
}

function Grown({ grown }: { readonly grown: GrowsAnswer }) {
  const { organisms, isolates, preliminary, withoutSpecies, today } = grown
  const counted = organisms.reduce((sum, { n }) => sum + n, 0)
  const groups = [...new Set(inOrder(organisms).map(({ host, site }) => `${host}-${site ?? 'all'}`))]
  return (
    <div className="stack">
      <p role="status">
        {fill(words.counted, { isolates: String(isolates), counted: String(counted), day: sayCalendarDay(today) })}
      </p>
      {preliminary > 0 && <p>{fill(words.preliminary, { count: String(preliminary) })}</p>}
      {withoutSpecies > 0 && <p>{fill(words.withoutSpecies, { count: String(withoutSpecies) })}</p>}
      {organisms.length === 0 && <p>{words.none}</p>}
      {groups.map((group) => {
        const of = organisms.filter(({ host, site }) => `${host}-${site ?? 'all'}` === group)
        const [one] = of
        if (!one) return null
        const place = one.site === null ? words.all : (words.places[one.site as keyof typeof words.places] ?? one.site)
        return (
          <section key={group} aria-labelledby={`grows-${group}`} className={styles.group}>
            <h2 id={`grows-${group}`}>{fill(words.of, { animals: antibiogramInEnglish.hosts[one.host], place })}</h2>
            {of.map((organism) => (
              <OrganismTable key={organism.organism} organism={organism} method={grown.method} />
            ))}
          </section>
        )
      })}
      <HowCounted grown={grown} />
    </div>
  )
}

const places: readonly string[] = Object.keys(words.places)

/** Dogs before cats, and the places as they are reached: canal, bulla on entry, after lavage. */
function inOrder(organisms: GrowsAnswer['organisms']): GrowsAnswer['organisms'] {
  const rank = (site: string | null) => places.indexOf(site ?? '')
  return organisms.toSorted(
    (a, b) => Number(a.host === 'cat') - Number(b.host === 'cat') || rank(a.site) - rank(b.site),
  )
}
