import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import type { ContactRow } from '#core/journal/registers.ts'
import { type ContactFault, contactFaults, type TypedContact } from '#core/people/contact-typed.ts'
import { Field } from '../../../design/field.tsx'
import { TextField } from '../../../design/text-field.tsx'

/** Name, phone, e-mail and address of somebody, with what is wrong said at its field once it was tried. */
export function ContactFields(props: {
  readonly kind: ContactRow['kind']
  readonly typed: TypedContact
  readonly tried: boolean
  readonly put: (part: Partial<TypedContact>) => void
}) {
  const { kind, typed, tried, put } = props
  const faults = tried ? contactFaults(typed) : []
  const said = (fault: ContactFault) => (faults.includes(fault) ? words.faults[fault] : null)
  const line = { maxLength: 300, autoComplete: 'off' } as const
  return (
    <>
      <TextField
        {...line}
        label={words.name}
        error={said('name-missing')}
        value={typed.name}
        onText={(name) => put({ name })}
      />
      {kind === 'vet' && (
        <TextField
          {...line}
          label={words.fields.practice}
          value={typed.practice}
          onText={(practice) => put({ practice })}
        />
      )}
      <TextField
        {...line}
        type="tel"
        label={words.fields.phone}
        help={words.phoneHelp}
        error={said('phone-without-digits')}
        value={typed.phone}
        onText={(phone) => put({ phone })}
      />
      <TextField
        {...line}
        type="email"
        label={words.fields.email}
        error={said('email-unreadable')}
        value={typed.email}
        onText={(email) => put({ email })}
      />
      <Field label={words.fields.address} help={words.addressHelp} error={said('address-line-too-long')}>
        {(control) => (
          <textarea {...control} value={typed.address} onChange={(event) => put({ address: event.target.value })} />
        )}
      </Field>
    </>
  )
}
