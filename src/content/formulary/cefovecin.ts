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

const us = {
  sources: ['cfr-21-522-311'],
  where: '8 mg/kg; dog a second time after 14 days, cat once',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const eu = {
  sources: ['cefovecin-eu-spc'],
  where: 'again after 14 days, up to three more times',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const cefovecin = drug({
  id: 'cefovecin',
  name: 'cefovecin',
  aliases: [],
  class: 'third-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['SC'],
      range: { value: range('8', '8', 'mg/kg'), ...us },
      interval: { value: { words: 'once; again after 14 days', hours: ['336', '336'] }, ...us },
      maxCumulative: { value: { per: 'course', words: '2 injections (US), up to 4 (EU)' }, ...eu },
      stocks: { value: [{ strength: quantity('80', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: 'stays for weeks: an allergy cannot be stopped' },
          { words: 'poor against Pseudomonas' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['penicillin-anaphylaxis', 'cephalosporin-anaphylaxis'] },
            because: 'anaphylaxis to a penicillin or cephalosporin',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['SC'],
      range: { value: range('8', '8', 'mg/kg'), ...us },
      interval: { value: { words: 'once (US label); never again within 14 days', hours: ['336', '336'] }, ...us },
      maxCumulative: { value: { per: 'course', words: '1 injection (US)' }, ...us },
      stocks: { value: [{ strength: quantity('80', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: 'stays for weeks: an allergy cannot be stopped' },
          { words: 'poor against Pseudomonas' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['penicillin-anaphylaxis', 'cephalosporin-anaphylaxis'] },
            because: 'anaphylaxis to a penicillin or cephalosporin',
          },
          { when: { kind: 'any-of', words: ['renal-disease'] }, because: 'severe kidney disease' },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
