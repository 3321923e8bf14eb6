import { registerLine } from '#content/wording/app-forms/register-line.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { authorNamed, type CaseFile, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { RegisterLine } from '#core/register/balance.ts'
import type { Register } from '#core/register/register.ts'
import { sayMoment } from '#core/time/moment.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { ScrollBox } from '../../design/scroll-box.tsx'
import { useLists } from '../../journal/cases.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import type { Amending } from './line-form.tsx'
import { sayIn } from './say-register.ts'

const { head } = words
const acts = registerLine.fields.what.options
const sayAmount = ({ value, unit }: BodyOf<'drug-given'>['amount']) => `${value} ${unitWord(unit)}`

type Props = {
  readonly register: Register
  readonly file: CaseFile
  readonly theFold: Case
  readonly unsent: ReadonlySet<string>
  readonly mayAmend: boolean
  readonly onAmend: (amending: Amending) => void
}

/** Every line in its order; what was amended or taken back stays, struck through, with who, when and why. */
export function Lines(props: Props) {
  const reading = useLists()
  const cases = reading.kind === 'read' ? reading.value.cases : []
  const nameOf = (stream: string) => cases.find((one) => one.stream === stream)?.name ?? stream
  return (
    <ScrollBox label={words.lines}>
      <table>
        <thead>
          <tr>
            <th scope="col">{head.when}</th>
            <th scope="col">{head.what}</th>
            <th scope="col">{head.amount}</th>
            <th scope="col">{head.balance}</th>
            <th scope="col">{head.ampoule}</th>
            <th scope="col">{head.animal}</th>
            <th scope="col">{head.used}</th>
            <th scope="col">{head.who}</th>
            <th scope="col">{head.witness}</th>
          </tr>
        </thead>
        <tbody>
          {props.register.lines.map((line) => (
            <Row key={line.entry.header.id} line={line} nameOf={nameOf} {...props} />
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function Row(props: Props & { readonly line: RegisterLine; readonly nameOf: (stream: string) => string }) {
  const { line, nameOf, register, file, theFold, unsent, mayAmend, onAmend } = props
  const { entry, balance, draw } = line
  const { body, header } = entry
  const isLive = entry.state === 'live'
  const amount = sayAmount(body.amount)
  const witness = (id: string | null) => (id === null ? words.nobody : personNamed(file, id))
  const others = theFold.conflicts.find(({ between }) => between.includes(header.id))?.between ?? []
  return (
    <tr data-state={entry.state}>
      <td>
        {sayMoment(header.happenedAt)}
        {unsent.has(header.id) && ` (${words.unsent})`}
        {!entry.orderCertain && ` (${words.unsure})`}
      </td>
      <td>
        {isLive ? acts[body.what] : <s>{acts[body.what]}</s>}
        {[body.paper, body.text].filter(Boolean).map((one) => (
          <p key={one} className="soft">
            {one}
          </p>
        ))}
        {isLive && header.supersedes.length > 0 && (
          <p className="soft">{fill(words.replacing, { reason: header.reason ?? words.unsaid })}</p>
        )}
        {!isLive && <p className="soft">{sayEnd(entry, theFold, file)}</p>}
        {isLive && mayAmend && (
          <button type="button" data-weight="quiet" data-screen-only onClick={() => onAmend({ entry, others })}>
            {words.amend}
            <span className="said">{` ${acts[body.what]}, ${amount}, ${sayMoment(header.happenedAt)}`}</span>
          </button>
        )}
      </td>
      <td>{isLive ? amount : <s>{amount}</s>}</td>
      <td>{balance ? sayIn(balance, register) : words.unsaid}</td>
      <td>{body.ampoule ?? words.unsaid}</td>
      <td>{body.case === null ? words.unsaid : nameOf(body.case)}</td>
      <td>
        {draw?.given.map((one) => (
          <p key={one.header.id}>
            {fill(words.given, { amount: sayAmount(one.body.amount), who: authorNamed(file, one.header.author) })}
          </p>
        ))}
        {draw?.wasted.map((one) => (
          <p key={one.header.id}>
            {fill(words.wasted, {
              amount: sayAmount(one.body.amount),
              who: authorNamed(file, one.header.author),
              witness: witness(one.body.witness),
            })}
          </p>
        ))}
      </td>
      <td>{authorNamed(file, header.author)}</td>
      <td>{witness(body.witness)}</td>
    </tr>
  )
}

/** Who replaced a line or took it back, when and why. */
function sayEnd(entry: Line, theFold: Case, file: CaseFile): string {
  const [by] = entry.state === 'withdrawn' ? entry.withdrawnBy : entry.supersededBy
  const line = by === undefined ? undefined : theFold.line(by)
  if (!line) return words.unsaid
  const about = { ...whoWrote(file, line), reason: line.header.reason ?? words.unsaid }
  return fill(entry.state === 'withdrawn' ? words.takenBack : words.replaced, about)
}
