import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import type { Subject } from '#core/journal/entry.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { casePageHref } from './case-hrefs.ts'
import styles from './case-line.module.css'
import { library, useCaseView } from './case-view.ts'
import { sayAnimal } from './head.tsx'

/**
 * Whose page this is, and which ear or operation it is about, on every page that is not the case itself: nothing is
 * written into the wrong animal's file.
 */
export function CaseLine({ about = null }: { readonly about?: Subject | null }) {
  const { file, id } = useCaseView()
  const animal = file.theCase.latest('identity')?.body
  const part = about?.kind === 'ear' || about?.kind === 'operation' ? saySubject(about, file, library) : ''
  return (
    <p className={styles.line}>
      <Link href={casePageHref(id)}>{animal?.name ?? caseInEnglish.untitled}</Link>
      {part !== '' && part !== library.words.unknownOperation && <strong>{part}</strong>}
      {animal && <span className={styles.animal}>{sayAnimal(animal)}</span>}
    </p>
  )
}
