/** The rules that belong to no single drug, study or operation, by the name of their page. */
export const rulesInEnglish = {
  'bandage-and-airway': {
    title: 'Bandage and airway',
    lead: 'The card at the cage: what is done first, who looks at what, and why some are watched more closely.',
  },
  'blood-in-swabs': { title: 'Blood in swabs', lead: 'What a soaked swab holds, and how heavy blood is.' },
  'blood-marks': { title: 'Marks of blood loss', lead: 'At which share of the blood volume somebody speaks up.' },
  'blood-per-kg': { title: 'Blood volume', lead: 'How much blood an animal holds for its weight.' },
  'body-surface': { title: 'Body surface', lead: 'The constant between weight and body-surface area.' },
  'calc-formulas': { title: 'Formulas', lead: 'Where each formula of the calculator was seen.' },
  defibrillation: { title: 'Defibrillation', lead: 'Energy by weight.' },
  'dosing-checks': { title: 'Checks of a dose', lead: 'The numbers behind every question that a dose plan asks.' },
  'drug-pairs': {
    title: 'Pairs of drugs',
    lead: 'What must not meet, or should be thought about together, and how long one given before still counts.',
  },
  'face-and-eye': { title: 'Looks at face and eye', lead: 'When an operated side is looked at.' },
  'label-bands': { title: 'Tablets by weight', lead: 'Weight bands that a label prints for its own tablets.' },
  'laboratory-numbers': {
    title: 'Numbers that laboratories send',
    lead: 'SNOMED CT numbers of organisms and LOINC numbers of tests. A name or number that is not here is asked about.',
  },
  'low-pressure': {
    title: 'Low pressure under anaesthesia',
    lead: 'What is done step after step. Its drugs are ranges; the dose is chosen in the dose plan.',
  },
  'missing-reasons': { title: 'Why a missing thing matters', lead: 'The reason beside everything a case asks for.' },
  'otis-3': { title: 'OTIS-3', lead: 'The two lines of the pilot study of the score. There is none for cats.' },
  owed: { title: 'What falls due', lead: 'First calls, eyes at risk, results, the day before, late events.' },
  'patch-sizes': { title: 'Patch sizes', lead: 'Fentanyl patches by weight, in microgram/h.' },
  plate: {
    title: 'Size of the parts',
    lead: 'What is published of the parts of the ear. The drawing keeps the proportions; none is a measure of a patient.',
  },
  'register-rules': {
    title: 'Registers of controlled drugs',
    lead: 'What one country’s guidance asks. An orientation only: your own law decides, and no rule here hangs on it.',
  },
  specimens: {
    title: 'Specimens of an operation',
    lead: 'What is taken in each operation, and the tests that stand beside a place.',
  },
  'spoken-pauses': {
    title: 'The three spoken pauses',
    lead: 'What is read aloud before anaesthesia, before the incision and before leaving theatre, and why.',
  },
  stewardship: {
    title: 'Which antibiotics to spare',
    lead: 'The European categories, A to be avoided and D first; and what a guideline of dog skin prefers, which for an ear is an order and no indication.',
  },
  'theatre-clocks': {
    title: 'Clocks of the theatre',
    lead: 'When a clock beside the table asks for something. The next dose of an antimicrobial stands with its drug.',
  },
  year: { title: 'The year', lead: 'The calls, visits and the status after a year.' },
} as const

export type RuleName = keyof typeof rulesInEnglish
