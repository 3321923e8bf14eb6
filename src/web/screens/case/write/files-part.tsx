import { useId, useState } from 'react'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { fill } from '#core/outcome/finding.ts'
import { Attached } from '../../../design/attached.tsx'
import { Notice } from '../../../design/notice.tsx'
import { sayFileRefusal } from '../../../design/say-file-refusal.ts'
import { type Attachment, letFileGo, takeInFile } from '../../../journal/take-in.ts'
import styles from './write.module.css'

const words = caseInEnglish.write
const accepted = 'image/jpeg,image/png,image/webp,application/pdf,text/plain,text/csv'

/** Pictures and papers that belong to the entry. Their bytes stay on this device until they were sent. */
export function FilesPart(props: {
  readonly files: readonly Attachment[]
  readonly error: string | null
  readonly onFiles: (files: readonly Attachment[]) => void
}) {
  const { files, error, onFiles } = props
  const id = useId()
  const [refused, setRefused] = useState<readonly string[]>([])
  const take = async (chosen: readonly File[]) => {
    const taken = await Promise.all(chosen.map(async (file) => ({ file, read: await takeInFile(file) })))
    const known = new Set(files.map(({ hash }) => hash))
    const added = taken.flatMap(({ read }) =>
      read.kind === 'answer' && !known.has(read.answer.hash) ? [read.answer] : [],
    )
    setRefused(
      taken.flatMap(({ file, read }) =>
        read.kind === 'refusal'
          ? [fill(words.fileRefused, { name: file.name, said: sayFileRefusal(read.refusal) })]
          : [],
      ),
    )
    onFiles([...files, ...added])
  }
  const remove = async ({ hash }: Attachment) => {
    onFiles(files.filter((file) => file.hash !== hash))
    await letFileGo(hash)
  }
  return (
    <section className="stack" aria-label={words.pictures}>
      <label htmlFor={id} className={styles.label}>
        {words.pictures}
      </label>
      <p className="soft">{words.picturesHelp}</p>
      <input
        id={id}
        type="file"
        multiple
        accept={accepted}
        onChange={(event) => {
          void take([...(event.target.files ?? [])])
          event.target.value = ''
        }}
      />
      {error && (
        <Notice tone="warn" live>
          <p>{error}</p>
        </Notice>
      )}
      {refused.map((said) => (
        <Notice key={said} tone="warn" live>
          <p>{said}</p>
        </Notice>
      ))}
      <ul className={styles.files}>
        {files.map((file) => (
          <li key={file.hash}>
            <Attached file={file} />
            <button type="button" data-weight="quiet" onClick={() => void remove(file)}>
              {fill(words.remove, { name: file.name })}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
