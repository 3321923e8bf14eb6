import { referralInEnglish } from '#content/wording/app-referral.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../../design/field.tsx'
import { Part, type PartProps } from './part.tsx'
import styles from './screen.module.css'
import { useVets } from './use-vets.ts'

const words = referralInEnglish.vet

export function VetPart({ call, put }: PartProps) {
  const vets = useVets()
  return (
    <Part title={words.title}>
      <Field label={words.which}>
        {(control) => (
          <select {...control} value={call.vet} onChange={(event) => put({ vet: event.target.value })}>
            <option value="">{words.none}</option>
            {vets.map(({ id, name, practice }) => (
              <option key={id} value={id}>
                {practice === null ? name : fill(words.listed, { name, practice })}
              </option>
            ))}
            <option value="new">{words.isNew}</option>
          </select>
        )}
      </Field>
      {call.vet === 'new' && (
        <div className={styles.triple}>
          <Field label={words.name}>
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                maxLength={300}
                value={call.vetName}
                onChange={(event) => put({ vetName: event.target.value })}
              />
            )}
          </Field>
          <Field label={words.practice}>
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                maxLength={300}
                value={call.vetPractice}
                onChange={(event) => put({ vetPractice: event.target.value })}
              />
            )}
          </Field>
          <Field label={words.phone}>
            {(control) => (
              <input
                {...control}
                type="tel"
                autoComplete="off"
                maxLength={300}
                value={call.vetPhone}
                onChange={(event) => put({ vetPhone: event.target.value })}
              />
            )}
          </Field>
        </div>
      )}
    </Part>
  )
}
