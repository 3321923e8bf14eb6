import { referralInEnglish } from '#content/wording/app-referral.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../../design/field.tsx'
import { TextField } from '../../design/text-field.tsx'
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
          <TextField
            label={words.name}
            autoComplete="off"
            maxLength={300}
            value={call.vetName}
            onText={(text) => put({ vetName: text })}
          />
          <TextField
            label={words.practice}
            autoComplete="off"
            maxLength={300}
            value={call.vetPractice}
            onText={(text) => put({ vetPractice: text })}
          />
          <TextField
            label={words.phone}
            type="tel"
            autoComplete="off"
            maxLength={300}
            value={call.vetPhone}
            onText={(text) => put({ vetPhone: text })}
          />
        </div>
      )}
    </Part>
  )
}
