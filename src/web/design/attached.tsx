import { useEffect, useState } from 'react'
import { attachmentsInEnglish as words } from '#content/wording/app-attachments.ts'
import { fill } from '#core/outcome/finding.ts'
import { database } from '../journal/database.ts'
import type { Attachment } from '../journal/take-in.ts'
import styles from './attached.module.css'

/** A file named by its hash: from this device while it was not sent, else from the server; opens at its full size. */
export function Attached({ file, large = false }: { readonly file: Attachment; readonly large?: boolean }) {
  const url = useFileUrl(file.hash)
  const [missing, setMissing] = useState(false)
  const picture = file.mediaType.startsWith('image/')
  const size = large ? styles.large : styles.small
  if (url === null) return <span className={size}>{fill(words.looking, { name: file.name })}</span>
  if (missing) return <span className={size}>{words.notHere}</span>
  return (
    <a href={url} target="_blank" rel="noreferrer" className={size} aria-label={fill(words.open, { name: file.name })}>
      {picture ? (
        <img src={url} alt="" onError={() => setMissing(true)} />
      ) : (
        <span className={styles.paper}>{file.mediaType === 'application/pdf' ? words.pdf : words.text}</span>
      )}
    </a>
  )
}

/** Null while looking. The address of bytes on this device ends when nobody shows them any more. */
function useFileUrl(hash: string): string | null {
  const [url, setUrl] = useState<string | null>(null)
  useEffect(() => {
    let made: string | null = null
    let gone = false
    database()
      .then((db) => db.get('files', hash))
      .then((kept) => {
        if (gone) return
        if (kept) made = URL.createObjectURL(kept.bytes)
        setUrl(made ?? `/api/files/${hash}`)
      })
    return () => {
      gone = true
      if (made !== null) URL.revokeObjectURL(made)
    }
  }, [hash])
  return url
}
