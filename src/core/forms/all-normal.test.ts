import { expect, it } from 'vitest'
import { check } from '#content/forms/check.ts'
import { allNormal } from './all-normal.ts'
import { withDraftAt } from './draft.ts'
import { emptyDraft } from './empty-draft.ts'
import { formOf } from './form.ts'

const form = formOf(check)
const balance = form.sections.find(({ id }) => id === 'balance')
if (!balance) throw new Error('The form of a check has no section on balance.')

it('answers the three of balance by one touch, and nothing beside them', () => {
  const empty = emptyDraft(form)
  expect(allNormal(balance, empty)).toEqual({ ...(empty as object), headTilt: 'no', nystagmus: 'no', unsteady: 'no' })
})

it('is not offered where a sign was found or nobody looked, where all is answered, and in a section without it', () => {
  const with_ = (field: string, answer: string) => withDraftAt(emptyDraft(form), field, answer)
  expect(allNormal(balance, with_('nystagmus', 'yes'))).toBeNull()
  expect(allNormal(balance, with_('nystagmus', 'not-assessed'))).toBeNull()
  expect(allNormal(balance, with_('nystagmus', 'no'))).toMatchObject({ headTilt: 'no', unsteady: 'no' })
  expect(allNormal(balance, allNormal(balance, emptyDraft(form)) ?? {})).toBeNull()
  expect(form.sections.filter((one) => allNormal(one, emptyDraft(form)) !== null)).toEqual([balance])
})
