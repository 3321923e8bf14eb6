import { type FormEvent, useState } from 'react'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { doseDefaults, readSurfaceFactor, readSyringes } from '#core/dosing/own-defaults.ts'
import { figurePolicies, readFigurePolicy } from '#core/evidence/own/own-rules.ts'
import { readText } from '#core/forms/read-leaf.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { owedPolicies, readSpan } from '#core/owed/policies.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import { DraftAwaited } from '../../design/draft-awaited.tsx'
import { Field } from '../../design/field.tsx'
import { Modal } from '../../design/modal.tsx'
import { Provenance } from '../../design/provenance.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { replacedBy } from './house-lines.ts'
import { ownValue } from './own-spans.ts'
import { policyName } from './policy-name.ts'

export type Policy = Line<BodyOf<'house-policy'>>
type Draft = { readonly which: string; readonly name: string; readonly value: string; readonly because: string }
/** Defaults by their name, each read by what it sets; a policy of another name is kept as words. */
const owed: readonly string[] = owedPolicies
const doses: readonly string[] = doseDefaults
const figures: readonly string[] = figurePolicies
const known: readonly string[] = [...owedPolicies, ...doseDefaults, ...figurePolicies]

/** Why a value cannot be what this policy sets; null where it can. */
function unfit(policy: string, given: string): string | null {
  if (owed.includes(policy)) return readSpan(given) ? null : fill(words.notASpan, { given })
  if (policy === 'dose.syringes') return readSyringes(given) ? null : fill(words.noSyringes, { given })
  if (figures.includes(policy)) return readFigurePolicy(given) ? null : fill(words.noWholeNumber, { given })
  if (doses.includes(policy)) return readSurfaceFactor(given, dosingRules) ? null : fill(words.noFactor, { given })
  return null
}

function helpFor(policy: string): string | undefined {
  if (owed.includes(policy)) return words.spanHelp
  if (policy === 'dose.syringes') return words.syringesHelp
  if (figures.includes(policy)) return words.wholeNumberHelp
  return doses.includes(policy) ? words.factorHelp : undefined
}

/** A default of this clinic, new or changed, beside what the tool holds itself. */
export function PolicyForm(props: {
  readonly house: Case
  readonly policy: Policy | null
  readonly onClose: () => void
}) {
  const { house, policy, onClose } = props
  const { me, pen } = useWho()
  const { draft, change, clear, ready } = useDraft<Draft>(`house-policy ${policy?.header.id ?? 'new'}`, me.id, () => ({
    which: policy ? (known.includes(policy.body.policy) ? policy.body.policy : 'other') : '',
    name: policy && !known.includes(policy.body.policy) ? policy.body.policy : '',
    value: policy?.body.value ?? '',
    because: '',
  }))
  const [tried, setTried] = useState(false)
  const isKnown = known.includes(draft.which)
  const name = isKnown ? draft.which : draft.name.trim()
  const own = ownValue(draft.which)
  const value = readText(draft.value, 300)
  const because = readText(draft.because, 10_000)
  const errors = {
    which: draft.which === '' ? formRefusals['not-chosen'] : null,
    name: !isKnown && draft.which !== '' && name === '' ? formRefusals['not-written'] : null,
    value:
      value.kind === 'refusal'
        ? fill(formRefusals[value.refusal.because], value.refusal.about)
        : unfit(draft.which, draft.value.trim()),
    because: because.kind === 'refusal' ? fill(formRefusals[because.refusal.because], because.refusal.about) : null,
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (Object.values(errors).some((error) => error !== null)) return
    const standing = policy ?? house.live('house-policy').find(({ body }) => body.policy === name) ?? null
    await writeEntry(pen, {
      kind: 'house-policy',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { policy: name, value: draft.value.trim(), because: draft.because.trim() },
      supersedes: replacedBy(house, standing),
      // A correction says why; here that is the reason of the policy itself.
      reason: standing ? draft.because.trim() : null,
    })
    await clear()
    onClose()
  }
  if (!ready) return <DraftAwaited />
  return (
    <Modal
      title={policy ? fill(words.changeTitle, { policy: policyName(policy.body.policy) }) : words.addTitle}
      close={settingsInEnglish.cancel}
      onClose={onClose}
    >
      <form onSubmit={keep} className="stack" noValidate>
        <Field label={words.which} error={tried ? errors.which : null}>
          {(control) => (
            <select
              {...control}
              disabled={policy !== null}
              value={draft.which}
              onChange={(event) => change({ ...draft, which: event.target.value })}
            >
              <option value="">{words.choose}</option>
              {[...owedPolicies, ...doseDefaults, ...figurePolicies].map((one) => (
                <option key={one} value={one}>
                  {words.names[one]}
                </option>
              ))}
              <option value="other">{words.other}</option>
            </select>
          )}
        </Field>
        {draft.which === 'other' && (
          <Text
            label={words.name}
            error={tried ? errors.name : null}
            value={draft.name}
            disabled={policy !== null}
            onChange={(text) => change({ ...draft, name: text })}
          />
        )}
        {isKnown &&
          (own ? (
            <div className="row">
              <span>{fill(words.ours, { value: sayContent(own.value) })}</span>
              <Provenance fact={own} />
            </div>
          ) : (
            <p>{words.noOwn}</p>
          ))}
        <Text
          label={words.value}
          help={helpFor(draft.which)}
          error={tried ? errors.value : null}
          value={draft.value}
          onChange={(text) => change({ ...draft, value: text })}
        />
        <Text
          label={words.because}
          error={tried ? errors.because : null}
          value={draft.because}
          onChange={(text) => change({ ...draft, because: text })}
        />
        <p>
          <button type="submit" data-weight="main">
            {settingsInEnglish.save}
          </button>
        </p>
      </form>
    </Modal>
  )
}

function Text(props: {
  readonly label: string
  readonly help?: string | undefined
  readonly error: string | null
  readonly value: string
  readonly disabled?: boolean
  readonly onChange: (text: string) => void
}) {
  const { label, help, error, value, disabled = false, onChange } = props
  return (
    <TextField
      label={label}
      help={help}
      error={error}
      autoComplete="off"
      disabled={disabled}
      value={value}
      onText={onChange}
    />
  )
}
