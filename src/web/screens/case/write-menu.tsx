import { Link } from 'wouter'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import type { Chapter } from '#core/chapters/chapter.ts'
import { subjectsFor } from '#core/chapters/subjects-for.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { KindName } from '#core/journal/fold.ts'
import { writersOf } from '#core/people/may-write.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { entryKindsOf } from '../../forms/forms.ts'
import { useWho } from '../../session/use-who.ts'
import { choiceHref, plateHref, writeHref } from './case-hrefs.ts'
import { library, useCaseView } from './case-view.ts'
import styles from './write-menu.module.css'

/** Everything that is written in one chapter by whoever acts; of an ear or an operation, one link for each by its side. */
export function WriteMenu({ chapter }: { readonly chapter: Chapter }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const name = chaptersInEnglish.chapters[chapter]
  const kinds = kindsFor(chapter).filter((kind) => writersOf(kind).includes(me.role))
  if (kinds.length === 0) return null
  return (
    <details className={styles.menu} data-screen-only>
      <summary aria-label={`${caseInEnglish.chapter.write}: ${name}`}>{caseInEnglish.chapter.write}</summary>
      <ul>
        {kinds.map((kind) => (
          <li key={kind}>
            <Choices kind={kind} subjects={subjectsFor(kind, file, '')} />
          </li>
        ))}
      </ul>
    </details>
  )
}

/** "Planned line: LEFT ear, operation": what the short word of a link leaves to the lines above it. */
function sayWay(kind: KindName, side: string, subject: Subject): string {
  const operation = subject.kind === 'operation' ? `, ${namesInEnglish.subjects.operation}` : ''
  return `${kindsInEnglish[kind]}: ${side}${operation}`
}

function kindsFor(chapter: Chapter): KindName[] {
  return entryKindsOf(chapter)
    .map(({ kind }) => kind)
    .sort((a, b) => kindsInEnglish[a].localeCompare(kindsInEnglish[b]))
}

function Choices({ kind, subjects }: { readonly kind: KindName; readonly subjects: readonly Subject[] }) {
  const { id, file } = useCaseView()
  const { kind: only } = subjects[0] ?? { kind: 'animal' }
  const bySide = subjects.length > 1 && subjects.every((subject) => subject.kind === only)
  const named = bySide || only === 'operation'
  if (!named || kind === 'booking' || subjects.length === 0) {
    return <Link href={writeHref(id, kind)}>{kindsInEnglish[kind]}</Link>
  }
  return (
    <>
      <span>{kindsInEnglish[kind]}</span>
      <span className={styles.ways}>
        {kind === 'ear-findings' && (
          <Link href={`${writeHref(id, kind)}?side=BOTH`}>{caseInEnglish.chapter.bothEars}</Link>
        )}
        {subjects.map((subject) => {
          const about = saySubject(subject, file, library)
          const side = subject.kind === 'ear' ? subject.side : about
          const href =
            kind === 'plate-drawing'
              ? plateHref(id, side)
              : kind === 'cost-assumption'
                ? choiceHref(id, side)
                : writeHref(id, kind, { subject })
          return (
            <Link key={about} href={href} aria-label={sayWay(kind, side.split(', ')[0] ?? side, subject)}>
              {side.split(', ')[0]}
            </Link>
          )
        })}
      </span>
    </>
  )
}
