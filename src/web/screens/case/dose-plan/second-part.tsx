import { type FormEvent, useId, useState } from 'react'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { doseSheetWords } from '#content/wording/papers-dose.ts'
import type { LineNow, PlanNow } from '#core/dosing/plan-now.ts'
import { boundPlanOf } from '#core/dosing/second-check.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './dose-plan.module.css'
import { sayTake } from './say-line.ts'

const words = dosePlanInEnglish.second
const uses: Readonly<Record<string, string>> = doseSheetWords.uses
type Verdict = 'agrees' | 'disagrees' | 'nobody-available'

/** Lines that nobody else stands for yet; a refused or outdated line is planned again before it is checked. */
function isUnchecked({ check, now, isOld, given }: LineNow): boolean {
  return check.kind !== 'agrees' && now !== null && now.verdict !== 'refused' && !isOld && given.length === 0
}

/** Another person works the lines out again and signs; the name is bound to what was signed. */
export function SecondPart({ operation, plan }: { readonly operation: OperationOnFile; readonly plan: PlanNow }) {
  const { me } = useWho()
  const waiting = plan.lines.filter(({ check, given }) => check.kind !== 'agrees' && given.length === 0)
  const open = waiting.filter(isUnchecked)
  const roles = mayWrite['second-check']
  return (
    <section aria-labelledby="second-check" className={styles.second}>
      <h2 id="second-check">{words.title}</h2>
      {open.length === 0 ? (
        <p>{waiting.length > 0 ? words.notYet : plan.lines.length === 0 ? words.nothing : words.done}</p>
      ) : !roles.some((role) => role === me.role) ? (
        <p>{fill(words.mayNot, { roles: roles.map((role) => shell.roles[role]).join(', ') })}</p>
      ) : (
        <Signing key={me.id} operation={operation} open={open} />
      )}
    </section>
  )
}

function Signing({ operation, open }: { readonly operation: OperationOnFile; readonly open: readonly LineNow[] }) {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set())
  const [verdict, setVerdict] = useState<Verdict | null>(null)
  const [text, setText] = useState('')
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const fault = useId()
  const isMine = ({ entry: { header } }: LineNow) => header.author.kind === 'person' && header.author.person === me.id
  const allMine = open.every(isMine)
  const shown = allMine ? open : open.filter((line) => !isMine(line))
  const lines = shown.filter(({ entry }) => ticked.has(entry.header.id))
  const bound = boundPlanOf(
    file.theCase,
    lines.map(({ entry }) => entry),
  )
  // Whoever planned every line can only say that nobody else is there.
  const verdicts: readonly Verdict[] = allMine ? ['nobody-available'] : ['agrees', 'disagrees', 'nobody-available']
  const textMissing = verdict === 'disagrees' && text.trim() === ''
  const sign = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (lines.length === 0 || verdict === null || textMissing || !bound) return
    const [first] = lines
    if (!first) return
    await writeEntry(pen, {
      kind: 'second-check',
      stream: file.stream,
      subject: first.entry.header.subject,
      body: { of: lines.map(({ entry }) => entry.header.id), verdict, text: text.trim() || null, plan: bound },
    })
    setTicked(new Set())
    setVerdict(null)
    setText('')
    setTries(0)
  }
  const tick = (id: string, on: boolean) => {
    const next = new Set(ticked)
    if (on) next.add(id)
    else next.delete(id)
    setTicked(next)
  }
  return (
    <form ref={form} className="stack" onSubmit={(event) => void sign(event)} noValidate data-operation={operation.id}>
      <p>{words.lead}</p>
      {allMine && <p>{words.own}</p>}
      <fieldset
        className={styles.ticks}
        aria-describedby={tries > 0 && lines.length === 0 ? fault : undefined}
        aria-invalid={tries > 0 && lines.length === 0 ? true : undefined}
      >
        <legend>{words.pick}</legend>
        {shown.map(({ entry, now }) => (
          <label key={entry.header.id}>
            <input
              type="checkbox"
              checked={ticked.has(entry.header.id)}
              onChange={(event) => tick(entry.header.id, event.target.checked)}
            />
            <span>
              {fill(words.line, {
                drug: drugName(entry.body.drug),
                use: uses[entry.body.use] ?? entry.body.use,
                draw: now && now.verdict !== 'refused' ? sayTake(now) : '',
              })}
            </span>
          </label>
        ))}
        {tries > 0 && lines.length === 0 && (
          <p id={fault} className={styles.stop}>
            {words.pickNone}
          </p>
        )}
      </fieldset>
      <Choices
        legend={words.verdict}
        value={verdict}
        options={verdicts}
        error={tries > 0 && verdict === null ? words.verdict : null}
        say={(one) => words.verdicts[one]}
        onChoose={setVerdict}
      />
      {verdict !== null && (
        <TextField
          label={words.text}
          help={words.textHelp}
          error={tries > 0 && textMissing ? words.textMissing : null}
          autoComplete="off"
          value={text}
          onText={setText}
        />
      )}
      {bound && lines.length > 0 && (
        <p className="soft">
          {fill(words.bound, {
            species: speciesInEnglish[bound.species],
            weight: bound.weight ? inBothUnits(fromStored(bound.weight)) : '–',
            lines: sayCount(words.lines, lines.length),
            fingerprint: bound.fingerprint.slice(0, 8),
          })}
        </p>
      )}
      <p>
        <button type="submit" data-weight="main">
          {words.verb}: {me.name}
        </button>
      </p>
    </form>
  )
}
