import { describe, expect, it } from 'vitest'
import { forms } from '#content/forms/index.ts'
import type { BodyOf, KindName } from '#core/journal/fold.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { type Draft, isKept } from './draft.ts'
import { draftOf } from './draft-of.ts'
import { emptyDraft } from './empty-draft.ts'
import { formOf } from './form.ts'
import { readDraft } from './read-draft.ts'
import type { Place } from './refusal.ts'
import { isUntouched } from './relevant.ts'

const london: Place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' }
const lisbon: Place = { zone: 'Europe/Lisbon', decimalMark: ',', currency: 'EUR' }

const all = kinds.map((kind) => {
  const arrangement = forms.find((form) => form.kind === kind.name)
  if (!arrangement) throw new Error(`No form asks for a ${kind.name}.`)
  return { kind, form: formOf(arrangement) as ReturnType<typeof formOf> }
})

/** The paths at which a value is kept beside its text. */
function keptIn(draft: Draft, path: string): string[] {
  if (isKept(draft)) return [path]
  if (typeof draft !== 'object' || draft === null) return []
  return Object.entries(draft).flatMap(([key, part]) => keptIn(part as Draft, `${path}.${key}`))
}

describe('a form of every kind', () => {
  it('exists once for each kind', () => {
    expect(forms.map(({ kind }) => kind).sort()).toEqual(kinds.map(({ name }) => name).sort())
  })

  it.each(all.map(({ kind, form }) => [kind.name, kind, form] as const))(
    'gives the example of %s back exactly, after it was made a draft to amend',
    (_, kind, form) => {
      for (const place of [london, lisbon]) {
        const draft = draftOf(form, kind.example as BodyOf<KindName>, place)
        expect(readDraft(form, draft, place)).toEqual({ kind: 'answer', answer: kind.example })
      }
    },
  )

  it.each(all.map(({ kind, form }) => [kind.name, form] as const))('answers nothing of %s beforehand', (_, form) => {
    const empty = emptyDraft(form)
    expect(isUntouched(empty)).toBe(true)
    expect(readDraft(form, empty, london).kind).toBe('refusal')
  })

  it('needs a value kept beside its text only where the text alone says less', () => {
    const kept = all.flatMap(({ kind, form }) =>
      keptIn(draftOf(form, kind.example as BodyOf<KindName>, london), kind.name),
    )
    expect(kept).toEqual([
      // The example's mark is not that of its plan.
      'agreement.fingerprint',
      // Midnight of Greenwich is one o'clock in a London summer.
      'identity.born',
      'late-event.firstSeen',
      // Drawn elsewhere.
      'plate-drawing.plate',
      'plate-drawing.parameters',
      'plate-drawing.strokes',
      'plate-drawing.marks',
      // Those of the register it is written in.
      'register-line.drug',
      'register-line.strength',
      'register-line.form',
      'second-check.plan',
    ])
  })
})
