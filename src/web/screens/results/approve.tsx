import { useMemo, useState } from 'react'
import { procedures } from '#content/procedures/index.ts'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { countUnitNames, ownOutcomeNames } from '#content/wording/own-figures.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { ApprovedFigures } from '#core/evidence/own/approved.ts'
import { toldChanges } from '#core/evidence/own/told-change.ts'
import type { OwnOf } from '#core/evidence/told.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { evidenceOf } from '#documents/case/evidence-of.ts'
import { Modal } from '../../design/modal.tsx'
import { TextField } from '../../design/text-field.tsx'
import { figuresOwed } from '../../journal/cases.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import type { OwnCounts } from './own-counts.ts'
import styles from './results.module.css'

type Figure = BodyOf<'figures-approved'>['figures'][number]

type About = {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly counts: OwnCounts
  readonly today: string
  readonly standing: readonly ApprovedFigures[]
  readonly shownFrom: number
  readonly again: () => void
  readonly house: Case
}

/** A person lets owners hear what is counted now, after seeing what changed since the last time. */
export function Approve(props: About) {
  const { me } = useWho()
  const [open, setOpen] = useState(false)
  const figures = figuresOf(props.counts)
  if (figures.length === 0) return null
  if (!writersOf('figures-approved').includes(me.role)) return <p className="soft">{words.mayNot}</p>
  return (
    <>
      <p data-screen-only>
        <button type="button" onClick={() => setOpen(true)}>
          {words.approve}
        </button>
      </p>
      {open && <Review {...props} figures={figures} onClose={() => setOpen(false)} />}
    </>
  )
}

/** Only what somebody is known for can be said. */
function figuresOf(counts: OwnCounts): Figure[] {
  return counts
    .filter(({ total }) => total > 0)
    .map(({ question: { outcome, unit }, events, total, lost, period }) => ({
      outcome,
      unit,
      events,
      total,
      lost,
      from: period?.from ?? null,
      until: period?.until ?? null,
    }))
}

function Review(props: About & { readonly figures: readonly Figure[]; readonly onClose: () => void }) {
  const { species, procedure, today, standing, shownFrom, figures, again, onClose, house } = props
  const { pen } = useWho()
  const [text, setText] = useState('')
  const [leaving, setLeaving] = useState(false)
  const last = standing.length === 1 ? standing[0] : undefined
  const changes = changesOf(last?.body.figures ?? [], figures)
  const because = text.trim()
  const done = () => {
    onClose()
    again()
    void figuresOwed.refresh()
  }
  const approve = async () => {
    await writeEntry(pen, {
      kind: 'figures-approved',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { species, procedure, asOf: today, figures: [...figures], text: because === '' ? null : because },
      supersedes: standing.map(({ header }) => header.id),
      reason: standing.length > 0 ? words.approve : null,
    })
    done()
  }
  const leave = async () => {
    setLeaving(true)
    if (because === '') return
    const before = house
      .live('figures-left')
      .filter(({ body }) => body.species === species && body.procedure === procedure)
      .map(({ header }) => header.id)
    await writeEntry(pen, {
      kind: 'figures-left',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { species, procedure, asOf: today, figures: [...figures], because },
      supersedes: before,
      reason: before.length > 0 ? because : null,
    })
    done()
  }
  return (
    <Modal wide title={words.approveTitle} close={words.cancel} onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault()
          void approve()
        }}
      >
        <p>{fill(words.approveLead, { animals: oddsInEnglish.animals[species].many, from: String(shownFrom) })}</p>
        <WhatOwnersRead house={house} species={species} procedure={procedure} figures={figures} today={today} />
        {changes.length === 0 ? (
          <p>{words.approveNothing}</p>
        ) : (
          <details>
            <summary>{words.approveCounts}</summary>
            <ul>
              {changes.map((change) => (
                <li key={change}>{change}</li>
              ))}
            </ul>
          </details>
        )}
        <TextField
          label={words.approveText}
          error={leaving && because === '' ? words.leaveMissing : null}
          value={text}
          autoComplete="off"
          onText={setText}
        />
        <p className="row">
          <button type="submit" data-weight="main">
            {words.approveDo}
          </button>
          {changes.length > 0 && (
            <button type="button" onClick={() => void leave()}>
              {words.leaveDo}
            </button>
          )}
        </p>
      </form>
    </Modal>
  )
}

const english = { odds: oddsInEnglish, told: toldInEnglish }

/** Before and after, in the very sentences of the leaflet and the owner's page. */
function WhatOwnersRead(
  props: Pick<About, 'house' | 'species' | 'procedure' | 'today'> & { readonly figures: readonly Figure[] },
) {
  const { house, species, procedure, today, figures } = props
  const changes = useMemo(() => {
    const after: OwnOf = ({ outcome, unit }) => {
      const figure = figures.find((one) => one.outcome === outcome && one.unit === unit)
      return figure ? { ...figure, asOf: today } : null
    }
    const outcomes = procedureNamed(procedure, procedures).risks.map(({ outcome }) => outcome)
    return toldChanges({ species, procedure }, outcomes, evidenceOf(house), after, english)
  }, [house, species, procedure, today, figures])
  if (changes.length === 0) return <p>{words.approveSame}</p>
  return changes.map(({ outcome, unit, before, after, higherWithoutMore }) => (
    <section key={`${outcome} ${unit}`} aria-labelledby={`change-${outcome}-${unit}`} className={styles.change}>
      <h3 id={`change-${outcome}-${unit}`}>
        {fill(words.approveReads, {
          outcome: capital(oddsInEnglish.outcomes[outcome].operated),
          unit: countUnitNames[unit],
        })}
      </h3>
      <div>
        <h4>{words.approveBefore}</h4>
        <p>{before ?? words.approveSaysNothing}</p>
      </div>
      <div>
        <h4>{words.approveAfter}</h4>
        <p>{after ?? words.approveSaysNothing}</p>
        {higherWithoutMore && <p className="soft">{words.approveHigher}</p>}
      </div>
    </section>
  ))
}

/** What is counted otherwise than at the last approval, from and to. */
function changesOf(before: readonly Figure[], now: readonly Figure[]): string[] {
  const say = (figure: Figure | undefined) =>
    figure
      ? fill(words.approveCount, {
          events: String(figure.events),
          total: String(figure.total),
          lost: String(figure.lost),
        })
      : words.approveNew
  const key = ({ outcome, unit }: Figure) => `${outcome} ${unit}`
  const old = new Map(before.map((figure) => [key(figure), figure]))
  return now.flatMap((figure) => {
    const [from, to] = [say(old.get(key(figure))), say(figure)]
    const { outcome, unit } = figure
    const about = { outcome: ownOutcomeNames[outcome], unit: countUnitNames[unit], before: from, after: to }
    return from === to ? [] : [fill(words.approveLine, about)]
  })
}
