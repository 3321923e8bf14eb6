import { type FormEvent, useState } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import { personNamed } from '#core/journal/clinic.ts'
import type { ContactRow } from '#core/journal/registers.ts'
import { fill } from '#core/outcome/finding.ts'
import { contactFaults, contactOf, type TypedContact, typedOf } from '#core/people/contact-typed.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { useWho } from '../../../session/use-who.ts'
import { contactsHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import styles from '../history/history.module.css'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { ContactFields } from './contact-fields.tsx'
import { upon, useTrail } from './contact-trail.ts'
import { MayNotPut, useMayPut } from './may-put.tsx'

/** How somebody is reached is changed on a page of its own. */
export default function ChangeContactScreen() {
  return (
    <WithCase>
      <Change />
    </WithCase>
  )
}

function Change() {
  const { contact = '' } = useParams()
  const { file, id } = useCaseView()
  const may = useMayPut()
  const row = file.contacts.get(contact)
  return (
    <Page
      title={row ? fill(words.changeTitle, { name: row.name }) : words.title}
      lead={row && may && <p>{words.changeLead}</p>}
      whose={<CaseLine />}
    >
      {!row && <p>{words.notHere}</p>}
      {row && (may ? <ChangeForm id={contact} row={row} /> : <MayNotPut />)}
      <p>
        <Link href={contactsHref(id)}>{words.back}</Link>
      </p>
    </Page>
  )
}

type Draft = { readonly typed: TypedContact; readonly after: number | null | undefined }

function ChangeForm({ id: contact, row }: { readonly id: string; readonly row: ContactRow }) {
  const { id } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const after = upon(useTrail(contact))
  const fresh = (): Draft => ({ typed: typedOf(row), after })
  const { draft, change, clear, ready, found } = useDraft<Draft>(`contact ${contact}`, me.id, fresh)
  const [typedHere, setTypedHere] = useState(false)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  // Until somebody types, the form shows what stands now, also when that comes from another device.
  const now = typedHere || found !== null ? draft : fresh()
  const isOld = now.after !== after
  const put = (part: Partial<TypedContact>) => {
    setTypedHere(true)
    change({ ...now, typed: { ...now.typed, ...part } })
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (contactFaults(now.typed).length > 0 || isOld) return
    const base = now.after === undefined ? {} : { after: now.after }
    const body = contactOf(now.typed, row.kind)
    const written = { register: 'contact', id: contact, body, ...base, by: pen.person } as const
    await keepEntries([], [{ ...written, state: 'waiting', because: null }])
    await clear()
    navigate(contactsHref(id))
  }
  if (!ready) return <DraftAwaited />
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      {isOld && <Meanwhile contact={contact} row={row} onAgain={() => change(fresh())} />}
      <ContactFields kind={row.kind} typed={now.typed} tried={tries > 0} put={put} />
      <p>
        <button type="submit" data-weight="main" disabled={isOld}>
          {words.keep}
        </button>
      </p>
    </form>
  )
}

/** Somebody else changed it since this form was begun: neither is taken away from the other unseen. */
function Meanwhile(props: { readonly contact: string; readonly row: ContactRow; readonly onAgain: () => void }) {
  const { contact, row, onAgain } = props
  const { file } = useCaseView()
  const { pen } = useWho()
  const { standing } = useTrail(contact)
  const said = [row.name, row.practice, row.phone, row.email, ...row.address].filter((part) => part !== null)
  const who = standing ? personNamed(file, standing.by) : ''
  const when = standing ? sayWhen(standing.at, pen.zone) : ''
  return (
    <Notice tone="warn" live title={fill(words.meanwhile, { who, when, said: said.join(', ') })}>
      <p>
        <button type="button" onClick={onAgain}>
          {words.startAgain}
        </button>
      </p>
    </Notice>
  )
}
