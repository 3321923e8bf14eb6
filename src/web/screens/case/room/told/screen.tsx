import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { told as form } from '#content/wording/app-forms/told.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { tellOwnerInEnglish as words } from '#content/wording/app-tell-owner.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { authorNamed, contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type OperationOnFile, rootOf } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { type EmergencyAccount, emergencyAccounts } from '#core/theatre/emergency-account.ts'
import { Choices } from '../../../../design/choices.tsx'
import { Field } from '../../../../design/field.tsx'
import { Page } from '../../../../design/page.tsx'
import { sayWhen } from '../../../../design/say-when.ts'
import { useDraft } from '../../../../journal/drafts.ts'
import { writeEntry } from '../../../../journal/write-entry.ts'
import { useWho } from '../../../../session/use-who.ts'
import { casePageHref, roomHref, writeHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { MayNotWrite } from '../../may-correct.tsx'
import { useFaultFocus } from '../../use-fault-focus.ts'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { AccountPart } from '../account-part.tsx'
import { draftOfCall } from './draft-of.ts'
import styles from './told.module.css'

/** The owner hears the same day what was called in theatre; what is said is drafted from the entries. */
export default function TellOwnerScreen() {
  return (
    <WithCase>
      <TellOwner />
    </WithCase>
  )
}

function TellOwner() {
  const { wanted, operation, subject } = useOperationHere()
  const { file, id } = useCaseView()
  const { me } = useWho()
  const accounts = operation ? emergencyAccounts(file.theCase, operation.id) : []
  const mayTell = writersOf('told').includes(me.role)
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine about={subject} />}>
      {!operation && <p>{roomInEnglish.noOperation}</p>}
      {operation && accounts.length === 0 && <p>{words.nothing}</p>}
      {operation && accounts.length > 0 && (
        <>
          {accounts.map((account) => (
            <AccountPart key={account.shout.begun.header.id} account={account} operation={operation} />
          ))}
          <Told accounts={accounts} />
          {mayTell ? <Telling operation={operation} accounts={accounts} /> : <MayNotWrite kind="told" />}
        </>
      )}
      <p data-screen-only className={styles.links}>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
        <Link href={roomHref(id, wanted)}>{roomInEnglish.open}</Link>
      </p>
    </Page>
  )
}

/** Who was told so far. */
function Told({ accounts }: { readonly accounts: readonly EmergencyAccount[] }) {
  const { file } = useCaseView()
  const { theCase } = file
  const begun = new Set(accounts.map(({ shout }) => rootOf(theCase, shout.begun.header.id)))
  const all = theCase.live('told').filter(({ body }) => body.who === 'owner' && begun.has(rootOf(theCase, body.about)))
  return (
    <div role="status">
      {all.map(({ header, at }) => (
        <p key={header.id} className={styles.told}>
          {fill(words.toldAt, { at: sayWhen(at, file.clinic.zone), who: authorNamed(file, header.author) })}
        </p>
      ))}
    </div>
  )
}

const ways = ['phone', 'in-person'] as const
type Draft = { readonly contact: string | null; readonly by: BodyOf<'told'>['by']; readonly text: string | null }

function Telling(props: { readonly operation: OperationOnFile; readonly accounts: readonly EmergencyAccount[] }) {
  const { operation, accounts } = props
  const { file, id } = useCaseView()
  const { me, pen } = useWho()
  const [tries, setTries] = useState(0)
  const focus = useFaultFocus(tries)
  const people = file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? []
  const last = accounts.at(-1)?.shout.begun.header.id ?? ''
  const { draft, change, clear, ready } = useDraft<Draft>(`told ${last}`, me.id, () => ({
    contact: people.length === 1 ? (people[0] ?? null) : null,
    by: 'phone',
    text: null,
  }))
  if (!ready) return null
  const animal = file.theCase.latest('identity')?.body.name ?? ''
  // Nobody typed yet: the draft goes on following the entries.
  const text = draft.text ?? draftOfCall(accounts, animal, operation.side)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const { contact, by } = draft
    if (contact === null) return
    await writeEntry(pen, {
      kind: 'told',
      stream: file.stream,
      subject: { kind: 'animal', animal: animalIn(file) },
      body: { about: last, who: 'owner', contact, by, text: text.trim() || null },
    })
    await clear()
    setTries(0)
  }
  return (
    <form ref={focus} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      <Field label={words.text}>
        {(control) => (
          <textarea
            {...control}
            rows={8}
            value={text}
            onChange={(event) => change({ ...draft, text: event.target.value })}
          />
        )}
      </Field>
      <Choices
        legend={words.who}
        error={tries > 0 && draft.contact === null ? words.whoMissing : null}
        value={draft.contact}
        options={people}
        say={(one) => contactNamed(file, one)}
        onChoose={(contact) => change({ ...draft, contact })}
      />
      <Choices
        legend={words.how}
        value={draft.by}
        options={ways}
        say={(one) => form.fields.by.options[one]}
        onChoose={(by) => change({ ...draft, by })}
      />
      <p className="row">
        <button type="submit" data-weight="main">
          {words.told}
        </button>
        <Link href={writeHref(id, 'call', { subject: { kind: 'animal', animal: animalIn(file) } })}>
          {words.nobody}
        </Link>
      </p>
    </form>
  )
}
