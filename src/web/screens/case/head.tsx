import { useMemo } from 'react'
import { Link } from 'wouter'
import { susceptibility } from '#content/susceptibility/index.ts'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { contactsInEnglish } from '#content/wording/app-contacts.ts'
import { hygieneForClinic } from '#content/wording/hygiene.ts'
import { carriagesOf } from '#core/culture/carriage.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { flagsOf } from '#core/reading/flags-of.ts'
import { agoOf } from '#core/time/ago.ts'
import { sayMoment } from '#core/time/moment.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { sayCarriage } from '#documents/letter/hygiene.ts'
import { Notice } from '../../design/notice.tsx'
import { caseHref } from '../../journal/hrefs.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { contactHref, contactsHref, joinHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { useMayPut } from './contacts/may-put.tsx'
import styles from './head.module.css'

const words = caseInEnglish.head

/** "dog, English Springer Spaniel, female, neutered": under the name. */
export function sayAnimal({ species, breed, sex, neutered }: BodyOf<'identity'>): string {
  return [words.species[species], breed, words.sexes[sex], words.neutered[neutered]]
    .filter((part) => part !== null)
    .join(', ')
}

/** Who the animal is, who belongs to it, and what must be known before anything is given. */
export function CaseHead() {
  const { file, id } = useCaseView()
  const { theCase } = file
  const animal = theCase.latest('identity')?.body
  return (
    <section aria-label={words.about} className={styles.head}>
      <Death />
      <Merged />
      <dl className={styles.facts}>
        <Fact name={words.born}>{animal?.born ? <Born born={animal.born} /> : words.notRecorded}</Fact>
        <Fact name={words.chip}>{animal?.chip ?? words.notRecorded}</Fact>
        <Fact name={words.weight}>
          <Weight line={theCase.latest('weight')} />
        </Fact>
        <Fact name={words.flags}>
          <Flags />
        </Fact>
        <Fact name={words.household} wide>
          <Household />
        </Fact>
        <Fact name={words.vet} wide>
          {animal?.referringVet ? <Contact id={animal.referringVet} /> : words.notRecorded}
        </Fact>
      </dl>
      <p className={styles.links} data-screen-only>
        <Link href={contactsHref(id)}>{contactsInEnglish.open}</Link>
        <Link href={joinHref(id)}>{caseInEnglish.join.link}</Link>
      </p>
    </section>
  )
}

function Fact(props: { readonly name: string; readonly wide?: boolean; readonly children: React.ReactNode }) {
  return (
    <div className={props.wide ? styles.wide : undefined}>
      <dt>{props.name}</dt>
      <dd>{props.children}</dd>
    </div>
  )
}

type Moment = NonNullable<BodyOf<'identity'>['born']>

function Born({ born }: { readonly born: Moment }) {
  const { count, unit } = agoOf(born, useMinute())
  return (
    <>
      {sayMoment(born)} <span className="soft">({fill(caseInEnglish.age[unit], { count: String(count) })})</span>
    </>
  )
}

function Weight({ line }: { readonly line: Line<BodyOf<'weight'>> | undefined }) {
  const now = useMinute()
  const { file } = useCaseView()
  const doubted = line && file.theCase.conflicts.some(({ between }) => between.includes(line.header.id))
  if (!line) return words.notRecorded
  const { weight, typed, how } = line.body
  const said = inBothUnits(fromStored(typed ?? weight))
  const day = sayMoment({ ...line.header.happenedAt, precision: 'day' })
  return (
    <>
      {fill(words.weightSaid, { weight: said, how: words.weightHow[how] })}
      <br />
      <span className="soft">{fill(words.weighed, { day, ago: sayAgo(line.header.happenedAt, now) })}</span>
      {doubted && <strong className={styles.doubt}>{words.doubted}</strong>}
    </>
  )
}

