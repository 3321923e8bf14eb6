import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { fill } from '#core/outcome/finding.ts'
import type { LastValue } from '#core/theatre/last-values.ts'
import type { LookFault } from '#core/theatre/read-look.ts'
import { clockOf } from '#core/time/moment.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { TextField } from '../../../../design/text-field.tsx'

/** One number of a look: the last one beside it, and nothing in it until somebody types. */
export function ValueField(props: {
  readonly label: string
  readonly last: LastValue | undefined
  readonly zone: string
  readonly text: string
  readonly fault: LookFault | undefined
  readonly onText: (text: string) => void
}) {
  const { label, last, zone, text, fault, onText } = props
  const before = last
    ? fill(words.last, { value: plain(new Decimal(last.value.value.value)), at: clockOf(last.at, zone) })
    : words.noLast
  return (
    <TextField
      label={label}
      help={before}
      error={fault && 'about' in fault ? fill(formRefusals[fault.because], fault.about) : null}
      inputMode="decimal"
      enterKeyHint="next"
      autoComplete="off"
      value={text}
      onText={onText}
    />
  )
}
