import { useEffect, useRef, useState } from 'react'
import { useLocation, useSearchParams } from 'wouter'
import { takeInResultInEnglish as words } from '#content/wording/app-take-in-result.ts'
import type { Fault } from '#core/laboratory/fault.ts'
import type { TableMapping } from '#core/laboratory/mapping.ts'
import type { Answers } from '#core/laboratory/to-result.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Field } from '../../../design/field.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { sayFileRefusal } from '../../../design/say-file-refusal.ts'
import { useHouse, useTray } from '../../../journal/cases.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { fileBytes } from '../../../journal/file-bytes.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { type Attachment, takeInFile } from '../../../journal/take-in.ts'
import { useWho } from '../../../session/use-who.ts'
import takeInStyles from '../take-in.module.css'
import { FaultPart } from './fault-part.tsx'
import { held } from './keep-result.ts'
import { MappingPart } from './mapping-part.tsx'
import { ReportPart } from './report-part.tsx'
import styles from './result.module.css'
import { isMessage, mappingFor, type Read, readByMapping, readMessages, textOfBytes } from './source.ts'
import type { Came, Ended } from './steps.ts'

type Source = {
  readonly text: string
  readonly western: boolean
  readonly pasted: boolean
  readonly file: Attachment
  /** What waits in the tray and is read here. */
  readonly arrived: string | null
}
type Draft = {
  readonly pasting: string
  readonly source: Source | null
  /** As a person changed it; null: as remembered, or as the headings seem to say. */
  readonly mapping: TableMapping | null
  readonly answers: Readonly<Record<string, Answers>>
  readonly ended: Readonly<Record<string, Ended>>
}
const empty = (): Draft => ({ pasting: '', source: null, mapping: null, answers: {}, ended: {} })

/** Takes in a table or a message of a laboratory: read whole, looked at by a person, filed by two identifiers or held. */
export function TakeInResultScreen() {
  const { me } = useWho()
  const { draft, change, clear, ready } = useDraft<Draft>('tray result', me.id, empty)
  const [, navigate] = useLocation()
  const latest = useRef(draft)
  latest.current = draft
  const [refused, setRefused] = useState<string | null>(null)
  const put = (part: Partial<Draft>) => {
    latest.current = { ...latest.current, ...part }
    change(latest.current)
  }
  const take = async (file: File, pasted: boolean) => {
    setRefused(null)
    const bytes = new Uint8Array(await file.arrayBuffer())
    const read = textOfBytes(bytes)
    if (!read) return setRefused(words.faults['not-readable-text'])
    const type = file.name.toLowerCase().endsWith('.csv') ? 'text/csv' : 'text/plain'
    const taken = await takeInFile(new File([bytes], file.name, { type }))
    if (taken.kind === 'refusal') return setRefused(sayFileRefusal(taken.refusal))
    put({ ...empty(), source: { ...read, pasted, file: taken.answer, arrived: null } })
  }
  const waits = useFromTray(draft, ready, put, setRefused)
  const again = async () => {
    navigate('/tray/result', { replace: true })
    put(empty())
    await clear()
  }
  if (!ready || waits) return <DraftAwaited />
  return (
    <Page title={words.title} lead={words.lead}>
      {refused !== null && <Notice tone="warn" title={refused} live />}
      {draft.source === null ? (
        <Begin draft={draft} put={put} take={(file, pasted) => void take(file, pasted)} />
      ) : (
        <div className={styles.source}>
          <p>
            <button type="button" data-weight="quiet" onClick={() => void again()}>
              {words.anew}
            </button>
          </p>
          {draft.source.western && <Notice tone="warn" title={words.encoding} />}
          <SourcePart key={draft.source.file.hash} source={draft.source} draft={draft} put={put} />
        </div>
      )}
    </Page>
  )
}

/** What waits in the tray is read here as if its file were chosen; true while it is being fetched. */
function useFromTray(
  draft: Draft,
  ready: boolean,
  put: (part: Partial<Draft>) => void,
  refuse: (because: string) => void,
): boolean {
  const [query] = useSearchParams()
  const from = query.get('from')
  const tray = useTray()
  const waiting = tray.kind === 'read' ? tray.value.waiting.find(({ header }) => header.id === from) : undefined
  const file = waiting?.header.attachments.find(({ mediaType }) => mediaType.startsWith('text/'))
  const begun = draft.source?.arrived === from
  const wanted = ready && from !== null && !begun && file !== undefined
  const latest = useRef({ put, refuse })
  latest.current = { put, refuse }
  useEffect(() => {
    if (!wanted || !file || from === null) return
    let gone = false
    void fileBytes(file.hash).then((bytes) => {
      if (gone) return
      const read = bytes ? textOfBytes(bytes) : null
      if (read) latest.current.put({ ...empty(), source: { ...read, pasted: false, file, arrived: from } })
      else latest.current.refuse(bytes ? words.faults['not-readable-text'] : words.fileGone)
    })
    return () => {
      gone = true
    }
  }, [wanted, file, from])
  return from !== null && !begun && tray.kind === 'loading'
}

