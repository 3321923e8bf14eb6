import { useRef, useState } from 'react'
import { caseLinksInEnglish as words } from '#content/wording/app-case-links.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from '../../design/notice.tsx'
import { sayWhen } from '../../design/say-when.ts'
import styles from './case-links.module.css'
import { useCaseView } from './case-view.ts'

export type MadeLink = {
  readonly id: string
  readonly path: string
  readonly expiresAt: string
  /** For whom. */
  readonly name: string
}

/** The address of a private link, as long as this page stays: nobody can tell it again. */
export function LinkAddress({ made: { path, expiresAt, name } }: { readonly made: MadeLink }) {
  const { file } = useCaseView()
  const [copied, setCopied] = useState(false)
  const field = useRef<HTMLInputElement>(null)
  const address = `${location.origin}${path}`
  // The clipboard is closed to a page without encryption; the field can still be selected.
  const copy = async () => {
    await navigator.clipboard.writeText(address)
    setCopied(true)
  }
  return (
    <Notice title={fill(words.made, { name })} live>
      <p>{fill(words.until, { when: sayWhen(expiresAt, file.clinic.zone) })}</p>
      <label>
        {words.address}
        <input
          ref={field}
          className={styles.address}
          value={address}
          readOnly
          spellCheck={false}
          onFocus={() => field.current?.select()}
        />
      </label>
      <p className={styles.acts}>
        {'clipboard' in navigator ? (
          <button type="button" onClick={() => void copy()}>
            {words.copy}
          </button>
        ) : (
          words.select
        )}
        <a href={path} target="_blank" rel="noreferrer">
          {words.openIt}
        </a>
        <span role="status">{copied ? words.copied : ''}</span>
      </p>
      <p className="soft">{fill(words.within, { origin: location.origin })}</p>
    </Notice>
  )
}
