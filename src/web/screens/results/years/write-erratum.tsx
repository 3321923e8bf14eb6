import { useState } from 'react'
import { yearsInEnglish as words } from '#content/wording/app-years.ts'
import { fill } from '#core/outcome/finding.ts'
import { Modal } from '../../../design/modal.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import type { Frozen, OwingOf } from './year-answer.ts'

type About = { readonly owing: OwingOf; readonly frozen: Frozen; readonly readUntil: number }

/** The erratum in a person's words; the numbers and the entries behind it come from the record. */
export function WriteErratum(props: About) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <p data-screen-only>
        <button type="button" data-weight="main" onClick={() => setOpen(true)}>
          {fill(words.write, { year: String(props.frozen.body.year) })}
        </button>
      </p>
      {open && <Write {...props} onClose={() => setOpen(false)} />}
    </>
  )
}

function Write({ owing, frozen, readUntil, onClose }: About & { readonly onClose: () => void }) {
  const { pen, me } = useWho()
  const [text, setText] = useState('')
  const [because, setBecause] = useState('')
  const [asked, setAsked] = useState(false)
  const missing = (said: string) => (asked && said.trim() === '' ? words.missing : null)
  const keep = async () => {
    setAsked(true)
    if (text.trim() === '' || because.trim() === '') return
    await writeEntry(pen, {
      kind: 'report-erratum',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: {
        report: frozen.entry,
        year: frozen.body.year,
        readUntil,
        numbers: [...owing.numbers],
        text: text.trim(),
        because: because.trim(),
        entries: [...new Set(owing.cases.flatMap(({ entries }) => entries))],
        by: me.name,
      },
    })
    onClose()
  }
  return (
    <Modal title={fill(words.writeTitle, { year: String(frozen.body.year) })} close={words.cancel} onClose={onClose}>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void keep()
        }}
      >
        <TextField label={words.text} value={text} autoComplete="off" error={missing(text)} onText={setText} />
        <TextField
          label={words.because}
          value={because}
          autoComplete="off"
          error={missing(because)}
          onText={setBecause}
        />
        <p className="row">
          <button type="submit" data-weight="main">
            {words.writeDo}
          </button>
        </p>
      </form>
    </Modal>
  )
}
