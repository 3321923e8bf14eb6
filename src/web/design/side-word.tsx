import type { Side } from '#core/animal/species.ts'
import styles from './side-word.module.css'

/** LEFT or RIGHT, always as the word, always set the same way. */
export function SideWord({ side }: { readonly side: Side | 'BOTH' }) {
  return <strong className={styles.side}>{side}</strong>
}
