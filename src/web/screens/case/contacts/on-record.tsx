import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from '../../../design/notice.tsx'
import styles from './contacts.module.css'
import type { SameContact } from './use-same.ts'

/** Offers whoever is on record already, with what they have in common with what was typed. A person chooses. */
export function OnRecord(props: {
  readonly same: readonly SameContact[]
  /** Who stands here already, and is not to be added again. */
  readonly here: ReadonlySet<string>
  readonly use: (contact: SameContact) => void
}) {
  const { same, here, use } = props
  return (
    <div aria-live="polite">
      {same.length > 0 && (
        <Notice title={words.onRecord}>
          <ul className={`bare ${styles.same}`}>
            {same.map((one) => (
              <li key={one.id}>
                <span>
                  {saySame(one)}
                  <br />
                  <span className="soft">{one.why.map((why) => words.same[why]).join(' · ')}</span>
                </span>
                {here.has(one.id) ? (
                  <span className="soft">{words.here}</span>
                ) : (
                  <button type="button" onClick={() => use(one)}>
                    {fill(words.useThis, { name: one.name })}
                  </button>
                )}
              </li>
            ))}
          </ul>
          <p className="soft">{words.onRecordHelp}</p>
        </Notice>
      )}
    </div>
  )
}

export function saySame({ name, practice, phone }: Pick<SameContact, 'name' | 'practice' | 'phone'>): string {
  return [name, practice, phone].filter((part) => part !== null).join(', ')
}
