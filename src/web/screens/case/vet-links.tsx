import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import type { VetLinksAnswer } from '#actions/vet/list-vet-links.ts'
import { vetStretches } from '#content/follow-up/vet-link-rules.ts'
import { vetLinksInEnglish as words } from '#content/wording/app-vet-links.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { askOfVet, operatedEars } from '#core/vet/asked-of-vet.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayDay } from '../../design/say-when.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote } from '../settings/doing.tsx'
import { AskedPart } from './asked-part.tsx'
import { contactsHref } from './case-hrefs.ts'
import styles from './case-links.module.css'
import { useCaseView } from './case-view.ts'
import { LinkAddress } from './link-address.tsx'
import { LinkList } from './link-list.tsx'
import { useCaseLinks } from './use-case-links.ts'

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
  const { me } = useWho()
  const { reading, made, doing, working, make, end } = useCaseLinks<VetLinksAnswer>('vet')
  const makeFor = ({ contact, name }: Vet, asked: string) => {
    const stretch = vetStretches.find((one) => one === asked)
    return make(name, { contact, ask: stretch ? { kind: 'stretch', stretch } : { kind: 'look', owed: asked } })
  }
  const whose = ({ asked, side }: Listed, name: string) => {
    const about = { name, asked: words.asks[asked], side: side ?? '' }
    return fill(side === null ? words.whose : words.whoseEar, about)
  }
  return (
    <div className={styles.links}>
      <p className="soft">{words.lead}</p>
      {me.role === 'read-only' && <p>{words.readOnly}</p>}
      <ReadingView reading={reading} again={reading.again}>
        {({ links, vets }) => (
          <>
            {me.role !== 'read-only' && <Maker vets={vets} working={working} make={makeFor} />}
            <DoingNote doing={doing} />
            {made && <LinkAddress made={made} />}
            <LinkList links={links} words={words} whose={whose} end={end} />
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
