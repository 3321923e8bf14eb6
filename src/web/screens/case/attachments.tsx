import type { Line } from '#core/journal/fold.ts'
import { Attached } from '../../design/attached.tsx'
import styles from './entry.module.css'

/** The pictures and papers of an entry; one that has not arrived says so. */
export function Attachments({ line }: { readonly line: Line }) {
  const { attachments } = line.header
  if (attachments.length === 0) return null
  return (
    <ul className={styles.files}>
      {attachments.map((file) => (
        <li key={file.hash}>
          <Attached file={file} />
          <span className={styles.fileName}>{file.name}</span>
        </li>
      ))}
    </ul>
  )
}
