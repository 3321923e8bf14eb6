import { type FormEvent, useState } from 'react'
import { susceptibility } from '#content/susceptibility/index.ts'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { breakpointSettings as words } from '#content/wording/app-settings-breakpoints.ts'
import type { Edition } from '#core/culture/breakpoint.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { editionPolicy, editionsToChoose, factsOfHouse } from '#core/culture/house-facts.ts'
import { readText } from '#core/forms/read-leaf.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { DraftAwaited } from '../../design/draft-awaited.tsx'
import { Field } from '../../design/field.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { replacedBy } from './house-lines.ts'
import styles from './settings.module.css'

type Draft = { readonly which: string; readonly because: string }

/** Another edition for the results to come, with the reason, as a house policy. */
export function ChooseEdition({ file }: { readonly file: CaseFile }) {
  const { house } = file
  const { me, pen } = useWho()
  const { draft, change, clear, ready } = useDraft<Draft>('edition-of-breakpoints', me.id, () => ({
    which: '',
    because: '',
  }))
  const [tried, setTried] = useState(false)
  if (!ready) return <DraftAwaited />
  const facts = factsOfHouse(file, susceptibility)
  const able = editionsToChoose(facts.editions).filter(({ id }) => id !== facts.usual)
  const because = readText(draft.because, 10_000)
  const chosen = able.find(({ id }) => id === draft.which)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (!chosen || because.kind === 'refusal') return
    const standing = house.live('house-policy').find(({ body }) => body.policy === editionPolicy) ?? null
    await writeEntry(pen, {
      kind: 'house-policy',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { policy: editionPolicy, value: chosen.id, because: draft.because.trim() },
      supersedes: replacedBy(house, standing),
      // A correction says why; here that is the reason of the policy itself.
      reason: standing ? draft.because.trim() : null,
    })
    setTried(false)
    change({ which: '', because: '' })
    await clear()
  }
  return (
    <section aria-labelledby="choose-edition" className={styles.part}>
      <h2 id="choose-edition">{words.choose}</h2>
      <form onSubmit={keep} className="stack" noValidate>
        <Field label={words.which} error={tried && !chosen ? formRefusals['not-chosen'] : null}>
          {(control) => (
            <select
              {...control}
              value={chosen?.id ?? ''}
              onChange={(event) => change({ ...draft, which: event.target.value })}
            >
              <option value="" />
              {able.map((edition) => (
                <option key={edition.id} value={edition.id}>
                  {sayChoice(edition)}
                </option>
              ))}
            </select>
          )}
        </Field>
        <TextField
          label={words.because}
          help={words.keeps}
          error={
            tried && because.kind === 'refusal'
              ? fill(formRefusals[because.refusal.because], because.refusal.about)
              : null
          }
          autoComplete="off"
          value={draft.because}
          onText={(text) => change({ ...draft, because: text })}
        />
        <p>
          <button type="submit">{words.save}</button>
        </p>
      </form>
    </section>
  )
}

function sayChoice(edition: Edition): string {
  const name = editionName(edition)
  if (!edition.own) return fill(words.ours, { edition: name })
  return fill(words.own, { edition: name, from: edition.rows[0]?.ends.where ?? '' })
}
