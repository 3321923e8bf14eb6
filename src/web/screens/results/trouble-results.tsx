import type { OwnTroubleAnswer } from '#actions/evidence/read-own-trouble.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { troubleScreenInEnglish } from '#content/wording/app-trouble.ts'
import { troubleInEnglish as said } from '#content/wording/trouble.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { fill } from '#core/outcome/finding.ts'
import type { TroubleQuestion } from '#core/results/trouble-groups.ts'
import { Provenance } from '../../design/provenance.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useAction } from '../../journal/cases.ts'
import { DefinitionsDiffer } from '../case/trouble/definitions-differ.tsx'
import { CasesBehind } from './cases-behind.tsx'
import { TroubleEvents } from './trouble-events.tsx'
import { TroubleSchemes } from './trouble-schemes.tsx'

const { results: words } = troubleScreenInEnglish

/** What went wrong in and after one operation in one species: by kind, by scheme, by when; ears and animals apart. */
export function TroubleResults(props: {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly of: string
  readonly shownFrom: number
}) {
  const { species, procedure, of, shownFrom } = props
  const found = useAction<OwnTroubleAnswer>('read-own-trouble', { species, procedure })
  return (
    <>
      <h3>{words.title}</h3>
      <ReadingView reading={found} again={found.again}>
        {({ ear, animal }) => (
          <>
            {animal.events.length > 0 && <DefinitionsDiffer said={words.differs} />}
            <Counted question={{ species, procedure, unit: 'ear' }} counted={ear} of={of} shownFrom={shownFrom} />
            <details>
              <summary>{words.animals}</summary>
              <p className="soft">{words.animalsLead}</p>
              <Counted
                question={{ species, procedure, unit: 'animal' }}
                counted={animal}
                of={of}
                shownFrom={shownFrom}
              />
            </details>
          </>
        )}
      </ReadingView>
    </>
  )
}

function Counted(props: {
  readonly question: TroubleQuestion
  readonly counted: OwnTroubleAnswer['ear']
  readonly of: string
  readonly shownFrom: number
}) {
  const { question, counted, of, shownFrom } = props
  const { operated, followed, notYetDue, events, windows } = counted
  return (
    <>
      <p>
        {fill(words.denominators, {
          early: String(troubleRules.early.value),
          operated: String(operated),
          followed: String(followed),
          notYetDue: String(notYetDue),
        })}{' '}
        <Provenance fact={troubleRules.early} />
      </p>
      {events.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <TroubleEvents question={question} events={events} of={of} shownFrom={shownFrom} />
      )}
      {events.length > 0 && operated > 0 && (
        <>
          <TroubleSchemes question={question} counted={counted} />
          <h4>{words.windowsTitle}</h4>
          <p className="soft">{words.windowsLead}</p>
          <ul>
            {windows.map(({ window, count }) => (
              <li key={window}>{fill(words.windowLine, { window: said.windows[window], count: String(count) })}</li>
            ))}
          </ul>
          <CasesBehind ask={{ about: 'window', ...question }} groups={said.windows} />
        </>
      )}
    </>
  )
}
