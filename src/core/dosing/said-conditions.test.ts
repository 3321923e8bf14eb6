import { expect, test } from 'vitest'
import { animalWordsInEnglish } from '#content/wording/app-formulary.ts'
import { saidConditions } from './said-conditions.ts'

test('conditions of the animal are said in words, every other reason as it is', () => {
  const about = { drug: 'Amikacin', why: 'open-drum, open-bulla' }
  expect(saidConditions(about, animalWordsInEnglish)).toEqual({
    drug: 'Amikacin',
    why: 'a drum that is open or was not seen, open bulla',
  })
  expect(saidConditions({ why: 'nobody says whether the drums are whole' }, animalWordsInEnglish).why).toBe(
    'nobody says whether the drums are whole',
  )
  expect(saidConditions({ drug: 'Amikacin' }, animalWordsInEnglish)).toEqual({ drug: 'Amikacin' })
})
