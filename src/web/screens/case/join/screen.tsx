import { type FormEvent, useState } from 'react'
import { Link, useLocation, useSearch } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { writersOf } from '#core/people/may-write.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Field } from '../../../design/field.tsx'
import { Page } from '../../../design/page.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, keptHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { ChooseCase } from '../choose-case.tsx'
import styles from '../history/history.module.css'
import { LateNotice } from '../late/notice.tsx'
import { MayNotWrite } from '../may-correct.tsx'
import { ReasonField } from '../reason-field.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'

const words = caseInEnglish.join
type Match = BodyOf<'merge'>['matchedOn'][number]
const matches: readonly Match[] = ['chip', 'owner', 'name', 'birth-date']
type Typed = {
  readonly find: string
  readonly stream: string | null
  readonly animal: string | null
  readonly species: string | null
  readonly matchedOn: readonly Match[]
  readonly second: string
  readonly reason: string
}
const nothing = (find: string): Typed => ({
  find,
  stream: null,
  animal: null,
  species: null,
  matchedOn: [],
  second: '',
  reason: '',
})

/** Says that another file is the same animal: both are shown as one, nothing is moved, and it can be taken back. */
export default function JoinScreen() {
  return (
    <WithCase>
      <Join />
    </WithCase>
  )
}

function Join() {
  const { file, id } = useCaseView()
  const { me } = useWho()
  return (
    <Page title={words.title} whose={<CaseLine />} lead={words.lead}>
      <LateNotice />
      {writersOf('merge').includes(me.role) ? <JoinForm stream={file.stream} /> : <MayNotWrite kind="merge" />}
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function JoinForm({ stream: here }: { readonly stream: string }) {
  const { file, id } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const suggested = new URLSearchParams(useSearch()).get('find') ?? ''
  const { draft, change, clear, ready } = useDraft<Typed>(`${here} join`, me.id, () => nothing(suggested))
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const tried = tries > 0
  const put = (part: Partial<Typed>) => change({ ...draft, ...part })
  const reason = draft.reason.trim()
  const own = file.theCase.live('identity').findLast(({ header }) => header.stream === here)?.body.species ?? null
  const other = own !== null && draft.species !== null && draft.species !== own
  const caseFault = draft.stream === null ? words.caseMissing : other ? words.otherSpecies : null
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const { stream, animal, matchedOn, second } = draft
    if (
      stream === null ||
      animal === null ||
      caseFault !== null ||
      faultIn(matchedOn) !== null ||
      second === '' ||
      reason === ''
    )
      return
    const entry = await writeEntry(pen, {
      kind: 'merge',
      stream: here,
      subject: { kind: 'animal', animal: animalIn(file) },
      body: { otherStream: stream, otherAnimal: animal, matchedOn: [...matchedOn], secondPerson: second },
      reason,
    })
    await clear()
    navigate(keptHref(id, entry.id))
  }
  if (!ready) return <DraftAwaited />
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      <ChooseCase
        label={words.find}
        find={draft.find}
        stream={draft.stream}
        not={here}
        error={tried ? caseFault : null}
        onFind={(find) => put({ find })}
        onChoose={({ stream, animal, species }) => put({ stream, animal, species })}
      />
      <MatchedOn
        chosen={draft.matchedOn}
        error={tried ? faultIn(draft.matchedOn) : null}
        onChosen={(matchedOn) => put({ matchedOn })}
      />
      <Field
        label={words.second}
        help={words.secondHelp}
        error={tried && draft.second === '' ? words.secondMissing : null}
      >
        {(control) => (
          <select {...control} value={draft.second} onChange={(event) => put({ second: event.target.value })}>
            <option value="" />
            {[...file.people]
              .filter(([person]) => person !== me.id)
              .map(([person, { name, role }]) => (
                <option key={person} value={person}>
                  {`${name}, ${shell.roles[role]}`}
                </option>
              ))}
          </select>
        )}
      </Field>
      <ReasonField
        help={words.reasonHelp}
        error={tried && reason === '' ? caseInEnglish.withdraw.reasonMissing : null}
        value={draft.reason}
        onText={(text) => put({ reason: text })}
      />
      <p>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
      </p>
    </form>
  )
}

/** Something must agree, and a name alone is never enough. */
function faultIn(matchedOn: readonly Match[]): string | null {
  if (matchedOn.length === 0) return words.matchMissing
  return matchedOn.length === 1 && matchedOn[0] === 'name' ? words.nameAlone : null
}

function MatchedOn(props: {
  readonly chosen: readonly Match[]
  readonly error: string | null
  readonly onChosen: (chosen: readonly Match[]) => void
}) {
  const { chosen, error, onChosen } = props
  return (
    <fieldset aria-invalid={error ? true : undefined} className={styles.checks}>
      <legend>{words.matched}</legend>
      {matches.map((match) => (
        <label key={match} className={styles.check}>
          <input
            type="checkbox"
            checked={chosen.includes(match)}
            onChange={(event) =>
              onChosen(event.target.checked ? [...chosen, match] : chosen.filter((one) => one !== match))
            }
          />
          {words.matches[match]}
        </label>
      ))}
      {error && <p className={styles.error}>{error}</p>}
    </fieldset>
  )
}
