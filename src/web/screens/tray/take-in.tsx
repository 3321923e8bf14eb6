import { type DragEvent, useId, useRef, useState } from 'react'
import { trayInEnglish } from '#content/wording/app-tray.ts'
import { waysOfArrival } from '#core/journal/kinds/arrived-paper.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { trayStream } from '#core/tray/tray.ts'
import { Attached } from '../../design/attached.tsx'
import { Choices } from '../../design/choices.tsx'
import { Field } from '../../design/field.tsx'
import { Notice } from '../../design/notice.tsx'
import { sayFileRefusal } from '../../design/say-file-refusal.ts'
import { TextField } from '../../design/text-field.tsx'
import { useDraft } from '../../journal/drafts.ts'
import { keepEntries } from '../../journal/outbox.ts'
import { type Attachment, letFileGo, takeInFile } from '../../journal/take-in.ts'
import { makeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './take-in.module.css'

const words = trayInEnglish.takeIn

type Came = (typeof waysOfArrival)[number]
type Seems = keyof typeof trayInEnglish.seems
type Draft = {
  readonly files: readonly Attachment[]
  readonly came: Came | null
  readonly from: string
  readonly seems: Seems
  readonly says: string
  readonly asOne: boolean
}
const empty = (): Draft => ({ files: [], came: null, from: '', seems: 'not-said', says: '', asOne: false })

const accepted = 'image/jpeg,image/png,image/webp,application/pdf,text/plain,text/csv'

/** Takes papers and pictures in: chosen, dropped or photographed. They stay in the draft whatever happens to the page. */
export function TakeIn() {
  const { me, pen } = useWho()
  const { draft, change, clear, ready } = useDraft('tray take-in', me.id, empty)
  const latest = useRef(draft)
  latest.current = draft
  const [reading, setReading] = useState<string | null>(null)
  const [refused, setRefused] = useState<readonly { readonly name: string; readonly because: string }[]>([])
  const [kept, setKept] = useState(0)

  const put = (part: Partial<Draft>) => {
    latest.current = { ...latest.current, ...part }
    change(latest.current)
  }
  const take = async (files: readonly File[]) => {
    setRefused([])
    setKept(0)
    for (const file of files) {
      setReading(file.name)
      const taken = await takeInFile(file)
      if (taken.kind === 'refusal') {
        setRefused((before) => [...before, { name: file.name, because: sayFileRefusal(taken.refusal) }])
      } else if (!latest.current.files.some(({ hash }) => hash === taken.answer.hash)) {
        put({ files: [...latest.current.files, taken.answer] })
      }
    }
    setReading(null)
  }
  const keep = async () => {
    const { files, came, from, seems, says, asOne } = draft
    if (came === null || files.length === 0) return
    const papers = asOne ? [files] : files.map((file) => [file])
    const body = { came, from: from.trim() || null, seems, says: says.trim() || null }
    await keepEntries(
      papers.map((attachments) =>
        makeEntry(pen, {
          kind: 'arrived-paper',
          stream: trayStream,
          subject: { kind: 'clinic' },
          body,
          attachments: [...attachments],
        }),
      ),
    )
    put(empty())
    await clear()
    setKept(papers.length)
  }
  return (
    <section aria-labelledby="tray-take-in" className={styles.takeIn}>
      <h2 id="tray-take-in">{words.title}</h2>
      <Picker onFiles={(files) => void take(files)} />
      <p role="status" className={reading ? '' : 'said'}>
        {reading ? fill(words.reading, { name: reading }) : kept > 0 ? sayCount(words.kept, kept) : ''}
      </p>
      {kept > 0 && <Notice>{sayCount(words.kept, kept)}</Notice>}
      {refused.map(({ name, because }) => (
        <Notice key={name} tone="warn" title={fill(words.refused, { name })} live>
          <p>{because}</p>
        </Notice>
      ))}
      {ready && draft.files.length > 0 && <AboutThem draft={draft} put={put} onKeep={() => void keep()} />}
    </section>
  )
}

function Picker({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) {
  const [over, setOver] = useState(false)
  const id = useId()
  const drop = (event: DragEvent) => {
    event.preventDefault()
    setOver(false)
    onFiles([...event.dataTransfer.files])
  }
  const chosen = (input: HTMLInputElement) => {
    onFiles([...(input.files ?? [])])
    // The same file may be chosen again after it was left out.
    input.value = ''
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is the extra way; the inputs in it are the way for everybody.
    <div
      className={styles.drop}
      data-over={over}
      onDragOver={(event) => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <div className={styles.ways}>
        <label className={styles.way}>
          <span>{words.choose}</span>
          <input
            type="file"
            multiple
            accept={accepted}
            aria-describedby={id}
            onChange={(event) => chosen(event.target)}
          />
        </label>
        <label className={styles.way}>
          <span>{words.camera}</span>
          <input type="file" accept="image/jpeg" capture="environment" onChange={(event) => chosen(event.target)} />
        </label>
        <span className={styles.hint}>{words.drop}</span>
      </div>
      <p id={id} className="soft">
        {words.kinds}
      </p>
    </div>
  )
}

function AboutThem(props: {
  readonly draft: Draft
  readonly put: (part: Partial<Draft>) => void
  readonly onKeep: () => void
}) {
  const { draft, put, onKeep } = props
  const { files, came, from, seems, says, asOne } = draft
  const leaveOut = async (file: Attachment) => {
    put({ files: files.filter(({ hash }) => hash !== file.hash) })
    await letFileGo(file.hash)
  }
  const papers = asOne ? 1 : files.length
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault()
        onKeep()
      }}
    >
      <ul className={`bare ${styles.files}`}>
        {files.map((file) => (
          <li key={file.hash} className={styles.file}>
            <Attached file={file} />
            <span className={styles.name}>{file.name}</span>
            <button type="button" data-weight="quiet" onClick={() => void leaveOut(file)}>
              {fill(words.remove, { name: file.name })}
            </button>
          </li>
        ))}
      </ul>
      {files.length > 1 && (
        <label className={styles.tick}>
          <input type="checkbox" checked={asOne} onChange={(event) => put({ asOne: event.target.checked })} />
          <span>{words.asOne}</span>
        </label>
      )}
      <Choices
        legend={words.came}
        value={came}
        options={waysOfArrival}
        say={(one) => trayInEnglish.came[one]}
        onChoose={(one) => put({ came: one })}
      />
      <div className={styles.pair}>
        <TextField
          label={words.from}
          help={words.fromHelp}
          maxLength={300}
          autoComplete="off"
          value={from}
          onText={(text) => put({ from: text })}
        />
        <Field label={words.seems}>
          {(control) => (
            <select {...control} value={seems} onChange={(event) => put({ seems: event.target.value as Seems })}>
              {(Object.keys(trayInEnglish.seems) as Seems[]).map((one) => (
                <option key={one} value={one}>
                  {trayInEnglish.seems[one]}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <TextField
        label={words.says}
        maxLength={300}
        autoComplete="off"
        value={says}
        onText={(text) => put({ says: text })}
      />
      <p>
        <button type="submit" data-weight="main" disabled={came === null}>
          {sayCount(words.put, papers)}
        </button>
      </p>
    </form>
  )
}
