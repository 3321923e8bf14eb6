import { Link } from 'wouter'
import styles from './crumbs.module.css'

/** The way back from a page within a part of the app. */
export function Crumbs(props: {
  readonly label: string
  readonly steps: readonly (readonly [href: string, name: string])[]
}) {
  const { label, steps } = props
  return (
    <nav aria-label={label} className={styles.crumbs}>
      {steps.map(([href, name]) => (
        <Link key={href} href={href}>
          {name}
        </Link>
      ))}
    </nav>
  )
}