function Begin(props: {
  readonly draft: Draft
  readonly put: (part: Partial<Draft>) => void
  readonly take: (file: File, pasted: boolean) => void
}) {
  const { draft, put, take } = props
  return (
    <div className={styles.source}>
      <p>
        <label className={takeInStyles.way}>
          <span>{words.choose}</span>
          <input
            type="file"
            accept=".csv,.txt,.hl7,.tsv,.json,text/plain,text/csv"
            onChange={(event) => {
              const [file] = event.target.files ?? []
              if (file) take(file, false)
              event.target.value = ''
            }}
          />
        </label>
      </p>
      <Field label={words.paste} help={words.pasteHelp}>
        {(control) => (
          <textarea
            {...control}
            className={styles.paste}
            spellCheck={false}
            value={draft.pasting}
            onChange={(event) => put({ pasting: event.target.value })}
          />
        )}
      </Field>
      <p>
        <button
          type="button"
          data-weight="main"
          disabled={draft.pasting.trim() === ''}
          onClick={() => take(new File([draft.pasting], 'pasted.txt', { type: 'text/plain' }), true)}
        >
          {words.read}
        </button>
      </p>
    </div>
  )
}

function SourcePart(props: {
  readonly source: Source
  readonly draft: Draft
  readonly put: (part: Partial<Draft>) => void
}) {
  const { source, draft, put } = props
  const house = useHouse()
  const { text, file, pasted, arrived } = source
  const table = { file, came: pasted ? 'pasted' : 'table', arrived } as const
  if (isMessage(text)) {
    const came = { file, came: pasted ? 'pasted' : 'hl7', arrived } as const
    return <ReadPart read={readMessages(text)} came={came} draft={draft} put={put} />
  }
  if (house.kind === 'loading') return null
  const theHouse = house.kind === 'read' ? house.value.file.house : null
  const found = mappingFor(text, theHouse)
  if ('code' in found) {
    const read = { fault: found, faults: [], reports: [] }
    return <ReadPart read={read} came={table} draft={draft} put={put} />
  }
  const mapping = draft.mapping ?? found.mapping
  const read = readByMapping(text, mapping)
  return (
    <>
      <MappingPart
        text={text}
        mapping={mapping}
        laboratory={found.laboratory}
        fault={read.fault}
        house={theHouse}
        put={(changed) => put({ mapping: changed })}
      />
      <ReadPart read={read} came={table} draft={draft} put={put} />
    </>
  )
}

function ReadPart(props: {
  readonly read: Read
  readonly came: Came
  readonly draft: Draft
  readonly put: (part: Partial<Draft>) => void
}) {
  const { read, came, draft, put } = props
  const faults: { readonly line: number | null; readonly fault: Fault }[] = [
    ...(read.fault ? [{ line: null, fault: read.fault }] : []),
    ...read.faults,
  ]
  return (
    <>
      {faults.map(({ line, fault }) => (
        <FaultPart key={`${line} ${fault.code}`} line={line} fault={fault} />
      ))}
      {faults.length > 0 && <HoldWhole came={came} />}
      {read.reports.length > 1 && <p className="soft">{sayCount(words.reports, read.reports.length)}</p>}
      {read.reports.map((report, place) => {
        const key = `${place} ${report.accession ?? ''}`
        return (
          <ReportPart
            key={key}
            report={report}
            from={read.reports.length > 1 ? { ...came, arrived: null } : came}
            answers={draft.answers[key]}
            ended={draft.ended[key]}
            put={(answers) => put({ answers: { ...draft.answers, [key]: answers } })}
            end={(ended) => put({ ended: { ...draft.ended, [key]: ended } })}
          />
        )
      })}
    </>
  )
}

/** What cannot be read is not lost: it waits in the tray like any paper. */
function HoldWhole({ came }: { readonly came: Came }) {
  const { pen } = useWho()
  const [kept, setKept] = useState(came.arrived !== null)
  const hold = async () => {
    setKept(true)
    await keepEntries([held(pen, came.file, fill(words.table.file, { name: came.file.name }), null)])
  }
  if (kept) return <p role="status">{words.filing.held}</p>
  return (
    <p>
      <button type="button" onClick={() => void hold()}>
        {words.holdWhole}
      </button>
    </p>
  )
}
