import { useEffect } from 'react'
import { Link } from 'wouter'
import type { YearsAnswer } from '#actions/yearly/read-years.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { yearsInEnglish as words } from '#content/wording/app-years.ts'
import { Caution } from '../../../design/caution.tsx'
import { ListsBehind } from '../../../design/lists-behind.tsx'
import { Page } from '../../../design/page.tsx'
import { ReadingView } from '../../../design/reading-view.tsx'
import { useAction, useHouse } from '../../../journal/cases.ts'
import { outbox } from '../../../journal/outbox.ts'
import { useSignal } from '../../../journal/signal.ts'
import { YearPart } from './year-part.tsx'

/** While figures are being made again it is looked every so many milliseconds how far they are. */
const lookAgain = 2_000

/** The years of our results: how complete each is, what is frozen, and where an erratum is owed. */
export function YearsScreen() {
  const years = useAction<YearsAnswer>('read-years', {})
  const written = useWritten()
  const { again } = years
  useEffect(() => {
    if (written !== '') again()
  }, [written, again])
  const behind = years.kind === 'read' && years.value.remaking !== null
  useEffect(() => {
    if (!behind) return
    const look = setInterval(again, lookAgain)
    return () => clearInterval(look)
  }, [behind, again])
  return (
    <Page title={words.title} lead={words.lead}>
      <p>
        <Link href="/results">{resultsInEnglish.title}</Link>
      </p>
      <ReadingView reading={years} again={again}>
        {(answer) => (
          <div className="stack">
            <ListsBehind remaking={answer.remaking} />
            {answer.years.length === 0 && <p role="status">{words.none}</p>}
            {answer.years.map((year) => (
              <YearPart key={year.year} year={year} answer={answer} />
            ))}
            <Caution />
          </div>
        )}
      </ReadingView>
    </Page>
  )
}

/** What this clinic has frozen and corrected, and what of it still waits here to be sent: another text whenever that changes. */
function useWritten(): string {
  const house = useHouse()
  const waiting = useSignal(outbox)
  if (house.kind !== 'read') return ''
  const { house: theHouse } = house.value.file
  const lines = [...theHouse.live('report-frozen'), ...theHouse.live('report-erratum')]
  const unsent = waiting.filter(({ entry }) => entry.kind.startsWith('report-'))
  return lines.length + unsent.length === 0 ? '' : `${lines.length} ${unsent.length}`
}
