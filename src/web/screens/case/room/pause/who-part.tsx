import { useState } from 'react'
import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { Choices } from '../../../../design/choices.tsx'
import { useCaseView } from '../../case-view.ts'
import { useFaultFocus } from '../../use-fault-focus.ts'
import styles from './pause.module.css'

export type PauseWho = { readonly spokenBy: string | null; readonly ledBy: string | null }

/** Who answers aloud and who leads: chosen once, nobody beforehand; changed at any item. `tries` counts taps without a speaker. */
export function WhoPart(props: {
  readonly who: PauseWho
  readonly tries: number
  readonly onWho: (who: PauseWho) => void
}) {
  const { who, tries, onWho } = props
  const { file } = useCaseView()
  const [opened, setOpened] = useState(who.spokenBy === null || who.ledBy === null)
  const [everybody, setEverybody] = useState(false)
  const open = opened || who.spokenBy === null
  const form = useFaultFocus(tries)
  const name = (id: string | null) => (id === null ? words.nobody : personNamed(file, id))
  const said = fill(words.whoSaid, { spoke: name(who.spokenBy), led: name(who.ledBy) })
  if (!open) {
    return (
      <p className={styles.whoSaid}>
        <span>{said}</span>
        <button type="button" data-weight="quiet" onClick={() => setOpened(true)}>
          {words.changeWho}
        </button>
      </p>
    )
  }
  // Whoever stands at the animal comes first; the others are one touch away.
  const near: readonly string[] = writersOf('pause-item')
  const isNear = (role: string) => near.includes(role)
  const ids = [...file.people]
    .filter(([id, { role }]) => everybody || isNear(role) || id === who.spokenBy || id === who.ledBy)
    .sort(([, a], [, b]) => Number(isNear(b.role)) - Number(isNear(a.role)))
    .map(([id]) => id)
  const say = (id: string) => `${name(id)}, ${shell.roles[file.people.get(id)?.role ?? 'read-only']}`
  return (
    <form ref={form} className={styles.who} aria-label={words.who} onSubmit={(event) => event.preventDefault()}>
      <Choices
        legend={words.leads}
        value={who.ledBy}
        options={ids}
        say={say}
        onChoose={(ledBy) => onWho({ ...who, ledBy })}
      />
      <Choices
        legend={words.speaks}
        error={tries > 0 && who.spokenBy === null ? words.speaksMissing : null}
        value={who.spokenBy}
        options={ids}
        say={say}
        onChoose={(spokenBy) => onWho({ ...who, spokenBy })}
      />
      <p className="row">
        {who.spokenBy !== null && (
          <button type="button" onClick={() => setOpened(false)}>
            {words.closeWho}
          </button>
        )}
        {!everybody && (
          <button type="button" data-weight="quiet" onClick={() => setEverybody(true)}>
            {words.others}
          </button>
        )}
      </p>
    </form>
  )
}
