import { useState } from 'react'
import { Link } from 'wouter'
import { costInEnglish as words } from '#content/wording/app-cost.ts'
import { type CostLine, costOfYear, type Span } from '#core/choice/cost.ts'
import type { ToldId } from '#core/choice/option.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOfEar } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { sayMoment } from '#core/time/moment.ts'
import { useWho } from '../../../session/use-who.ts'
import { standing } from '../../settings/standing.ts'
import { useCaseView } from '../case-view.ts'
import styles from './choice.module.css'
import { CostEditor } from './cost-editor.tsx'
import { optionName } from './option-name.ts'

/** What a year of an option may cost at our own prices, with every assumption in sight. */
export function CostPart({ option, sheet }: { readonly option: ToldId; readonly sheet: EarSheet }) {
  const { file, registers } = useCaseView()
  const { me } = useWho()
  const [editing, setEditing] = useState(false)
  const kept = file.theCase
    .live('cost-assumption')
    .findLast((line) => isOfEar(line, sheet.side) && line.body.option === option)
  const prices = standing(registers, 'price')
  const usual = words.usualLines[option].join(', ')
  return (
    <section className={styles.cost} aria-label={fill(words.about, { option: optionName(option) })}>
      <h5>{words.title}</h5>
      {kept ? <Kept line={kept} /> : <p className="soft">{words.none}</p>}
      {prices.length === 0 && (
        <p>
          {words.noPrices} <Link href="/settings/prices">{words.toPrices}</Link>
        </p>
      )}
      {writersOf('cost-assumption').includes(me.role) &&
        (editing ? (
          <CostEditor option={option} side={sheet.side} kept={kept ?? null} onClose={() => setEditing(false)} />
        ) : (
          <div data-screen-only>
            {!kept && <p className="soft">{fill(words.usual, { what: usual })}</p>}
            <button type="button" onClick={() => setEditing(true)}>
              {kept ? words.change : words.begin}
            </button>
          </div>
        ))}
    </section>
  )
}

function Kept({ line: { header, body } }: { readonly line: Line<BodyOf<'cost-assumption'>> }) {
  const { file, registers } = useCaseView()
  const cost = costOfYear(body.lines)
  const now = new Map(standing(registers, 'price').map(({ id, body: price }) => [id, price]))
  const other = body.lines.filter(({ price }) => {
    const today = price && now.get(price.row)
    return price && (!today || today.low !== price.low.amount || today.high !== price.high.amount)
  })
  return (
    <>
      {cost.kind === 'refusal' ? (
        <p>
          <strong>{sayRefused(cost.refusal)}</strong>
        </p>
      ) : (
        <ul className={styles.sums}>
          <li>
            <strong>{fill(words.year, { range: sayRange(cost.answer.year) })}</strong>
          </li>
          {cost.answer.month && <li>{fill(words.month, { range: sayRange(cost.answer.month) })}</li>}
          {cost.answer.month && cost.answer.once && <li>{fill(words.once, { range: sayRange(cost.answer.once) })}</li>}
        </ul>
      )}
      <ul className={styles.assumed}>
        {body.lines.map((one) => (
          <li key={`${one.what} ${one.every}`}>{sayLine(one)}</li>
        ))}
      </ul>
      {other.map(({ what }) => (
        <p key={what}>{fill(words.changed, { what })}</p>
      ))}
      <p className="soft">
        {fill(words.kept, { when: sayMoment(header.happenedAt), who: authorNamed(file, header.author) })} {words.lead}
      </p>
    </>
  )
}

type Refused = Extract<ReturnType<typeof costOfYear>, { kind: 'refusal' }>['refusal']

function sayRefused(refusal: Refused): string {
  const what = 'what' in refusal ? [refusal.what].flat().join(', ') : ''
  return fill(words.refused[refusal.because], { what })
}

function sayLine({ what, atLeast, atMost, every, price }: CostLine): string {
  const about = { low: String(atLeast), high: String(atMost) }
  return fill(words.line, {
    what,
    times: fill(words.times[atLeast !== atMost ? 'range' : atMost === 1 ? 'once' : 'same'], about),
    every: words.every[every],
    price: price ? sayRange(price) : words.editor.noPrice,
  })
}

function sayRange({ low, high }: Span): string {
  const about = { low: low.amount, high: high.amount, currency: low.currency }
  return fill(low.amount === high.amount ? words.same : words.range, about)
}
