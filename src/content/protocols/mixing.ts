import type { MixingRules } from '#core/dosing/mixing.ts'

const texts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const unsure = { ...texts, confidence: 'medium' } as const

const syringes = {
  sources: ['cote-separate-syringes'],
  known: 'read',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const pablo = {
  sources: ['pablo-cri-florida'],
  where: 'morphine, lidocaine and ketamine in one 60 mL syringe',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const mlkBlog = {
  sources: ['mlk-bag-teaching-blog'],
  where: 'morphine, lidocaine and ketamine in one litre bag',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const osu = {
  sources: ['osu-packed-red-cells'],
  where: 'saline beside blood; no fluid with calcium, no 5 % glucose',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const alkaline = 'it is alkaline and throws the other out of solution'

/** Which drugs may share a bag, a syringe or a line. What no list says is asked for, never assumed. */
export const mixing: MixingRules = {
  alone: [
    {
      which: { drug: 'diazepam' },
      except: [],
      diluted: false,
      because: 'it falls out of solution with almost everything, and sticks to the plastic',
      ...syringes,
    },
    {
      which: { drug: 'propofol' },
      except: ['lidocaine'],
      diluted: false,
      because: 'its emulsion breaks, and bacteria grow in it; only lidocaine goes in, at the moment of use',
      ...texts,
    },
    { which: { drug: 'alfaxalone' }, except: [], diluted: false, because: 'it is given alone', ...texts },
  ],
  apart: [
    ...(['epinephrine', 'dobutamine', 'dopamine', 'norepinephrine', 'calcium-gluconate'] as const).map((drug) => ({
      between: [{ drug: 'sodium-bicarbonate' }, { drug }] as const,
      because: 'bicarbonate destroys catecholamines and makes chalk of calcium',
      ...texts,
    })),
    ...(['midazolam', 'dobutamine', 'ketamine'] as const).flatMap((drug) =>
      (['furosemide', 'pantoprazole'] as const).map((alkali) => ({
        between: [{ drug: alkali }, { drug }] as const,
        because: alkaline,
        ...unsure,
      })),
    ),
    {
      between: [{ drug: 'amoxicillin-clavulanate' }, { group: 'aminoglycoside' }],
      because: 'each makes the other useless in one syringe',
      ...texts,
    },
  ],
  carriers: [
    {
      which: { group: 'red-cells' },
      only: ['sodium-chloride-0.9'],
      because: 'calcium clots it, sugar bursts the cells',
      ...osu,
    },
    {
      which: { drug: 'dopamine' },
      only: ['sodium-chloride-0.9', 'glucose-5'],
      because: 'it keeps in saline or glucose, away from light; brown is thrown away',
      ...unsure,
    },
    {
      which: { drug: 'norepinephrine' },
      only: ['sodium-chloride-0.9', 'glucose-5'],
      because: 'it keeps in saline or glucose, away from light; brown is thrown away',
      ...unsure,
    },
  ],
  together: [
    { which: [{ drug: 'morphine' }, { drug: 'lidocaine' }, { drug: 'ketamine' }], ...pablo },
    { which: [{ drug: 'morphine' }, { drug: 'lidocaine' }, { drug: 'ketamine' }], ...mlkBlog },
    { which: [{ drug: 'midazolam' }, { drug: 'ketamine' }, { group: 'full-opioid' }], ...texts },
  ],
}
