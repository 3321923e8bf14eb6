import { useState } from 'react'
import { useParams } from 'wouter'
import { registerLine } from '#content/wording/app-forms/register-line.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { mayWrite } from '#core/people/may-write.ts'
import type { Register } from '#core/register/register.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { registers } from '../../journal/cases.ts'
import { SettingsPage } from '../settings/frame.tsx'
import { decoded } from '../settings/house-lines.ts'
import { useRefusal } from '../settings/may.ts'
import { type Amending, LineForm } from './line-form.tsx'
import { Lines } from './lines.tsx'
import { LocalLaw } from './local-law.tsx'
import { sayIn, sayRegister } from './say-register.ts'
import { useHouseRegisters } from './use-house-registers.ts'

/** One register: its sum, what is to be settled, and every line with the balance behind it. */
export function RegisterScreen() {
  const { stream = '' } = useParams<{ stream: string }>()
  const wanted = decoded(stream)
  const { reading, file, theFold, unsent } = useHouseRegisters()
  const refusal = useRefusal(mayWrite['register-line'])
  const [open, setOpen] = useState<Amending | null>(null)
  const found = reading.kind === 'read' ? reading.value.find((one) => one.stream === wanted) : undefined
  return (
    <SettingsPage
      part="register"
      title={found ? sayRegister(found) : wanted.replace('register:', '')}
      lead={null}
      actions={
        found && (
          <>
            <button
              type="button"
              data-weight="main"
              disabled={refusal !== null}
              onClick={() => setOpen({ entry: null, others: [] })}
            >
              {words.add}
            </button>
            <button type="button" onClick={() => window.print()}>
              {words.print}
            </button>
          </>
        )
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      <LocalLaw />
      <ReadingView reading={reading} again={() => void registers.refresh()}>
        {() =>
          found && file && theFold ? (
            <>
              <Sum register={found} />
              <Findings register={found} />
              <h2>{words.lines}</h2>
              {found.lines.length === 0 ? (
                <p>{words.empty}</p>
              ) : (
                <Lines
                  register={found}
                  file={file}
                  theFold={theFold}
                  unsent={unsent}
                  mayAmend={refusal === null}
                  onAmend={setOpen}
                />
              )}
              {open && <LineForm register={found} file={file} amending={open} onClose={() => setOpen(null)} />}
            </>
          ) : (
            <p>{words.noSuch}</p>
          )
        }
      </ReadingView>
    </SettingsPage>
  )
}

function Sum({ register }: { readonly register: Register }) {
  const { opening, received, found, drawn, gone, balance } = register
  const say = (value: typeof opening) => sayIn(value, register)
  return (
    <p>
      {fill(words.sum, {
        opening: say(opening),
        received: say(received),
        found: say(found),
        drawn: say(drawn),
        gone: say(gone),
        balance: say(balance),
      })}
    </p>
  )
}

function Findings({ register }: { readonly register: Register }) {
  const { findings, lines } = register
  const open = findings.filter(({ level }) => level !== 'note').length
  const { options } = registerLine.fields.what
  const about = (id: string | null) => {
    const at = lines.findIndex(({ entry }) => entry.header.id === id)
    const line = lines[at]
    return line ? `${at + 1}. ${options[line.entry.body.what]}: ` : ''
  }
  return (
    <section aria-labelledby="register-findings">
      <h2 id="register-findings">{words.findings}</h2>
      <p>{open > 0 ? <strong>{sayCount(words.open, open)}</strong> : words.nothingOpen}</p>
      <ul>
        {findings.map((finding) => (
          <li key={`${finding.code} ${finding.entry}`} data-level={finding.level}>
            {about(finding.entry)}
            {fill(words.said[finding.code], finding.about)}
          </li>
        ))}
      </ul>
    </section>
  )
}
