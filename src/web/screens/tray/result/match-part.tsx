import { useState } from 'react'
import type { ListedContact } from '#actions/people/read-contacts.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { takeInResultInEnglish as words } from '#content/wording/app-take-in-result.ts'
import { specimenWords } from '#content/wording/report.ts'
import type { Side } from '#core/animal/species.ts'
import { plainName } from '#core/identity/names.ts'
import { filingOf } from '#core/laboratory/filing.ts'
import type { CaseMatch } from '#core/laboratory/match-case.ts'
import { matchSpecimen } from '#core/laboratory/match-specimen.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import { type Answers, resultBody } from '#core/laboratory/to-result.ts'
import { fill } from '#core/outcome/finding.ts'
import { type SpecimenLine, sideOf } from '#core/owed/specimen-loop.ts'
import { Choices } from '../../../design/choices.tsx'
import { Field } from '../../../design/field.tsx'
import { Notice } from '../../../design/notice.tsx'
import { sayDay } from '../../../design/say-when.ts'
import { useAction } from '../../../journal/cases.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { useWho } from '../../../session/use-who.ts'
import { FilingPart } from './filing-part.tsx'
import { filed, sayReport } from './keep-result.ts'
import type { Came, Ended } from './steps.ts'
import type { Candidate, Matched } from './use-match.ts'

type Props = {
  readonly report: LaboratoryReport
  readonly answers: Answers
  readonly from: Came
  readonly end: (ended: Ended) => void
}

/** Whose a report is: one animal that two things agree with, or the reason why it must wait. */
export function MatchPart({ matched, ...props }: Props & { readonly matched: Matched }) {
  if (matched.kind === 'looking') return <p role="status">{words.match.looking}</p>
  const { match, elsewhere } = matched
  if (elsewhere !== null) return <Notice tone="warn" title={fill(words.match.elsewhere, { name: elsewhere })} />
  if (match.kind !== 'one') return <Notice tone="warn" title={sayNoMatch(match)} />
  const { row, agree } = match.fit
  const about = { name: row.name, owner: row.ownerName ?? words.match.noOwner }
  const both = agree.map((one) => words.match.identifiers[one]).join(words.match.list)
  return (
    <>
      <p>{fill(words.match.one, { ...about, agree: both })}</p>
      <TubePart {...props} candidate={row} />
    </>
  )
}

function sayNoMatch(match: Exclude<CaseMatch<Candidate>, { kind: 'one' }>): string {
  const { list, animals, none, several, contradicted, tooFew, identifiers, against, noOwner } = words.match
  if (match.kind === 'none') return none
  const names = match.fits
    .map(({ row }) => fill(words.animal.both, { name: row.name, owner: row.ownerName ?? noOwner }))
    .join(animals)
  const [first] = match.fits
  const agree = (first?.agree ?? []).map((one) => identifiers[one]).join(list)
  const stands = (first?.against ?? []).map((one) => against[one]).join(list)
  if (match.kind === 'several') return fill(several, { names })
  return match.kind === 'contradicted' ? fill(contradicted, { names, against: stands }) : fill(tooFew, { names, agree })
}

function TubePart(props: Props & { readonly candidate: Candidate }) {
  const { report, candidate } = props
  const { pen } = useWho()
  const { theCase } = candidate.open.file
  const match = matchSpecimen(report, theCase)
  const [chosen, setChosen] = useState<string | null>(null)
  const site = ({ body }: SpecimenLine) => specimenWords.sites[body.site]
  switch (match.kind) {
    case 'none':
      return <Notice tone="warn" title={words.tube.none} />
    case 'other-side': {
      const says = match.says === 'BOTH' ? words.tube.bothSides : match.says
      const about = { says, label: match.specimen.body.label, side: sideOf(match.specimen) ?? '' }
      return <Notice tone="warn" title={fill(words.tube.other, about)} />
    }
    case 'one': {
      const { specimen } = match
      const about = { label: specimen.body.label, side: sideOf(specimen) ?? '', site: site(specimen) }
      return (
        <>
          <p>{fill(words.tube.one, about)}</p>
          <KeepPart {...props} specimen={specimen} />
        </>
      )
    }
    case 'choose': {
      const specimen = match.among.find(({ header }) => header.id === chosen)
      const say = (id: string) => {
        const one = match.among.find(({ header }) => header.id === id)
        if (!one) return id
        const when = sayDay(one.at, pen.zone)
        return fill(words.tube.option, { label: one.body.label, side: sideOf(one) ?? '', site: site(one), when })
      }
      return (
        <>
          <Choices
            legend={words.tube.choose}
            value={chosen}
            options={match.among.map(({ header }) => header.id)}
            say={say}
            onChoose={setChosen}
          />
          {specimen && <KeepPart {...props} specimen={specimen} />}
        </>
      )
    }
  }
}

/** The laboratory by its name in the address book, what filing does to the case, and the filing itself. */
function KeepPart(props: Props & { readonly candidate: Candidate; readonly specimen: SpecimenLine }) {
  const { report, answers, from, end, candidate, specimen } = props
  const { pen } = useWho()
  const contacts = useAction<{ readonly contacts: readonly ListedContact[] }>('read-contacts', {})
  const laboratories =
    contacts.kind === 'read' ? contacts.value.contacts.filter(({ kind }) => kind === 'laboratory') : []
  const named = laboratories.filter(({ name }) => plainName(name) === plainName(report.laboratory ?? ''))
  const [chosen, setChosen] = useState<string | null>(null)
  const [busy, setBusy] = useState(false)
  const laboratory = chosen ?? (named.length === 1 ? (named[0]?.id ?? '') : specimen.body.laboratory) ?? ''
  const { theCase } = candidate.open.file
  const standing = { specimen: specimen.header.id, laboratory: laboratory || null, came: from.came }
  const body = resultBody(report, answers, standing, susceptibility)
  const side = sideOf(specimen)
  if (side === null) return null
  const filing = body ? filingOf(body, theCase) : null
  const may = filing?.kind === 'new' || filing?.kind === 'supersedes'
  const keep = async () => {
    if (!body || !filing || !may) return
    setBusy(true)
    const supersedes = filing.kind === 'supersedes' ? filing.results.map(({ header }) => header.id) : []
    const where: { stream: string; animal: string; side: Side } = {
      stream: candidate.stream,
      animal: candidate.animal,
      side,
    }
    const about = {
      file: from.file,
      says: sayReport(report),
      from: report.laboratory,
      arrived: from.arrived,
      supersedes,
    }
    await keepEntries(filed(pen, where, body, about))
    end({ kind: 'filed', stream: candidate.stream, said: fill(words.filing.filed, { name: candidate.name, side }) })
  }
  return (
    <>
      {filing && <FilingPart filing={filing} theCase={theCase} />}
      {laboratories.length > 0 && (
        <Field label={words.filing.laboratory}>
          {(control) => (
            <select {...control} value={laboratory} onChange={(event) => setChosen(event.target.value)}>
              <option value="">{words.filing.laboratoryNone}</option>
              {laboratories.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      <p>
        <button type="button" data-weight="main" disabled={!may || busy} onClick={() => void keep()}>
          {fill(words.filing.do, { name: candidate.name, side })}
        </button>
      </p>
    </>
  )
}
