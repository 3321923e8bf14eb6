import { referralInEnglish } from '#content/wording/app-referral.ts'
import { type CallFault, type DurationUnit, durationUnits } from '#core/referral/first-call.ts'
import { Choices } from '../../design/choices.tsx'
import { Field } from '../../design/field.tsx'
import { SideWord } from '../../design/side-word.tsx'
import { TextField } from '../../design/text-field.tsx'
import { Part, type PartProps } from './part.tsx'
import styles from './screen.module.css'

const words = referralInEnglish.ear
const reported = ['LEFT', 'RIGHT', 'BOTH', 'unknown'] as const

export function EarPart({ call, put, faults }: PartProps & { readonly faults: readonly CallFault[] }) {
  const fault = faults.includes('signs-for-no-number') ? referralInEnglish.faults['signs-for-no-number'] : null
  return (
    <Part title={words.title}>
      <Choices
        legend={words.side}
        help={words.sideHelp}
        value={call.side}
        options={reported}
        say={(one) => (one === 'unknown' ? words.unknown : <SideWord side={one} />)}
        onChoose={(side) => put({ side })}
      />
      <Field label={words.complaint}>
        {(control) => (
          <textarea
            {...control}
            rows={3}
            maxLength={10_000}
            value={call.complaint}
            onChange={(event) => put({ complaint: event.target.value })}
          />
        )}
      </Field>
      <div className={styles.duration}>
        <TextField
          label={words.signsFor}
          error={fault}
          inputMode="numeric"
          autoComplete="off"
          value={call.signsFor}
          onText={(text) => put({ signsFor: text })}
        />
        <Field label={words.unit}>
          {(control) => (
            <select
              {...control}
              value={call.signsForUnit}
              onChange={(event) => put({ signsForUnit: event.target.value as DurationUnit })}
            >
              {durationUnits.map((unit) => (
                <option key={unit} value={unit}>
                  {words.units[unit]}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
    </Part>
  )
}
