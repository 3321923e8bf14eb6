import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { sidesInEnglish } from '#content/wording/app-sides.ts'
import type { SideSource } from '#core/chapters/side-sources.ts'
import { type SideDisagreement, saySource } from '#core/chapters/sides.ts'
import { Notice } from '../../design/notice.tsx'
import { SideWord } from '../../design/side-word.tsx'
import { entryHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { SettleSide } from './settle-side.tsx'
import styles from './sides-part.module.css'

const words = caseInEnglish.sides

/**
 * Where sources of side disagree, all of them beside each other; where they agree, the list waits behind one line
 * unless it is `open`.
 */
export function SidesPart(props: {
  readonly open?: boolean
  /** Only the disagreements about this operation. */
  readonly of?: string
}) {
  const { open = false, of } = props
  const { sides } = useCaseView()
  const { sources } = sides
  const disagreements = sides.disagreements.filter(({ operation }) => of === undefined || operation === of)
  return (
    <>
      {disagreements.map((one) => (
        <Notice key={`${one.operation} ${one.LEFT[0]?.line} ${one.RIGHT[0]?.line}`} tone="warn" title={words.title}>
          <Disagreement found={one} />
        </Notice>
      ))}
      {disagreements.length === 0 && sources.length > 0 && (
        <details className={styles.agree} open={open}>
          <summary>{words.agree}</summary>
          <ul className={styles.sources}>
            {sources.map((source) => (
              <li key={`${source.from} ${source.line}`}>
                <Says source={source} /> <Source source={source} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  )
}

function Disagreement({ found }: { readonly found: SideDisagreement }) {
  return (
    <>
      {(['LEFT', 'RIGHT'] as const).map((side) =>
        found[side].length === 0 ? null : (
          <div key={side}>
            <p>
              <SideWord side={side} />
            </p>
            <ul className={styles.sources}>
              {found[side].map((source) => (
                <li key={`${source.from} ${source.line}`}>
                  <Source source={source} />
                </li>
              ))}
            </ul>
          </div>
        ),
      )}
      {found.notConfirmed.length > 0 && <p>{sidesInEnglish.notConfirmed}</p>}
      {found.notConfirmed.map((source) => (
        <p key={`${source.from} ${source.line}`}>
          <Source source={source} />
        </p>
      ))}
      <p>
        <strong>{sidesInEnglish.settle[found.level]}</strong>
      </p>
      {found.operation !== null && <SettleSide found={found} operation={found.operation} />}
    </>
  )
}

function Says({ source }: { readonly source: SideSource }) {
  if (source.says === 'LEFT' || source.says === 'RIGHT') return <SideWord side={source.says} />
  // An ear looked at without a finding, a choice against surgery: no side is to be said there, and that is no fault.
  return source.says === null ? null : <span className="soft">{sidesInEnglish.says[source.says]}</span>
}

function Source({ source }: { readonly source: SideSource }) {
  const { file, id } = useCaseView()
  return <Link href={entryHref(id, source.line)}>{saySource(source, file, sidesInEnglish)}</Link>
}
