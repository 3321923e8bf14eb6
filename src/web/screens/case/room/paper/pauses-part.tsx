import { useState } from 'react'
import { paperSheetInEnglish as words } from '#content/wording/app-paper-sheet.ts'
import { pauseInEnglish } from '#content/wording/app-pause.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import type { PauseRun } from '#core/theatre/pause-run.ts'
import type { SheetFault, TypedAnswer, TypedPause } from '#core/theatre/read-sheet.ts'
import { Choices } from '../../../../design/choices.tsx'
import { TextField } from '../../../../design/text-field.tsx'
import { useCaseView } from '../../case-view.ts'
import styles from './paper.module.css'
import { sayFault } from './use-sheet.ts'

const blank: TypedPause = { first: '', last: '', ledBy: null, spokenBy: null, answers: {} }
const unanswered: TypedAnswer = { answer: null, because: '' }

/** Each spoken pause behind one line: who, from when to when, and the answers that were circled. */
export function PausesPart(props: {
  readonly runs: readonly PauseRun[]
  readonly pauses: Readonly<Record<string, TypedPause>>
  readonly faults: readonly SheetFault[]
  readonly onPauses: (pauses: Readonly<Record<string, TypedPause>>) => void
}) {
  const { runs, pauses, faults, onPauses } = props
  return (
    <section aria-labelledby="paper-pauses">
      <h2 id="paper-pauses">{words.pauses}</h2>
      {runs.map((run) => (
        <OnePause
          key={run.pause}
          run={run}
          typed={pauses[run.pause] ?? blank}
          faults={faults}
          onTyped={(typed) => onPauses({ ...pauses, [run.pause]: typed })}
        />
      ))}
    </section>
  )
}

function OnePause(props: {
  readonly run: PauseRun
  readonly typed: TypedPause
  readonly faults: readonly SheetFault[]
  readonly onTyped: (typed: TypedPause) => void
}) {
  const { run, typed, faults, onTyped } = props
  const { file } = useCaseView()
  // Opened by a fault it stays open, also when the fault is put right.
  const [open, setOpen] = useState(false)
  const place = `pauses.${run.pause}`
  const near: readonly string[] = writersOf('pause-item')
  const people = [...file.people].filter(([, { role }]) => near.includes(role)).map(([id]) => id)
  const name = (id: string) => personNamed(file, id)
  const known = run.items.length - run.open.length
  const set = (more: Partial<TypedPause>) => onTyped({ ...typed, ...more })
  return (
    <details
      className={styles.pause}
      open={open || faults.some(({ at }) => at.startsWith(place))}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <strong>{pauseInEnglish.titles[run.pause]}</strong>{' '}
        {known > 0 && fill(words.pauseKnown, { count: String(known), all: String(run.items.length) })}
      </summary>
      <div className={styles.row}>
        <TextField
          label={words.first}
          error={sayFault(faults, `${place}.first`)}
          inputMode="numeric"
          autoComplete="off"
          value={typed.first}
          onText={(first) => set({ first })}
        />
        <TextField
          label={words.last}
          error={sayFault(faults, `${place}.last`)}
          inputMode="numeric"
          autoComplete="off"
          value={typed.last}
          onText={(last) => set({ last })}
        />
      </div>
      <Choices
        legend={words.led}
        value={typed.ledBy}
        options={people}
        say={name}
        onChoose={(ledBy) => set({ ledBy })}
      />
      <Choices
        legend={words.spoke}
        error={sayFault(faults, `${place}.spokenBy`)}
        value={typed.spokenBy}
        options={people}
        say={name}
        onChoose={(spokenBy) => set({ spokenBy })}
      />
      {run.open.map(({ id, asked }) => {
        const one = typed.answers[id] ?? unanswered
        const answer = (more: Partial<TypedAnswer>) => set({ answers: { ...typed.answers, [id]: { ...one, ...more } } })
        return (
          <div key={id}>
            <Choices
              legend={asked?.states ?? id}
              inline
              value={one.answer}
              options={['yes', 'no', 'unknown'] as const}
              say={(said) => pauseInEnglish.answers[said]}
              onChoose={(said) => answer({ answer: said })}
            />
            {(one.answer === 'no' || one.answer === 'unknown') && (
              <TextField
                label={pauseInEnglish.whyNot[one.answer]}
                error={sayFault(faults, `${place}.answers.${id}`)}
                autoComplete="off"
                value={one.because}
                onText={(because) => answer({ because })}
              />
            )}
          </div>
        )
      })}
    </details>
  )
}
