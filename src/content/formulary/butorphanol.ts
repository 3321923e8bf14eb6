import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const texts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const merck = {
  sources: ['merck-opioid-table'],
  where: 'opioids in emergency practice',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const wsu = {
  sources: ['wsu-problem-drugs'],
  where: '25 % less with one changed copy, 30 to 50 % less with two',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const butorphanol = drug({
  id: 'butorphanol',
  name: 'butorphanol',
  aliases: [],
  class: 'opioid, kappa agonist',
  groups: ['partial-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'premed',
      routes: ['IM', 'IV', 'SC'],
      range: { value: range('0.2', '0.5', 'mg/kg'), ...merck },
      interval: { value: { words: 'every 1 to 3 h', hours: ['1', '3'] }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'sedates; too weak and short for an ear canal ablation' },
          { words: '25 % less with one changed copy of ABCB1', when: { kind: 'any-of', words: ['abcb1-carrier'] } },
          {
            words: '30 to 50 % less with two changed copies of ABCB1',
            when: { kind: 'any-of', words: ['abcb1-mutant'] },
          },
        ],
        ...wsu,
      },
      exclusions: {
        value: [],
        ...wsu,
      },
      neverByHand: ['while a full mu opioid is planned within its duration: it takes part of that effect away'],
    },
    {
      species: 'cat',
      use: 'premed',
      routes: ['IM', 'IV', 'SC'],
      range: { value: range('0.1', '0.4', 'mg/kg'), ...merck },
      interval: { value: { words: 'every 1 to 6 h', hours: ['1', '6'] }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'sedates; too weak for an ear canal ablation' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['while a full mu opioid is planned within its duration: it takes part of that effect away'],
    },
  ],
  none: [],
})
