import { type FormEvent, useState } from 'react'
import { homeChecksInEnglish as words } from '#content/wording/app-home-checks.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { isBlock } from '#core/dosing/findings.ts'
import { boundHomeOf, entryOfPage } from '#core/dosing/home-confirmed.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { homeChecksOf } from '#documents/case/home-checks.ts'
import { Notice } from '../../design/notice.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { TextField } from '../../design/text-field.tsx'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { useCaseView } from './case-view.ts'
import { FindingList } from './finding-list.tsx'
import { useFaultFocus } from './use-fault-focus.ts'

/** What a check has against the page for home, and who stands for it; until then nobody hands the page out. */
export function HomeChecks() {
  const { file } = useCaseView()
  const { me } = useWho()
  const checks = homeChecksOf(file)
  if (!checks || checks.findings.length === 0) return null
  const { findings, confirmed } = checks
  const isBlocked = findings.some(isBlock)
  const by = confirmed?.header.author
  const roles = mayWrite['second-check']
  return (
    <Notice tone={confirmed && !isBlocked ? 'plain' : 'warn'} title={words.title}>
      <FindingList findings={findings} />
      {confirmed && by?.kind === 'person' && (
        <p>
          {fill(confirmed.body.verdict === 'agrees' ? words.confirmed : words.confirmedAlone, {
            person: file.people.get(by.person)?.name ?? by.person,
            when: sayWhen(confirmed.at, file.clinic.zone),
            because: confirmed.body.text ?? '–',
          })}
        </p>
      )}
      {isBlocked ? (
        <p>{words.blocked}</p>
      ) : confirmed ? null : roles.some((role) => role === me.role) ? (
        <Confirm key={me.id} />
      ) : (
        <p>{fill(words.mayNot, { roles: roles.map((role) => shell.roles[role]).join(', ') })}</p>
      )}
    </Notice>
  )
}

/** Another person stands for it; whoever wrote the page says that nobody else was there. */
function Confirm() {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const [text, setText] = useState('')
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const checks = homeChecksOf(file)
  if (!checks) return null
  const { header } = entryOfPage(checks.plan)
  const isMine = header.author.kind === 'person' && header.author.person === me.id
  const isMissing = text.trim() === ''
  const sign = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const plan = boundHomeOf(file.theCase, checks.plan, checks.findings)
    if (isMissing || !plan) return
    await writeEntry(pen, {
      kind: 'second-check',
      stream: file.stream,
      subject: header.subject,
      body: { of: [header.id], verdict: isMine ? 'nobody-available' : 'agrees', text: text.trim(), plan },
    })
  }
  return (
    <form ref={form} className="stack" onSubmit={(event) => void sign(event)} noValidate data-screen-only>
      <p>{isMine ? words.own : words.lead}</p>
      <TextField
        label={words.why}
        help={words.whyHelp}
        error={tries > 0 && isMissing ? words.whyMissing : null}
        autoComplete="off"
        value={text}
        onText={setText}
      />
      <p>
        <button type="submit">
          {isMine ? words.verbOwn : words.verb}: {me.name}
        </button>
      </p>
    </form>
  )
}
