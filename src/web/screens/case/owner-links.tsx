import { useState } from 'react'
import { Link } from 'wouter'
import type { OwnerLinksAnswer } from '#actions/owner/list-owner-links.ts'
import { ownerLinksInEnglish as words } from '#content/wording/app-owner-links.ts'
import { contactNamed, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { call } from '../../journal/api.ts'
import { useAction } from '../../journal/cases.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from '../settings/doing.tsx'
import { AskedPart } from './asked-part.tsx'
import { contactsHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { LinkAddress, type MadeLink } from './link-address.tsx'
import styles from './owner-links.module.css'

export const ownerLinksHref = '#owner-page'

type Listed = OwnerLinksAnswer['links'][number]

/** The private links to the owner's page: made, listed and ended here, with the server. */
export function OwnerLinks() {
  return (
    <AskedPart id="owner-page" words={words}>
      <LinksNow />
    </AskedPart>
  )
}

function LinksNow() {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const reading = useAction<OwnerLinksAnswer>('list-owner-links', { stream: file.stream })
  const [made, setMade] = useState<MadeLink | null>(null)
  const { doing, run, working } = useDoing()
  const make = (contact: string, name: string, use: Listed['use']) => {
    // Opened before anything is waited for: a browser lets no page open another one later.
    const tab = use === 'in-room' ? window.open('about:blank', '_blank') : null
    return run(async () => {
      const link = await call<Omit<MadeLink, 'name'>>('make-owner-link', { stream: file.stream, contact, use })
      setMade({ ...link, name })
      reading.again()
      if (tab) {
        tab.opener = null
        tab.location.replace(link.path)
      }
      return ''
    }).then((done) => done || tab?.close())
  }
  const end = (link: Listed, name: string) =>
    run(async () => {
      await call('revoke-owner-link', { link: link.id })
      if (made?.id === link.id) setMade(null)
      reading.again()
      return fill(words.endDone, { name })
    })
  return (
    <div className={styles.links}>
      <p className="soft">{words.lead}</p>
      {me.role === 'read-only' && <p>{words.readOnly}</p>}
      <ReadingView reading={reading} again={reading.again}>
        {({ links, owners }) => (
          <>
            {me.role !== 'read-only' && (
              <ul className={`bare ${styles.makers}`}>
                {owners.map(({ contact, name }) => (
                  <li key={contact}>
                    <button type="button" disabled={working} onClick={() => void make(contact, name, 'private')}>
                      {fill(words.make, { name })}
                    </button>
                    <button type="button" disabled={working} onClick={() => void make(contact, name, 'in-room')}>
                      {fill(words.show, { name })}
                    </button>
                  </li>
                ))}
              </ul>
            )}
            {owners.length === 0 && !file.theCase.latest('death') && (
              <p>
                {words.noOwner} <Link href={contactsHref(id)}>{words.toPeople}</Link>
              </p>
            )}
            <DoingNote doing={doing} />
            {made && <LinkAddress made={made} />}
            {links.length === 0 ? <p className="soft">{words.none}</p> : <LinkTable links={links} end={end} />}
          </>
        )}
      </ReadingView>
    </div>
  )
}

type End = (link: Listed, name: string) => Promise<unknown>

function LinkTable({ links, end }: { readonly links: readonly Listed[]; readonly end: End }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const { made, opens, opened } = words.columns
  const say = (at: string) => sayWhen(at, file.clinic.zone)
  return (
    <ul aria-label={words.list} className={`bare ${styles.list}`}>
      {[...links].reverse().map((link) => {
        const name = contactNamed(file, link.contact)
        const facts = [
          [made, fill(words.madeBy, { when: say(link.madeAt), person: personNamed(file, link.madeBy) })],
          [opens, sayState(link, say, (id) => personNamed(file, id))],
          [opened, link.lastOpenedAt === null ? words.never : say(link.lastOpenedAt)],
        ] as const
        return (
          <li key={link.id} data-state={link.state}>
            <p className={styles.who}>{fill(words.whose, { name, use: words.uses[link.use] })}</p>
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
                {words.end}
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
  if (state === 'open') return fill(words.opensUntil, { when: say(expiresAt) })
  if (state !== 'ended' || revokedAt === null || revokedBy === null) return words.states[state]
  const about = { when: say(revokedAt), person: nameOf(revokedBy) }
  return fill(revokedBy === 'restore' ? words.endedByRestore : words.endedBy, about)
}
