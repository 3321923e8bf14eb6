import type { PapersAnswer } from '#actions/papers/list-papers.ts'
import { homeNowInEnglish } from '#content/wording/app-home-now.ts'
import { papersScreen as words } from '#content/wording/app-papers.ts'
import { homeEditionsOf } from '#core/home/home-plan.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { SideWord } from '../../design/side-word.tsx'
import { useAction } from '../../journal/cases.ts'
import { AskedPart } from './asked-part.tsx'
import { paperHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import chapter from './chapter.module.css'
import styles from './papers.module.css'

export const papersHref = '#papers'

/** What can be printed of this case now, and what the other papers wait for; asked of the server when it is opened. */
export function Papers() {
  const { file, unsent } = useCaseView()
  // A new entry may bring another paper within reach.
  const sent = file.theCase.lines.length - unsent.size
  return (
    <AskedPart id="papers" words={words}>
      <PapersNow key={sent} />
    </AskedPart>
  )
}

function PapersNow() {
  const { file, unsent } = useCaseView()
  const reading = useAction<PapersAnswer>('list-papers', { stream: file.stream })
  if (reading.kind === 'failed' && reading.code === 'unreachable') return <p role="status">{words.away}</p>
  return (
    <ReadingView reading={reading} again={reading.again}>
      {({ on, papers, data }) => {
        const ready = papers.filter(({ notYet }) => notYet === null)
        const waiting = papers.filter(({ notYet }) => notYet !== null)
        return (
          <div className={styles.papers}>
            <p className="soft">{fill(words.dated, { when: sayWhen(on, file.clinic.zone) })}</p>
            {unsent.size > 0 && <p>{words.unsent}</p>}
            {ready.length > 0 && <h3 className={chapter.part}>{words.ready}</h3>}
            <ul className={styles.list}>
              {ready.map((paper) => (
                <ReadyPaper key={paper.name} paper={paper} />
              ))}
            </ul>
            {waiting.length > 0 && <h3 className={chapter.part}>{words.notYet}</h3>}
            <ul className={styles.list}>
              {waiting.map(({ name, title, side, notYet }) => (
                <li key={name}>
                  {side !== null && <SideWord side={side} />}{' '}
                  {fill(words.waits, { paper: title, because: notYet ?? '' })}
                </li>
              ))}
            </ul>
            <h3 className={chapter.part}>{words.data}</h3>
            <ul className={styles.list}>
              {data.map(({ file: name, title }) => (
                <li key={name}>
                  <a href={paperHref(file.stream, name)} download={name}>
                    {title}
                  </a>
                </li>
              ))}
            </ul>
          </div>
        )
      }}
    </ReadingView>
  )
}

function ReadyPaper({ paper: { name, title, side } }: { readonly paper: PapersAnswer['papers'][number] }) {
  const { file } = useCaseView()
  return (
    <li className={styles.paper}>
      <span className={styles.name}>
        {title} {side !== null && <SideWord side={side} />}
        {name === 'home-page' && <OnlyThisPage />}
      </span>
      <span className={styles.forms}>
        {(['pdf', 'html', 'txt'] as const).map((form) => {
          const about = { paper: title, side: side ?? '', form: words.forms[form] }
          return (
            <a
              key={form}
              href={paperHref(file.stream, `${name}.${form}`)}
              target="_blank"
              rel="noreferrer"
              aria-label={fill(side === null ? words.formOf : words.formOfEar, about)}
            >
              {words.forms[form]}
            </a>
          )
        })}
      </span>
    </li>
  )
}

/** A home page that was handed out before a change still hangs on somebody’s door. */
function OnlyThisPage() {
  const { file } = useCaseView()
  const editions = homeEditionsOf(file.theCase)
  const last = editions.at(-1)
  if (editions.length < 2 || !last) return null
  const about = { number: String(editions.length), when: sayMoment(last.line.header.happenedAt) }
  return <span className="soft"> {fill(homeNowInEnglish.paper, about)}</span>
}
