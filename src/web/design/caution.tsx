import { caution } from '#content/wording/caution.ts'
import styles from './caution.module.css'

/** The one quiet line under everything that states a dose, a category or a risk. */
export function Caution() {
  return <p className={styles.caution}>{caution}</p>
}
