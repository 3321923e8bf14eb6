import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import { personNamed } from '#core/journal/clinic.ts'
import type { ContactRow } from '#core/journal/registers.ts'
import { fill } from '#core/outcome/finding.ts'
import { Page } from '../../../design/page.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { useWho } from '../../../session/use-who.ts'
import { addContactHref, casePageHref, contactHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import { useTrail } from './contact-trail.ts'
import styles from './contacts.module.css'
import { MayNotPut, useMayPut } from './may-put.tsx'

/** Who belongs to the animal and how to reach them; each can be changed, and others added. */
export default function ContactsScreen() {
  return (
    <WithCase>
      <Contacts />
    </WithCase>
  )
}

type PartName = keyof typeof words.parts

function Contacts() {
  const { file, id } = useCaseView()
  const may = useMayPut()
  const household = file.theCase.latest('household')
  const vet = file.theCase.latest('identity')?.body.referringVet ?? null
  const laboratories = [...file.contacts]
    .filter(([, { kind }]) => kind === 'laboratory')
    .sort(([, one], [, other]) => one.name.localeCompare(other.name, 'en'))
    .map(([contact]) => contact)
  const people = household?.body.contacts.map(({ contact }) => contact) ?? []
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine />}>
      {!may && <MayNotPut />}
      <Part name="household" contacts={people}>
        {household && (
          <Link href={writeHref(id, 'household', { amend: household.header.id })}>{words.toHousehold}</Link>
        )}
      </Part>
      <Part name="vet" contacts={vet === null ? [] : [vet]} />
      <Part name="laboratory" contacts={laboratories} />
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function Part(props: {
  readonly name: PartName
  readonly contacts: readonly string[]
  readonly children?: React.ReactNode
}) {
  const { name, contacts, children } = props
  const { id } = useCaseView()
  const may = useMayPut()
  const part = words.parts[name]
  const add = name === 'vet' && contacts.length > 0 ? words.anotherVet : part.add
  return (
    <section aria-labelledby={`part-${name}`} className="stack">
      <h2 id={`part-${name}`}>{part.title}</h2>
      {contacts.length === 0 && <p className="soft">{part.none}</p>}
      <ul className={styles.cards}>
        {contacts.map((contact) => (
          <Card key={contact} id={contact} />
        ))}
      </ul>
      {may && (
        <p className={styles.acts} data-screen-only>
          <Link href={addContactHref(id, name)}>{add}</Link>
          {children}
        </p>
      )}
    </section>
  )
}

function Card({ id: contact }: { readonly id: string }) {
  const { file, id } = useCaseView()
  const may = useMayPut()
  const row = file.contacts.get(contact)
  if (!row) return <li className={styles.card}>{`‹${contact}›`}</li>
  const roles = file.theCase.latest('household')?.body.contacts.find((one) => one.contact === contact)?.roles ?? []
  return (
    <li className={styles.card}>
      <h3>{row.name}</h3>
      {roles.length > 0 && <p className="soft">{roles.map((role) => caseInEnglish.head.roles[role]).join(', ')}</p>}
      <Facts row={row} />
      <Written contact={contact} />
      {may && (
        <p data-screen-only>
          <Link href={contactHref(id, contact)}>{fill(words.change, { name: row.name })}</Link>
        </p>
      )}
    </li>
  )
}

function Facts({ row: { kind, practice, phone, email, address } }: { readonly row: ContactRow }) {
  const none = <span className="soft">{words.notRecorded}</span>
  return (
    <dl className={styles.facts}>
      {kind === 'vet' && <Fact name={words.fields.practice}>{practice ?? none}</Fact>}
      <Fact name={words.fields.phone}>
        {phone === null ? none : <a href={`tel:${phone.replaceAll(/[^\d+]/g, '')}`}>{phone}</a>}
      </Fact>
      <Fact name={words.fields.email}>{email === null ? none : <a href={`mailto:${email}`}>{email}</a>}</Fact>
      <Fact name={words.fields.address}>{address.length === 0 ? none : address.join(', ')}</Fact>
    </dl>
  )
}

function Fact({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  )
}

/** Who wrote it last and when, or that only this device has it. */
function Written({ contact }: { readonly contact: string }) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const { standing, waiting } = useTrail(contact)
  return (
    <p className="soft">
      {standing && fill(words.changed, { who: personNamed(file, standing.by), when: sayWhen(standing.at, pen.zone) })}{' '}
      {waiting && waiting.state !== 'refused' && <strong>{words.waits}</strong>}
      {waiting?.state === 'refused' && (
        <>
          <strong>{fill(words.refused, { because: waiting.because ?? '' })}</strong>{' '}
          <Link href="/kept">{words.toKept}</Link>
        </>
      )}
    </p>
  )
}
