import { type FormEvent, useState } from 'react'
import { susceptibility } from '#content/susceptibility/index.ts'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { breakpointSettings as words } from '#content/wording/app-settings-breakpoints.ts'
import { readEditionFile } from '#core/culture/edition-file.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { readText } from '#core/forms/read-leaf.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { sayEditionFault } from '#documents/sources/say-edition-fault.ts'
import { Field } from '../../design/field.tsx'
import { TextField } from '../../design/text-field.tsx'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { replacedBy } from './house-lines.ts'
import styles from './settings.module.css'

type Chosen = { readonly file: string; readonly read: ReturnType<typeof readEditionFile> | null }
/** More faults than anybody mends at once are counted. */
const shown = 20

/** The clinic's own copy from its file: what is wrong in it first, nothing of it kept before all of it can be read. */
export function LoadEdition({ house }: { readonly house: Case }) {
  const { pen } = useWho()
  const [chosen, setChosen] = useState<Chosen | null>(null)
  const [from, setFrom] = useState('')
  const [tried, setTried] = useState(false)
  const edition = chosen?.read?.kind === 'answer' ? chosen.read.answer : null
  const whose = readText(from, 300)
  const standing =
    edition && (house.live('breakpoint-edition').find(({ body }) => editionName(body) === editionName(edition)) ?? null)
  const choose = async (file: File | undefined) => {
    if (!file) return
    const text = await file.text().catch(() => null)
    setChosen({ file: file.name, read: text === null ? null : readEditionFile(text, susceptibility) })
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (!edition || whose.kind === 'refusal') return
    await writeEntry(pen, {
      kind: 'breakpoint-edition',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { ...edition, from: from.trim() },
      supersedes: replacedBy(house, standing),
      reason: standing ? from.trim() : null,
    })
    setChosen(null)
    setFrom('')
    setTried(false)
  }
  return (
    <section aria-labelledby="load-edition" className={styles.part}>
      <h2 id="load-edition">{words.load}</h2>
      <p>{words.form}</p>
      <form onSubmit={keep} className="stack" noValidate>
        <Field label={words.file} error={tried && !chosen ? formRefusals['not-chosen'] : null}>
          {(control) => (
            <input
              {...control}
              type="file"
              accept=".csv,.txt,.tsv,text/csv,text/plain"
              onChange={(event) => {
                void choose(event.target.files?.[0])
                // The same file may be chosen again after it was mended.
                event.target.value = ''
              }}
            />
          )}
        </Field>
        <div role="status">{chosen && <WhatItHolds chosen={chosen} />}</div>
        {edition && (
          <>
            {standing && <p>{fill(words.replaces, { edition: editionName(edition) })}</p>}
            <TextField
              label={words.from}
              help={words.fromHelp}
              error={
                tried && whose.kind === 'refusal'
                  ? fill(formRefusals[whose.refusal.because], whose.refusal.about)
                  : null
              }
              autoComplete="off"
              value={from}
              onText={setFrom}
            />
            <p>
              <button type="submit">{words.keep}</button>
            </p>
          </>
        )}
      </form>
    </section>
  )
}

function WhatItHolds({ chosen: { file, read } }: { readonly chosen: Chosen }) {
  if (read === null) return <p>{fill(words.unreadable, { file })}</p>
  if (read.kind === 'answer') {
    const { answer } = read
    return <p>{fill(words.whole, { edition: editionName(answer), rows: sayCount(words.rows, answer.rows.length) })}</p>
  }
  const faults = read.refusal
  return (
    <>
      <p>
        <strong>{fill(words.faults, { file })}</strong>
      </p>
      <ul>
        {faults.slice(0, shown).map((fault) => (
          <li key={`${fault.line} ${fault.column} ${fault.code} ${fault.found}`}>{sayEditionFault(fault)}</li>
        ))}
        {faults.length > shown && <li>{fill(words.more, { count: String(faults.length - shown) })}</li>}
      </ul>
    </>
  )
}
