import { type FormEvent, useState } from 'react'
import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { plansInEnglish, policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import { type ChosenDraft, type ChosenRefusal, readChosen } from '#core/dosing/read-chosen.ts'
import { rowBehind } from '#core/dosing/read-plan.ts'
import { typedAgain } from '#core/forms/typed-again.ts'
import { rowKey } from '#core/formulary/drug.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { DraftAwaited } from '../../design/draft-awaited.tsx'
import { Modal } from '../../design/modal.tsx'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { DoseChoice, Options } from './dose-choice.tsx'
import { dosePolicyName } from './dose-policy-name.ts'
import { choosingFacts, drugs } from './drugs.ts'
import { replacedBy } from './house-lines.ts'

export type DosePolicy = Line<BodyOf<'dose-policy'>>
type Draft = ChosenDraft & { readonly species: '' | Species }
const nothing = { drug: '', row: '', route: '', dose: '' } as const

function draftOf({ body }: DosePolicy, decimalMark: '.' | ','): Draft {
  const row = rowBehind(body, body.species, drugs)
  const dose = typedAgain(body.dose, decimalMark)
  const route = body.route ?? ''
  return { species: body.species, drug: body.drug, row: row ? rowKey(row) : '', route, dose, because: body.because }
}

/** A dose of this house: drug, use, route, the range beside it, the one number, and why. */
export function DosePolicyForm(props: {
  readonly house: Case
  readonly policy: DosePolicy | null
  readonly onClose: () => void
}) {
  const { house, policy, onClose } = props
  const { me, pen, clinic } = useWho()
  const { decimalMark } = clinic.row
  const { draft, change, clear, ready } = useDraft<Draft>(`dose-policy ${policy?.header.id ?? 'new'}`, me.id, () =>
    policy ? draftOf(policy, decimalMark) : { ...nothing, species: '', because: '' },
  )
  const [refusals, setRefusals] = useState<readonly ChosenRefusal[]>([])
  const [tried, setTried] = useState(false)
  const { species } = draft
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (species === '') return
    const read = readChosen(draft, { ...choosingFacts, species, decimalMark })
    setRefusals(read.kind === 'refusal' ? read.refusal : [])
    if (read.kind === 'refusal') return
    const body = { ...read.answer, species }
    const same = house.live('dose-policy').find((one) => dosePolicyName(one.body) === dosePolicyName(body))
    await writeEntry(pen, {
      kind: 'dose-policy',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body,
      supersedes: replacedBy(house, policy ?? same ?? null),
      reason: policy || same ? body.because : null,
    })
    await clear()
    onClose()
  }
  if (!ready) return <DraftAwaited />
  return (
    <Modal
      wide
      title={policy ? fill(words.changeTitle, { policy: dosePolicyName(policy.body) }) : words.doseTitle}
      close={settingsInEnglish.cancel}
      onClose={onClose}
    >
      <form onSubmit={keep} className="stack" noValidate>
        <Options
          legend={words.animal}
          error={tried && species === '' ? plansInEnglish.notChosen : null}
          options={speciesList.map((one) => [one, speciesInEnglish[one]] as const)}
          value={species}
          onChange={(next) => change({ ...draft, ...nothing, species: next as Species })}
        />
        {species !== '' && (
          <DoseChoice
            draft={draft}
            species={species}
            refusals={refusals}
            onChange={(next) => change({ ...draft, ...next })}
          />
        )}
        <p>
          <button type="submit" data-weight="main">
            {settingsInEnglish.save}
          </button>
        </p>
      </form>
    </Modal>
  )
}
