import { emergencyLocalAnaestheticToxicity } from '#content/protocols/emergency-local-anaesthetic-toxicity.ts'
import { asOnSheet, followOnSheet } from '#core/formulary/as-on-sheet.ts'
import { drug } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const caulfield = {
  sources: ['caulfield-2022'],
  where: 'abstract',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const ceiling = {
  sources: ['vet360-2016-lipid'],
  where: 'infusion for 30 to 60 min; at most 8 mL/kg a day',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const lipidEmulsion = drug({
  id: 'lipid-emulsion',
  name: 'lipid emulsion',
  aliases: ['lipid emulsion 20%', 'intravenous lipid emulsion'],
  class: 'lipid rescue',
  groups: [],
  doses: [
    {
      ...asOnSheet(emergencyLocalAnaestheticToxicity, 'lipid-emulsion', 'dog'),
      interval: { value: { words: 'over 1 to 5 min, then the infusion; may be repeated' }, ...caulfield },
      maxCumulative: {
        value: {
          limit: quantity('8', 'mL/kg'),
          per: 'day',
          words: 'about 8 mL/kg in a day, bolus and infusion together (one source)',
        },
        ...ceiling,
      },
      stocks: { value: [{ words: '20 % emulsion' }], ...products },
      cautions: {
        value: [
          { words: 'for poisoning by a local anaesthetic: stop the drug, airway and oxygen first' },
          { words: 'it came back after 10 h: watch for a day' },
          { words: 'blood samples turn milky; the pancreas may suffer' },
          { words: 'relative: egg or soya allergy', when: { kind: 'any-of', words: ['egg-or-soya-sensitivity'] } },
        ],
        ...caulfield,
      },
      exclusions: { value: [], ...caulfield },
    },
    {
      ...followOnSheet(emergencyLocalAnaestheticToxicity, 'lipid-emulsion', 'dog'),
      interval: { value: { words: 'for 25 min after the bolus; another source 30 to 60 min' }, ...caulfield },
      maxCumulative: {
        value: {
          limit: quantity('8', 'mL/kg'),
          per: 'day',
          words: 'about 8 mL/kg in a day, bolus and infusion together (one source)',
        },
        ...ceiling,
      },
      stocks: { value: [{ words: '20 % emulsion' }], ...products },
      cautions: { value: [{ words: 'watch for a day: it came back after 10 h' }], ...caulfield },
      exclusions: { value: [], ...caulfield },
    },
    {
      ...asOnSheet(emergencyLocalAnaestheticToxicity, 'lipid-emulsion', 'cat'),
      interval: { value: { words: 'over 5 min, then the infusion; may be repeated' }, ...caulfield },
      maxCumulative: {
        value: {
          limit: quantity('8', 'mL/kg'),
          per: 'day',
          words: 'about 8 mL/kg in a day, bolus and infusion together (one source)',
        },
        ...ceiling,
      },
      stocks: { value: [{ words: '20 % emulsion' }], ...products },
      cautions: {
        value: [
          { words: 'for poisoning by a local anaesthetic: stop the drug, airway and oxygen first' },
          { words: 'it came back after 10 h: watch for a day' },
          { words: 'blood samples turn milky; the pancreas may suffer' },
          { words: 'worked after a tenfold bupivacaine error' },
          { words: 'relative: egg or soya allergy', when: { kind: 'any-of', words: ['egg-or-soya-sensitivity'] } },
        ],
        ...caulfield,
      },
      exclusions: { value: [], ...caulfield },
    },
    {
      ...followOnSheet(emergencyLocalAnaestheticToxicity, 'lipid-emulsion', 'cat'),
      interval: { value: { words: 'for 25 min after the bolus; another source 30 to 60 min' }, ...caulfield },
      maxCumulative: {
        value: {
          limit: quantity('8', 'mL/kg'),
          per: 'day',
          words: 'about 8 mL/kg in a day, bolus and infusion together (one source)',
        },
        ...ceiling,
      },
      stocks: { value: [{ words: '20 % emulsion' }], ...products },
      cautions: { value: [{ words: 'watch for a day: it came back after 10 h' }], ...caulfield },
      exclusions: { value: [], ...caulfield },
    },
  ],
  none: [],
})
