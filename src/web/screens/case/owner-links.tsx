import { Link } from 'wouter'
import type { OwnerLinksAnswer } from '#actions/owner/list-owner-links.ts'
import { ownerLinksInEnglish as words } from '#content/wording/app-owner-links.ts'
import { fill } from '#core/outcome/finding.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useWho } from '../../session/use-who.ts'
import { DoingNote } from '../settings/doing.tsx'
import { AskedPart } from './asked-part.tsx'
import { contactsHref } from './case-hrefs.ts'
import styles from './case-links.module.css'
import { useCaseView } from './case-view.ts'
import { LinkAddress } from './link-address.tsx'
import { LinkList } from './link-list.tsx'
import { useCaseLinks } from './use-case-links.ts'

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
  const { reading, made, doing, working, make, end } = useCaseLinks<OwnerLinksAnswer>('owner')
  const makeFor = async (contact: string, name: string, use: Listed['use']) => {
    // Opened before anything is waited for: a browser lets no page open another one later.
    const tab = use === 'in-room' ? window.open('about:blank', '_blank') : null
    const link = await make(name, { contact, use })
    if (!link) tab?.close()
    else if (tab) {
      tab.opener = null
      tab.location.replace(link.path)
    }
  }
  const whose = ({ use }: Listed, name: string) => fill(words.whose, { name, use: words.uses[use] })
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
                    <button type="button" disabled={working} onClick={() => void makeFor(contact, name, 'private')}>
                      {fill(words.make, { name })}
                    </button>
                    <button type="button" disabled={working} onClick={() => void makeFor(contact, name, 'in-room')}>
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
            <LinkList links={links} words={words} whose={whose} end={end} />
          </>
        )}
      </ReadingView>
    </div>
  )
}
