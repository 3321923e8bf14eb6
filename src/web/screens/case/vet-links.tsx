import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import type { VetLinksAnswer } from '#actions/vet/list-vet-links.ts'
import { vetStretches } from '#content/follow-up/vet-link-rules.ts'
import { ownerLinksInEnglish } from '#content/wording/app-owner-links.ts'
import { vetLinksInEnglish as words } from '#content/wording/app-vet-links.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { contactNamed, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { askOfVet, operatedEars } from '#core/vet/asked-of-vet.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayDay, sayWhen } from '../../design/say-when.ts'
import { call } from '../../journal/api.ts'
import { useAction } from '../../journal/cases.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from '../settings/doing.tsx'
import { AskedPart } from './asked-part.tsx'
import { contactsHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { LinkAddress, type MadeLink } from './link-address.tsx'
import styles from './owner-links.module.css'

export const vetLinksHref = '#referring-practice'

type Listed = VetLinksAnswer['links'][number]
type Vet = VetLinksAnswer['vets'][number]

/** The links to the short form of a referring practice: made, listed and ended here, with the server. */
export function VetLinks() {
  return (
    <AskedPart id="referring-practice" words={words}>
      <LinksNow />
    </AskedPart>
  )
}

function LinksNow() {
  const { file } = useCaseView()
  const { me } = useWho()
  const reading = useAction<VetLinksAnswer>('list-vet-links', { stream: file.stream })
  const [made, setMade] = useState<MadeLink | null>(null)
  const { doing, run, working } = useDoing()
  const make = (vet: Vet, asked: string) =>
    run(async () => {
      const stretch = vetStretches.find((one) => one === asked)
      const ask = stretch ? { kind: 'stretch', stretch } : { kind: 'look', owed: asked }
      const link = await call<Omit<MadeLink, 'name'>>('make-vet-link', {
        stream: file.stream,
        contact: vet.contact,
        ask,
      })
      setMade({ ...link, name: vet.name })
      reading.again()
      return ''
    })
  const end = (link: Listed, name: string) =>
    run(async () => {
      await call('revoke-vet-link', { link: link.id })
      if (made?.id === link.id) setMade(null)
      reading.again()
      return fill(words.endDone, { name })
    })
  return (
    <div className={styles.links}>
      <p className="soft">{words.lead}</p>
      {me.role === 'read-only' && <p>{ownerLinksInEnglish.readOnly}</p>}
      <ReadingView reading={reading} again={reading.again}>
        {({ links, vets }) => (
          <>
            {me.role !== 'read-only' && <Maker vets={vets} working={working} make={make} />}
            <DoingNote doing={doing} />
            {made && <LinkAddress made={made} />}
            {links.length === 0 ? <p className="soft">{words.none}</p> : <LinkList links={links} end={end} />}
          </>
        )}
      </ReadingView>
    </div>
  )
}

function Maker(props: {
  readonly vets: readonly Vet[]
  readonly working: boolean
  readonly make: (vet: Vet, asked: string) => Promise<unknown>
}) {
  const { vets, working, make } = props
  const { file, id, owed, operations } = useCaseView()
  const [contact, setContact] = useState('')
  const [asked, setAsked] = useState<string>('')
  if (file.theCase.latest('death')) return <p>{words.died}</p>
  if (operatedEars(operations, null).length === 0) return <p>{words.notOperated}</p>
  const vet = vets.find((one) => one.contact === contact) ?? vets[0]
  if (!vet) {
    return (
      <p>
        {words.noVet} <Link href={contactsHref(id)}>{words.toPeople}</Link>
      </p>
    )
  }
  const looks = owed.filter((item) => askOfVet(item) !== null)
  const chosen = [...looks.map((item) => item.id), ...vetStretches].find((one) => one === asked)
  const first = looks[0]?.id ?? vetStretches[0]
  const send = (event: FormEvent) => {
    event.preventDefault()
    void make(vet, chosen ?? first)
  }
  return (
    <form className={styles.makers} onSubmit={send}>
      <label>
        {words.whom}
        <select value={vet.contact} onChange={(event) => setContact(event.currentTarget.value)}>
          {vets.map((one) => (
            <option key={one.contact} value={one.contact}>
              {[one.name, file.contacts.get(one.contact)?.practice].filter(Boolean).join(', ')}
            </option>
          ))}
        </select>
      </label>
      <label>
        {words.what}
        <select value={chosen ?? first} onChange={(event) => setAsked(event.currentTarget.value)}>
          {looks.length > 0 && (
            <optgroup label={words.looksTitle}>
              {looks.map((item) => (
                <option key={item.id} value={item.id}>
                  {fill(words.look, { what: sayOwed(item, owedInEnglish).what, day: sayDay(item.dueBy, item.zone) })}
                </option>
              ))}
            </optgroup>
          )}
          <optgroup label={words.stretchesTitle}>
            {vetStretches.map((stretch) => (
              <option key={stretch} value={stretch}>
                {words.stretches[stretch]}
              </option>
            ))}
          </optgroup>
        </select>
      </label>
      <p className={styles.acts}>
        <button type="submit" disabled={working}>
          {words.make}
        </button>
      </p>
    </form>
  )
}

type End = (link: Listed, name: string) => Promise<unknown>

function LinkList({ links, end }: { readonly links: readonly Listed[]; readonly end: End }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const { made, opens, opened } = ownerLinksInEnglish.columns
  const say = (at: string) => sayWhen(at, file.clinic.zone)
  return (
    <ul aria-label={words.list} className={`bare ${styles.list}`}>
      {[...links].reverse().map((link) => {
        const name = contactNamed(file, link.contact)
        const about = { name, asked: words.asks[link.asked], side: link.side ?? '' }
        const by = { when: say(link.madeAt), person: personNamed(file, link.madeBy) }
        const facts = [
          [made, fill(ownerLinksInEnglish.madeBy, by)],
          [opens, sayState(link, say, (id) => personNamed(file, id))],
          [opened, link.lastOpenedAt === null ? ownerLinksInEnglish.never : say(link.lastOpenedAt)],
        ] as const
        return (
          <li key={link.id} data-state={link.state}>
            <p className={styles.who}>{fill(link.side === null ? words.whose : words.whoseEar, about)}</p>
            <dl>
              {facts.map(([term, said]) => (
                <div key={term}>
                  <dt>{term}</dt>
                  <dd>{said}</dd>
                </div>
              ))}
            </dl>
            {link.state === 'open' && me.role !== 'read-only' && (
              <button
                type="button"
                aria-label={fill(words.endOf, { name, when: say(link.madeAt) })}
                onClick={() => confirm(fill(words.endSure, { name })) && void end(link, name)}
              >
                {ownerLinksInEnglish.end}
              </button>
            )}
          </li>
        )
      })}
    </ul>
  )
}

function sayState(link: Listed, say: (at: string) => string, nameOf: (id: string) => string): string {
  const { state, expiresAt, revokedAt, revokedBy } = link
  if (state === 'open') return fill(ownerLinksInEnglish.opensUntil, { when: say(expiresAt) })
  if (state !== 'ended' || revokedAt === null || revokedBy === null) return words.states[state]
  const about = { when: say(revokedAt), person: nameOf(revokedBy) }
  return fill(revokedBy === 'restore' ? ownerLinksInEnglish.endedByRestore : ownerLinksInEnglish.endedBy, about)
}
