import { registerLine } from '#content/wording/app-forms/register-line.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { authorNamed, type CaseFile, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { RegisterLine } from '#core/register/balance.ts'
import type { Register } from '#core/register/register.ts'
import { sayMoment } from '#core/time/moment.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { sayIn } from '#documents/case/say-register.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import type { Amending } from './line-form.tsx'
import styles from './lines.module.css'

const { head } = words
const acts = registerLine.fields.what.options

type Props = {
  readonly register: Register
  readonly file: CaseFile
  readonly theFold: Case
  readonly unsent: ReadonlySet<string>
  readonly mayAmend: boolean
  /** Stands above the lines on every sheet of paper: whose page this is, and of when. */
  readonly onEverySheet: string
  readonly nameOf: (stream: string) => string
  readonly onAmend: (amending: Amending) => void
}

/** Every line in its order; what was amended or taken back stays, struck through, with who, when and why. */
export function Lines(props: Props) {
  return (
    <table className={styles.lines}>
      <caption className="said">{words.lines}</caption>
      <thead>
        <tr className={styles.sheet}>
          <td colSpan={3}>{props.onEverySheet}</td>
        </tr>
        <tr>
          <th scope="col">
            <div className={styles.heads}>
              <span>{head.when}</span>
              <span>{head.what}</span>
              <span>{head.who}</span>
            </div>
          </th>
          <th scope="col" className={styles.amount}>
            {head.amount}
          </th>
          <th scope="col" className={styles.amount}>
            {head.balance}
          </th>
        </tr>
      </thead>
      <tbody>
        {props.register.lines.map((line, index) => (
          <Row key={line.entry.header.id} line={line} number={index + 1} {...props} />
        ))}
      </tbody>
    </table>
  )
}

function Row(props: Props & { readonly line: RegisterLine; readonly number: number }) {
  const { line, number, register, file } = props
  const { entry, balance } = line
  const { header } = entry
  const amount = sayUnit(entry.body.amount)
  return (
    <tr id={`line-${number}`} data-state={entry.state}>
      <td>
        <div className={styles.said}>
          <div>
            <span className={styles.number}>{number}.</span> {sayMoment(header.happenedAt)}
            {props.unsent.has(header.id) && ` (${words.unsent})`}
            {!entry.orderCertain && ` (${words.unsure})`}
          </div>
          <div>
            <What {...props} />
          </div>
          <div className="soft">
            <p>{authorNamed(file, header.author)}</p>
            <p>{fill(words.witness, { witness: sayWitness(file, entry.body.witness) })}</p>
            <Amend {...props} />
          </div>
        </div>
      </td>
      <td className={styles.amount}>{entry.state === 'live' ? amount : <s>{amount}</s>}</td>
      <td className={styles.amount}>{balance ? sayIn(balance, register) : words.unsaid}</td>
    </tr>
  )
}

/** What happened, for whom and from which ampoule, what became of it, and what was amended. */
function What(props: Props & { readonly line: RegisterLine }) {
  const { line, nameOf, file, theFold } = props
  const { entry, draw } = line
  const { body, header } = entry
  const isLive = entry.state === 'live'
  const said = [
    acts[body.what],
    body.case === null ? null : nameOf(body.case),
    body.ampoule === null ? null : fill(words.ampoule, { ampoule: body.ampoule }),
  ]
  const what = said.filter((one) => one !== null).join(', ')
  return (
    <>
      <p className={styles.what}>{isLive ? what : <s>{what}</s>}</p>
      {[body.paper, body.text].filter(Boolean).map((one) => (
        <p key={one} className="soft">
          {one}
        </p>
      ))}
      {draw?.given.map((one) => (
        <p key={one.header.id} className="soft">
          {fill(words.given, { amount: sayUnit(one.body.amount), who: authorNamed(file, one.header.author) })}
        </p>
      ))}
      {draw?.wasted.map((one) => (
        <p key={one.header.id} className="soft">
          {fill(words.wasted, {
            amount: sayUnit(one.body.amount),
            who: authorNamed(file, one.header.author),
            witness: sayWitness(file, one.body.witness),
          })}
        </p>
      ))}
      {isLive && header.supersedes.length > 0 && (
        <p className="soft">{fill(words.replacing, { reason: header.reason ?? words.unsaid })}</p>
      )}
      {!isLive && <p>{sayEnd(entry, theFold, file)}</p>}
    </>
  )
}

function Amend({ line, theFold, mayAmend, onAmend }: Props & { readonly line: RegisterLine }) {
  const { entry } = line
  const { body, header } = entry
  if (entry.state !== 'live' || !mayAmend) return null
  const others = theFold.conflicts.find(({ between }) => between.includes(header.id))?.between ?? []
  return (
    <button
      type="button"
      data-weight="quiet"
      data-screen-only
      className={styles.amend}
      onClick={() => onAmend({ entry, others })}
    >
      {words.amend}
      <span className="said">{` ${acts[body.what]}, ${sayUnit(body.amount)}, ${sayMoment(header.happenedAt)}`}</span>
    </button>
  )
}

function sayWitness(file: CaseFile, id: BodyOf<'register-line'>['witness']): string {
  return id === null ? words.nobody : personNamed(file, id)
}

/** Who replaced a line or took it back, when and why. */
function sayEnd(entry: Line, theFold: Case, file: CaseFile): string {
  const [by] = entry.state === 'withdrawn' ? entry.withdrawnBy : entry.supersededBy
  const line = by === undefined ? undefined : theFold.line(by)
  if (!line) return words.unsaid
  const about = { ...whoWrote(file, line), reason: line.header.reason ?? words.unsaid }
  return fill(entry.state === 'withdrawn' ? words.takenBack : words.replaced, about)
}
