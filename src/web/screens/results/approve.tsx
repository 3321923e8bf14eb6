import { useState } from 'react'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { countUnitNames, ownOutcomeNames } from '#content/wording/own-figures.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { ApprovedFigures } from '#core/evidence/own/approved.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { Modal } from '../../design/modal.tsx'
import { TextField } from '../../design/text-field.tsx'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import type { OwnCounts } from './own-counts.ts'

type Figure = BodyOf<'figures-approved'>['figures'][number]

type About = {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly counts: OwnCounts
  readonly today: string
  readonly standing: readonly ApprovedFigures[]
  readonly shownFrom: number
  readonly again: () => void
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
  const { species, procedure, today, standing, shownFrom, figures, again, onClose } = props
  const { pen } = useWho()
  const [text, setText] = useState('')
  const last = standing.length === 1 ? standing[0] : undefined
  const changes = changesOf(last?.body.figures ?? [], figures)
  const keep = async () => {
    await writeEntry(pen, {
      kind: 'figures-approved',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { species, procedure, asOf: today, figures: [...figures], text: text.trim() === '' ? null : text.trim() },
      supersedes: standing.map(({ header }) => header.id),
      reason: standing.length > 0 ? words.approve : null,
    })
    onClose()
    again()
  }
  return (
    <Modal title={words.approveTitle} close={words.cancel} onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault()
          void keep()
        }}
      >
        <p>{fill(words.approveLead, { animals: oddsInEnglish.animals[species].many, from: String(shownFrom) })}</p>
        {changes.length === 0 ? (
          <p>{words.approveNothing}</p>
        ) : (
          <ul>
            {changes.map((change) => (
              <li key={change}>{change}</li>
            ))}
          </ul>
        )}
        <TextField label={words.approveText} value={text} autoComplete="off" onText={setText} />
        <p className="row">
          <button type="submit" data-weight="main">
            {words.approveDo}
          </button>
        </p>
      </form>
    </Modal>
  )
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
