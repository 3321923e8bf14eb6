import { Link } from 'wouter'
import { procedures } from '#content/procedures/index.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import type { EmergencyAccount } from '#core/theatre/emergency-account.ts'
import { sayAccount } from '#documents/operation-report/emergency-words.ts'
import { entryHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './room.module.css'

/** What the entries say of one emergency, each part linked to the first entry it was read from. */
export function AccountPart(props: { readonly account: EmergencyAccount; readonly operation: OperationOnFile }) {
  const { account, operation } = props
  const { id } = useCaseView()
  const { title, parts } = sayAccount(account, procedureNamed(operation.procedure, procedures))
  return (
    <section className={styles.part}>
      <h2>{title}</h2>
      <dl className={styles.account}>
        {parts.map(({ term, said, entries: [first] }) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{first === undefined ? said : <Link href={entryHref(id, first)}>{said}</Link>}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
