import { type FormEvent, useState } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { contactFaults, contactOf, nothingTyped, type TypedContact } from '#core/people/contact-typed.ts'
import { Choices } from '../../../design/choices.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Field } from '../../../design/field.tsx'
import { Page } from '../../../design/page.tsx'
import { newId } from '../../../journal/device.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { useWho } from '../../../session/use-who.ts'
import { contactsHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import styles from '../history/history.module.css'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { ContactFields } from './contact-fields.tsx'
import { MayNotPut, useMayPut } from './may-put.tsx'
import { entriesFor } from './name-in-case.ts'
import { OnRecord, saySame } from './on-record.tsx'
import { type SameContact, useSame } from './use-same.ts'

type Role = BodyOf<'household'>['contacts'][number]['roles'][number]
const roles = Object.keys(caseInEnglish.head.roles) as Role[]

/** A person of the household, the referring vet or a laboratory is added on a page of its own. */
export default function AddContactScreen() {
  return (
    <WithCase>
      <Add />
    </WithCase>
  )
}

const kinds = { household: 'owner', vet: 'vet', laboratory: 'laboratory' } as const
type Part = keyof typeof kinds

function Add() {
  const { part = '' } = useParams()
  const { file, id } = useCaseView()
  const may = useMayPut()
  const known = part in kinds ? (part as Part) : null
  const nowhere = known === 'vet' && !file.theCase.latest('identity')
  const title = known === null ? words.title : words.parts[known].add
  return (
    <Page title={title} whose={<CaseLine />}>
      {!may && <MayNotPut />}
      {nowhere && (
        <p>
          {words.identityFirst} <Link href={writeHref(id, 'identity')}>{words.toIdentity}</Link>
        </p>
      )}
      {may && known !== null && !nowhere && <AddForm part={known} />}
      <p>
        <Link href={contactsHref(id)}>{words.back}</Link>
      </p>
    </Page>
  )
}

type Draft = {
  readonly typed: TypedContact
  readonly roles: readonly Role[]
  readonly mayConsent: 'yes' | 'no' | null
  /** A vet of the address book, or `new`. */
  readonly vet: string
  /** Somebody on record whom a person chose instead of writing them a second time. */
  readonly known?: SameContact | null
}

function AddForm({ part }: { readonly part: Part }) {
  const { file, id } = useCaseView()
  const { me, pen, clinic } = useWho()
  const [, navigate] = useLocation()
  const empty = (): Draft => ({ typed: nothingTyped, roles: [], mayConsent: null, vet: '' })
  const { draft, change, clear, ready } = useDraft<Draft>(`${file.stream} add ${part}`, me.id, empty)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const tried = tries > 0
  const put = (change_: Partial<Draft>) => change({ ...draft, ...change_ })
  const known = draft.known ?? null
  const typing = part !== 'vet' || draft.vet === 'new'
  const isNew = typing && known === null
  const same = useSame(isNew ? draft.typed : nothingTyped)
  // A laboratory belongs to the address book alone: there every one of it stands already.
  const here = new Set(
    {
      household: file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? [],
      vet: [file.theCase.latest('identity')?.body.referringVet ?? ''],
      laboratory: same.map(({ id }) => id),
    }[part],
  )
  const incomplete =
    (isNew && contactFaults(draft.typed).length > 0) ||
    (part === 'vet' && draft.vet === '') ||
    (part === 'household' && (draft.roles.length === 0 || draft.mayConsent === null))
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (incomplete) return
    const contact = isNew ? `contact-${newId()}` : (known?.id ?? draft.vet)
    const body = contactOf(draft.typed, kinds[part])
    const name = isNew ? body.name : (known?.name ?? file.contacts.get(contact)?.name ?? contact)
    const mayConsent = draft.mayConsent === 'yes'
    const named = { part, contact, name, roles: draft.roles, mayConsent, language: clinic.row.language }
    const row = { register: 'contact', id: contact, body, after: null, by: pen.person } as const
    await keepEntries(entriesFor(pen, file, named), isNew ? [{ ...row, state: 'waiting', because: null }] : [])
    await clear()
    navigate(contactsHref(id))
  }
  if (!ready) return <DraftAwaited />
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      {part === 'vet' && (
        <WhichVet
          vet={draft.vet}
          error={tried && draft.vet === '' ? words.vetMissing : null}
          onChoose={(vet) => put({ vet, known: null })}
        />
      )}
      {isNew && (
        <ContactFields
          kind={kinds[part]}
          typed={draft.typed}
          tried={tried}
          put={(typed) => put({ typed: { ...draft.typed, ...typed } })}
        />
      )}
      {isNew && <OnRecord same={same} here={here} use={(chosen) => put({ known: chosen })} />}
      {typing && known && (
        <>
          <p>{fill(words.using, { said: saySame(known) })}</p>
          <p>
            <button type="button" onClick={() => put({ known: null })}>
              {words.another}
            </button>
          </p>
        </>
      )}
      {part === 'household' && (
        <>
          {!file.theCase.latest('household') && <p>{fill(words.begins, { language: clinic.row.language })}</p>}
          <Roles
            chosen={draft.roles}
            error={tried && draft.roles.length === 0 ? words.roleMissing : null}
            onChosen={(chosen) => put({ roles: chosen })}
          />
          <Choices
            legend={words.mayConsent}
            options={['yes', 'no'] as const}
            value={draft.mayConsent}
            say={(one) => words.answers[one]}
            error={tried && draft.mayConsent === null ? words.consentMissing : null}
            onChoose={(mayConsent) => put({ mayConsent })}
          />
        </>
      )}
      <p>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
      </p>
    </form>
  )
}

function WhichVet(props: {
  readonly vet: string
  readonly error: string | null
  readonly onChoose: (vet: string) => void
}) {
  const { vet, error, onChoose } = props
  const { file } = useCaseView()
  const present = file.theCase.latest('identity')?.body.referringVet
  const vets = [...file.contacts].filter(([id, { kind }]) => kind === 'vet' && id !== present)
  return (
    <Field label={words.which} error={error}>
      {(control) => (
        <select {...control} value={vet} onChange={(event) => onChoose(event.target.value)}>
          <option value="" />
          {vets.map(([id, { name, practice }]) => (
            <option key={id} value={id}>
              {practice === null ? name : `${name}, ${practice}`}
            </option>
          ))}
          <option value="new">{words.newVet}</option>
        </select>
      )}
    </Field>
  )
}

function Roles(props: {
  readonly chosen: readonly Role[]
  readonly error: string | null
  readonly onChosen: (chosen: readonly Role[]) => void
}) {
  const { chosen, error, onChosen } = props
  return (
    <fieldset aria-invalid={error ? true : undefined} className={styles.checks}>
      <legend>{words.roles}</legend>
      {roles.map((role) => (
        <label key={role} className={styles.check}>
          <input
            type="checkbox"
            checked={chosen.includes(role)}
            onChange={(event) =>
              onChosen(event.target.checked ? [...chosen, role] : chosen.filter((one) => one !== role))
            }
          />
          {caseInEnglish.head.roles[role]}
        </label>
      ))}
      {error && <p className={styles.error}>{error}</p>}
    </fieldset>
  )
}