/** "today", "9 weeks ago". */
function sayAgo(moment: { readonly at: string; readonly zone: string }, now: string): string {
  const { count, unit } = agoOf(moment, now)
  if (unit === 'days' && count < 2) return count === 0 ? caseInEnglish.ago.today : caseInEnglish.ago.yesterday
  return fill(caseInEnglish.ago[unit], { count: String(count) })
}

function Flags() {
  const { file } = useCaseView()
  const flags = flagsOf(file.theCase)
  const carriages = useMemo(() => carriagesOf(file, susceptibility), [file])
  if (flags.length + carriages.length === 0) return words.noFlags
  return (
    <ul className={styles.flags}>
      {carriages.map((one) => (
        <li key={`${one.result} ${one.name}`}>
          {sayCarriage(one, file.clinic.zone)}
          <details className={styles.hygiene}>
            <summary>{hygieneForClinic.title}</summary>
            <p>{hygieneForClinic.practice.value}</p>
          </details>
        </li>
      ))}
      {flags.map(({ code, about }) => (
        <li key={code}>{fill(caseInEnglish.flags[code], about)}</li>
      ))}
    </ul>
  )
}

function Household() {
  const { file } = useCaseView()
  const household = file.theCase.latest('household')
  if (!household) return words.notRecorded
  return (
    <ul className={styles.people}>
      {household.body.contacts.map(({ contact, roles, mayConsent }) => (
        <li key={contact}>
          <Contact id={contact} />
          <span className="soft">
            {[...roles.map((role) => words.roles[role]), mayConsent ? words.mayConsent : words.mayNotConsent].join(
              ', ',
            )}
          </span>
        </li>
      ))}
    </ul>
  )
}

function Contact({ id }: { readonly id: string }) {
  const { file, id: place } = useCaseView()
  const may = useMayPut()
  const contact = file.contacts.get(id)
  const name = contactNamed(file, id)
  const said = contact?.practice ? fill(namesInEnglish.contact, { name, practice: contact.practice }) : name
  return (
    <span className={styles.contact}>
      <span>{said}</span>
      {contact?.phone ? (
        <a href={`tel:${contact.phone.replaceAll(/[^\d+]/g, '')}`}>{contact.phone}</a>
      ) : (
        <>
          <span className="soft">{words.noPhone}</span>
          {contact && may && (
            <Link href={contactHref(place, id)} data-screen-only>
              {contactsInEnglish.addPhone}
            </Link>
          )}
        </>
      )}
    </span>
  )
}

function Death() {
  const { file } = useCaseView()
  const death = file.theCase.latest('death')
  if (!death) return null
  const name = file.theCase.latest('identity')?.body.name ?? caseInEnglish.untitled
  const day = sayMoment(death.header.happenedAt)
  const said = death.body.how === 'euthanasia' ? words.euthanised : words.died
  return (
    <Notice title={fill(said, { name, day })}>
      <p>{fill(words.diedWhy, { cause: death.body.cause })}</p>
    </Notice>
  )
}

function Merged() {
  const { file, keptAside } = useCaseView()
  const { theCase } = file
  const others = [...new Set(theCase.lines.map(({ header }) => header.stream))].filter((one) => one !== file.stream)
  const names = [...new Set(theCase.live('identity').map(({ body }) => body.name))]
  return (
    <>
      {others.map((stream) => (
        <p key={stream}>
          <Link href={caseHref(stream)}>{fill(words.merged, { file: stream.replace(/^case:/, '') })}</Link>
        </p>
      ))}
      {names.length > 1 && (
        <Notice tone="warn">
          <p>{fill(words.namedTwice, { names: names.join(', ') })}</p>
        </Notice>
      )}
      {keptAside.length > 0 && (
        <Notice tone="warn">
          <p>{words.keptAside}</p>
        </Notice>
      )}
      {theCase.pending.length > 0 && (
        <p className="soft">{fill(words.pending, { count: String(theCase.pending.length) })}</p>
      )}
    </>
  )
}
