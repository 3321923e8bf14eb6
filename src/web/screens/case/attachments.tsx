import { useEffect, useState } from 'react'
import { caseInEnglish } from '#content/wording/app-case.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { database } from '../../journal/database.ts'
import styles from './attachments.module.css'

const words = caseInEnglish.entry
type File = Line['header']['attachments'][number]

/** The pictures and papers of an entry; one that has not arrived says where it is. */
export function Attachments({ line }: { readonly line: Line }) {
  const { attachments } = line.header
  if (attachments.length === 0) return null
  return (
    <ul className={styles.files}>
      {attachments.map((file) => (
        <li key={file.hash}>
          <OneFile file={file} />
        </li>
      ))}
    </ul>
  )
}

function OneFile({ file }: { readonly file: File }) {
  const here = useFileHere(file.hash)
  const [missing, setMissing] = useState(false)
  const address = here ?? `/api/files/${file.hash}`
  const name = fill(words.file, { name: file.name, size: sizeOf(file.bytes) })
  if (!file.mediaType.startsWith('image/')) {
    return (
      <a href={address} className={styles.paper}>
        {name}
      </a>
    )
  }
  return (
    <figure className={styles.picture}>
      {missing ? (
        <p className={styles.missing}>{words.pictureElsewhere}</p>
      ) : (
        <a href={address}>
          <img
            src={address}
            alt={fill(words.picture, { name: file.name })}
            loading="lazy"
            onError={() => setMissing(true)}
          />
        </a>
      )}
      <figcaption>{name}</figcaption>
    </figure>
  )
}

/** A file that this device has not sent yet, as an address of its own. */
function useFileHere(hash: string): string | null {
  const [address, setAddress] = useState<string | null>(null)
  useEffect(() => {
    let made: string | null = null
    let gone = false
    database()
      .then((db) => db.get('files', hash))
      .then((file) => {
        if (gone || !file) return
        made = URL.createObjectURL(file.bytes)
        setAddress(made)
      })
    return () => {
      gone = true
      if (made !== null) URL.revokeObjectURL(made)
    }
  }, [hash])
  return address
}

function sizeOf(bytes: number): string {
  return fill(words.kilobytes, { count: String(Math.max(1, Math.round(bytes / 1024))) })
}
