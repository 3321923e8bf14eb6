import type { OwnTroubleAnswer } from '#actions/evidence/read-own-trouble.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { troubleScreenInEnglish } from '#content/wording/app-trouble.ts'
import { troubleInEnglish as said } from '#content/wording/trouble.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { fill } from '#core/outcome/finding.ts'
import { Provenance } from '../../design/provenance.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useAction } from '../../journal/cases.ts'
import { DefinitionsDiffer } from '../case/trouble/definitions-differ.tsx'
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
      <DefinitionsDiffer said={words.differs} />
      <ReadingView reading={found} again={found.again}>
        {({ ear, animal }) => (
          <>
            <Counted counted={ear} of={of} shownFrom={shownFrom} />
            <details>
              <summary>{words.animals}</summary>
              <p className="soft">{words.animalsLead}</p>
              <Counted counted={animal} of={of} shownFrom={shownFrom} />
            </details>
          </>
        )}
      </ReadingView>
    </>
  )
}

type Counted = OwnTroubleAnswer['ear']

function Counted({
  counted,
  of,
  shownFrom,
}: {
  readonly counted: Counted
  readonly of: string
  readonly shownFrom: number
}) {
  const { unit, operated, followed, notYetDue, events, windows } = counted
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
        <TroubleEvents events={events} label={fill(words.list, { of, unit: words.unit[unit] })} shownFrom={shownFrom} />
      )}
      {events.length > 0 && operated > 0 && (
        <>
          <TroubleSchemes counted={counted} />
          <h4>{words.windowsTitle}</h4>
          <p className="soft">{words.windowsLead}</p>
          <ul>
            {windows.map(({ window, count }) => (
              <li key={window}>{fill(words.windowLine, { window: said.windows[window], count: String(count) })}</li>
            ))}
          </ul>
        </>
      )}
    </>
  )
}
