import { useState } from 'react'
import { Link } from 'wouter'
import { trayInEnglish as words } from '#content/wording/app-tray.ts'
import type { Subject } from '#core/journal/entry.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Filed } from '#core/tray/tray.ts'
import { ListGroup } from '../../design/list-group.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { useLists } from '../../journal/cases.ts'
import { caseHref } from '../../journal/hrefs.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './screen.module.css'
import { TakeBack } from './with-reason.tsx'

/** What was filed last, so that a wrong filing is seen and taken back. */
export function FiledList({ filed }: { readonly filed: readonly Filed[] }) {
  const lists = useLists()
  const [taking, setTaking] = useState<Filed | null>(null)
  const nameOf = ({ refile }: Filed) =>
    (lists.kind === 'read'
      ? lists.value.cases.find(({ stream }) => stream === refile.body.toStream)?.name
      : undefined) ?? refile.body.toStream
  if (filed.length === 0) return null
  return (
    <ListGroup id="tray-filed" title={words.filed}>
      <ul className="bare">
        {filed.map((one) => (
          <FiledLine key={one.refile.header.id} filed={one} name={nameOf(one)} onTakeBack={() => setTaking(one)} />
        ))}
      </ul>
      {taking && <TakeBack filed={taking} name={nameOf(taking)} onClose={() => setTaking(null)} />}
    </ListGroup>
  )
}

function FiledLine(props: { readonly filed: Filed; readonly name: string; readonly onTakeBack: () => void }) {
  const { filed, name, onTakeBack } = props
  const { arrived, refile } = filed
  const { people, pen } = useWho()
  const { author } = refile.header
  const by = author.kind === 'person' ? (people.find(({ id }) => id === author.person)?.name ?? author.person) : ''
  const about = { name, side: sideOf(refile.body.toSubject), by, when: sayWhen(refile.at, pen.zone) }
  return (
    <li className={styles.filed}>
      <p className={styles.about}>
        <Link href={caseHref(refile.body.toStream)} className={styles.what}>
          {words.seems[arrived.body.seems]}
        </Link>
        <span className="soft">{fill(words.filedTo, about)}</span>
      </p>
      <button type="button" data-weight="quiet" onClick={onTakeBack}>
        {words.takeBack}
        <span className="said"> {name}</span>
      </button>
    </li>
  )
}

function sideOf(subject: Subject): string {
  return words.sides[subject.kind === 'ear' ? subject.side : 'animal']
}
