import { useState } from 'react'
import { Link } from 'wouter'
import { estimatePricesInEnglish as words } from '#content/wording/app-estimate-prices.ts'
import type { Draft } from '#core/forms/draft.ts'
import { withPricedLine } from '#core/forms/priced-line.ts'
import type { Place } from '#core/forms/refusal.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../../../design/field.tsx'
import { standing } from '../../settings/standing.ts'
import { useCaseView } from '../case-view.ts'

/** Under the lines of an estimate: one more at a price of the clinic's own list. Without a list nothing is proposed. */
export function PriceLines(props: {
  readonly draft: Draft
  readonly place: Place
  readonly onDraft: (draft: Draft) => void
}) {
  const { draft, place, onDraft } = props
  const { registers } = useCaseView()
  const [row, setRow] = useState('')
  const [added, setAdded] = useState<string | null>(null)
  const prices = standing(registers, 'price')
  if (prices.length === 0) {
    return (
      <p>
        {words.none} <Link href="/settings/prices">{words.toPrices}</Link>
      </p>
    )
  }
  const chosen = prices.find(({ id }) => id === row)
  const add = () => {
    if (!chosen) return
    onDraft(withPricedLine(draft, chosen.body, place))
    setAdded(chosen.body.label)
    setRow('')
  }
  return (
    <section className="stack" aria-label={words.title}>
      <Field label={words.price} help={words.help}>
        {(control) => (
          <select {...control} value={row} onChange={(event) => setRow(event.target.value)}>
            <option value="">{words.choose}</option>
            {prices.map(({ id, body }) => (
              <option key={id} value={id}>
                {fill(words.row, body)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <p>
        <button type="button" disabled={!chosen} onClick={add}>
          {words.add}
        </button>
      </p>
      <output aria-live="polite">{added !== null && fill(words.added, { label: added })}</output>
    </section>
  )
}
