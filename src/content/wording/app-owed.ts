import type { Mine, RiskClass } from '#core/owed/sort.ts'

/** Why an owed thing stands where it stands in the list, and why it is mine, in English. */
export const owedOrderInEnglish = {
  risks: {
    harm: 'an animal may come to harm while this waits',
    'before-the-cut': 'has to be settled before the operation',
    result: 'a result that nobody acts on helps nobody',
    'follow-up': 'a look or a call that is due',
    record: 'the record is not complete',
  } satisfies Record<RiskClass, string>,
  mine: {
    'by-name': 'named for you',
    'by-role': 'for your role',
    'as-deputy': 'you stand in for {name}',
  } satisfies Record<Extract<Mine, { because: string }>['because'], string>,
  deputy: 'away; {name} stands in',
} as const
