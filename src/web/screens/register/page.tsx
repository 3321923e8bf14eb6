import { useState } from 'react'
import { useParams } from 'wouter'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import type { Register } from '#core/register/register.ts'
import { sayIn, sayRegister } from '#documents/case/say-register.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { registers, useLists } from '../../journal/cases.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import { SettingsPage } from '../settings/frame.tsx'
import { decoded } from '../settings/house-lines.ts'
import { useRefusal } from '../settings/may.ts'
import { Findings } from './findings.tsx'
import { type Amending, LineForm } from './line-form.tsx'
import { Lines } from './lines.tsx'
import { LocalLaw } from './local-law.tsx'
import styles from './page.module.css'
import { useHouseRegisters } from './use-house-registers.ts'

/** One register: its sum, what is to be settled, and every line with the balance behind it. */
export function RegisterScreen() {
  const { stream = '' } = useParams<{ stream: string }>()
  const wanted = decoded(stream)
  const { reading, file, theFold, unsent } = useHouseRegisters()
  const refusal = useRefusal(mayWrite['register-line'])
  const [open, setOpen] = useState<Amending | null>(null)
  const { pen, clinic } = useWho()
  const now = useMinute()
  const lists = useLists()
  const cases = lists.kind === 'read' ? lists.value.cases : []
  const nameOf = (of: string) => cases.find((one) => one.stream === of)?.name ?? of
  const readAt = reading.kind === 'read' ? sayWhen(reading.asOf, pen.zone) : words.unsaid
  const found = reading.kind === 'read' ? reading.value.find((one) => one.stream === wanted) : undefined
  return (
    <SettingsPage
      part="register"
      title={found ? capital(sayRegister(found)) : wanted.replace('register:', '')}
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
      {found && (
        <p className={styles.printed}>
          {fill(words.printed, { clinic: clinic.row.name, when: sayWhen(now, pen.zone), asOf: readAt })}
        </p>
      )}
      <LocalLaw />
      <ReadingView reading={reading} again={() => void registers.refresh()}>
        {() =>
          found && file && theFold ? (
            <>
              <Sum register={found} />
              <Findings register={found} theFold={theFold} nameOf={nameOf} />
              <h2>{words.lines}</h2>
              {found.lines.length === 0 ? (
                <p>{words.empty}</p>
              ) : (
                <Lines
                  register={found}
                  file={file}
                  theFold={theFold}
                  unsent={unsent}
                  nameOf={nameOf}
                  onEverySheet={fill(words.sheet, {
                    clinic: clinic.row.name,
                    register: sayRegister(found),
                    when: sayWhen(now, pen.zone),
                  })}
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
    <>
      <p className={styles.balance}>{fill(words.balance, { balance: say(balance) })}</p>
      <p className="soft">
        {fill(words.sum, {
          opening: say(opening),
          received: say(received),
          found: say(found),
          drawn: say(drawn),
          gone: say(gone),
          balance: say(balance),
        })}
      </p>
    </>
  )
}
