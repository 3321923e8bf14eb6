import type { ListedLink } from '#actions/people/case-link.ts'
import { caseLinksInEnglish as words } from '#content/wording/app-case-links.ts'
import { contactNamed, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayWhen } from '../../design/say-when.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './case-links.module.css'
import { useCaseView } from './case-view.ts'

type LinkWords<State extends string> = {
  readonly list: string
  readonly states: Readonly<Record<State | 'open' | 'ended', string>>
}
type Stated<State extends string> = ListedLink & { readonly state: State }

/** The links that were made for a case, the last one first, each with its way to end it. */
export function LinkList<State extends string, Link extends Stated<State>>(props: {
  readonly links: readonly Link[]
  readonly words: LinkWords<Link['state']>
  readonly whose: (link: Link, name: string) => string
  readonly end: (link: Link, name: string) => Promise<unknown>
}) {
  const { links, whose, end } = props
  const { file } = useCaseView()
  const { me } = useWho()
  if (links.length === 0) return <p className="soft">{words.none}</p>
  const { made, opens, opened } = words.columns
  const say = (at: string) => sayWhen(at, file.clinic.zone)
  return (
    <ul aria-label={props.words.list} className={`bare ${styles.list}`}>
      {[...links].reverse().map((link) => {
        const name = contactNamed(file, link.contact)
        const facts = [
          [made, fill(words.madeBy, { when: say(link.madeAt), person: personNamed(file, link.madeBy) })],
          [opens, sayState(link, props.words.states, say, (id) => personNamed(file, id))],
          [opened, link.lastOpenedAt === null ? words.never : say(link.lastOpenedAt)],
        ] as const
        return (
          <li key={link.id} data-state={link.state}>
            <p className={styles.who}>{whose(link, name)}</p>
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

function sayState<State extends string>(
  { state, expiresAt, revokedAt, revokedBy }: Stated<State>,
  states: LinkWords<State>['states'],
  say: (at: string) => string,
  nameOf: (id: string) => string,
): string {
  if (state === 'open') return fill(words.opensUntil, { when: say(expiresAt) })
  if (state !== 'ended' || revokedAt === null || revokedBy === null) return states[state]
  const about = { when: say(revokedAt), person: nameOf(revokedBy) }
  return fill(revokedBy === 'restore' ? words.endedByRestore : words.endedBy, about)
}
