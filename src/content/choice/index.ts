import type { ChoiceContent } from '#core/choice/choice-rule.ts'
import { routes } from './routes.ts'
import { rulesOfEveryOption } from './rules-of-every-option.ts'
import { rulesOfTheBulla } from './rules-of-the-bulla.ts'
import { rulesOfTheCanal } from './rules-of-the-canal.ts'
import { rulesWithoutRemoval } from './rules-without-removal.ts'

/** The published reasons for and against each option, the routes, and the lists that reading a case needs. */
export const choiceContent = {
  rules: [...rulesWithoutRemoval, ...rulesOfTheCanal, ...rulesOfTheBulla, ...rulesOfEveryOption],
  routes,
  steroids: [
    'betamethasone',
    'dexamethasone',
    'fluocinolone',
    'hydrocortisone',
    'methylprednisolone-acetate',
    'mometasone',
    'prednisolone',
    'triamcinolone',
  ],
  cockers: [
    'american cocker spaniel',
    'american cocker',
    'cocker spaniel',
    'cocker',
    'english cocker spaniel',
    'english cocker',
  ],
} as const satisfies ChoiceContent
