import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { casePageHref } from './case-hrefs.ts'
import styles from './case-line.module.css'
import { useCaseView } from './case-view.ts'
import { sayAnimal } from './head.tsx'

/** Whose page this is, on every page that is not the case itself: nothing is written into the wrong animal's file. */
export function CaseLine() {
  const { file, id } = useCaseView()
  const animal = file.theCase.latest('identity')?.body
  return (
    <p className={styles.line}>
      <Link href={casePageHref(id)}>{animal?.name ?? caseInEnglish.untitled}</Link>
      {animal && <span>{sayAnimal(animal)}</span>}
    </p>
  )
}
