import { storedHow } from '#core/dosing/how-given.ts'
import type { Dose } from '#core/formulary/drug.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { type Row, rowsInOrder } from '#core/journal/journal-file.ts'
import type { ClinicRow, ContactRow, PersonRow } from '#core/journal/registers.ts'
import type { ClosedDays } from '#core/time/open-days.ts'
import { quantity } from '#core/units/quantity.ts'
import { Chart } from './chart.ts'
import { prices } from './prices.ts'

/**
 * An invented practice: no person, animal, phone number or price in this folder is real, and none of its numbers is
 * clinical evidence. Doses below are choices of invented people from the ranges in content/formulary.
 */
export const demoClinic = 'larkwater'
export const zone = 'Europe/London'

const clinic: ClinicRow = {
  name: 'Larkwater Referrals (invented practice)',
  address: ['4 Larkwater Mill', 'Fenbridge'],
  phone: '01632 960101',
  outOfHoursPhone: '01632 960199',
  email: 'desk@larkwater.example',
  zone,
  language: 'en',
  decimalMark: '.',
  currency: 'GBP',
  closedWeekdays: [6, 7],
}

export const staff = {
  holm: 'person-holm',
  adeyemi: 'person-adeyemi',
  lindqvist: 'person-lindqvist',
  castellane: 'person-castellane',
  moretti: 'person-moretti',
} as const

const people: Record<string, PersonRow> = {
  'person-holm': { name: 'Imke Holm', role: 'surgeon', letters: null },
  'person-adeyemi': { name: 'Tomas Adeyemi', role: 'anaesthetist', letters: null },
  'person-lindqvist': { name: 'Priya Lindqvist', role: 'nurse', letters: null },
  'person-castellane': { name: 'Owen Castellane', role: 'nurse', letters: null },
  'person-moretti': { name: 'Hana Moretti', role: 'desk', letters: null },
}

export const owner = (name: string, phone: string, street: string): ContactRow => ({
  kind: 'owner',
  name,
  practice: null,
  phone,
  email: null,
  address: [street, 'Fenbridge'],
})

const contacts: Record<string, ContactRow> = {
  'contact-okafor': owner('Rosalind Okafor', '01632 960111', '17 Saltern Row'),
  'contact-bell': owner('Daniel Bell', '01632 960112', '17 Saltern Row'),
  'contact-fennimore': owner('Mateus Fennimore', '01632 960121', '2 Weir Cottages'),
  'contact-park': {
    kind: 'vet',
    name: 'Elin Park',
    practice: 'Harbour Street Pets (invented)',
    phone: '01632 960131',
    email: 'vets@harbourstreet.example',
    address: ['30 Harbour Street', 'Fenbridge'],
  },
  'contact-laboratory': {
    kind: 'laboratory',
    name: 'Northfold Laboratory (invented)',
    practice: null,
    phone: '01632 960141',
    email: 'results@northfold.example',
    address: ['Unit 9, Northfold Park'],
  },
}

const closedDays = [
  { day: '2025-04-18', because: 'Good Friday' },
  { day: '2025-04-21', because: 'Easter Monday' },
  { day: '2025-05-05', because: 'Bank holiday' },
  { day: '2025-12-25', because: 'Christmas Day' },
  { day: '2025-12-26', because: 'Boxing Day' },
]

export const closed: ClosedDays = {
  weekdays: clinic.closedWeekdays,
  days: closedDays.map(({ day }) => day),
}

export const since = '2025-01-06T09:00:00.000Z'

export function registerRows(): Row[] {
  const row = (register: Row['register'], id: string, body: object): Row => ({
    register,
    id,
    revision: 1,
    body: body as Record<string, string>,
    by: 'person-moretti',
    at: since,
  })
  return rowsInOrder([
    row('clinic', demoClinic, clinic),
    ...closedDays.map((closed) => row('closed-day', closed.day, closed)),
    ...Object.entries(contacts).map(([id, contact]) => row('contact', id, contact)),
    ...Object.entries(people).map(([id, person]) => row('person', id, person)),
    ...Object.entries(prices).map(([id, price]) => row('price', id, price)),
  ])
}

type ShelfItem = BodyOf<'shelf-item'>
const inStock = { expires: null, outSince: null, controlled: null } as const
const injection = (item: string, drug: string, label: string, value: string): ShelfItem => ({
  item,
  drug,
  label,
  form: 'injection',
  strength: { value, unit: 'mg/mL' },
  divides: null,
  ...inStock,
})
const tablet = (item: string, drug: string, label: string, value: string, divides: 'whole' | 'halves'): ShelfItem => ({
  item,
  drug,
  label,
  form: 'tablet',
  strength: { value, unit: 'mg/{tablet}' },
  divides,
  ...inStock,
})

const shelf: readonly ShelfItem[] = [
  injection('alfaxalone-10', 'alfaxalone', 'Alfaxalone 10 mg/mL', '10'),
  injection('atipamezole-5', 'atipamezole', 'Atipamezole 5 mg/mL', '5'),
  injection('bupivacaine-5', 'bupivacaine', 'Bupivacaine 5 mg/mL', '5'),
  injection('cefazolin-100', 'cefazolin', 'Cefazolin 1 g made up to 100 mg/mL', '100'),
  injection('dexmedetomidine-05', 'dexmedetomidine', 'Dexmedetomidine 0.5 mg/mL', '0.5'),
  injection('ketamine-100', 'ketamine', 'Ketamine 100 mg/mL', '100'),
  injection('maropitant-10', 'maropitant', 'Maropitant 10 mg/mL', '10'),
  injection('meloxicam-2', 'meloxicam', 'Meloxicam 2 mg/mL injection, cat', '2'),
  injection('meloxicam-5', 'meloxicam', 'Meloxicam 5 mg/mL injection, dog', '5'),
  injection('methadone-10', 'methadone', 'Methadone 10 mg/mL', '10'),
  injection('midazolam-5', 'midazolam', 'Midazolam 5 mg/mL', '5'),
  injection('propofol-10', 'propofol', 'Propofol 10 mg/mL', '10'),
  tablet('amoxiclav-250', 'amoxicillin-clavulanate', 'Amoxicillin and clavulanic acid 250 mg tablets', '250', 'halves'),
  tablet('amoxiclav-50', 'amoxicillin-clavulanate', 'Amoxicillin and clavulanic acid 50 mg tablets', '50', 'halves'),
  tablet('gabapentin-100', 'gabapentin', 'Gabapentin 100 mg capsules', '100', 'whole'),
  tablet('meloxicam-1', 'meloxicam', 'Meloxicam 1 mg chewable tablets', '1', 'halves'),
]

type Plan = BodyOf<'usual-plan'>
type Line = Plan['lines'][number]
const line = (
  [id, drug, use, route]: readonly [string, string, Line['use'], Line['route']],
  [value, unit]: readonly [string, Line['dose']['unit']],
  shelfItem: string | null,
  because: string,
  qualifier: string | null = null,
): Line => ({ line: id, drug, use, route, qualifier, dose: { value, unit }, shelfItem, how: null, because })

const dogPlan: Plan = {
  plan: 'our usual plan, dog',
  species: 'dog',
  lines: [
    line(
      ['antiemetic', 'maropitant', 'antiemetic', 'SC'],
      ['1', 'mg/kg'],
      'maropitant-10',
      'The label dose, an hour before the opioid.',
    ),
    line(
      ['opioid', 'methadone', 'analgesia_bolus', 'IM'],
      ['0.3', 'mg/kg'],
      'methadone-10',
      'Strong enough for this ear; every source read allows it.',
    ),
    line(
      ['premedication', 'dexmedetomidine', 'premed', 'IM'],
      ['3', 'ug/kg'],
      'dexmedetomidine-05',
      'Low, because the opioid does most of the work.',
    ),
    line(
      ['induction', 'propofol', 'induction', 'IV'],
      ['3', 'mg/kg'],
      'propofol-10',
      'Drawn up in full, given to effect.',
    ),
    line(
      ['maintenance', 'isoflurane', 'maintenance', 'INH'],
      ['1.5', '%{vol}'],
      null,
      'Where we start the vaporiser; then to effect.',
    ),
    line(
      ['antibiotic', 'cefazolin', 'antibiotic_periop', 'IV'],
      ['22', 'mg/kg'],
      'cefazolin-100',
      'Within the hour before the incision.',
    ),
    line(
      ['block', 'bupivacaine', 'local_block', 'perineural'],
      ['1', 'mg/kg'],
      'bupivacaine-5',
      'Half of the ceiling, so that a splash stays possible.',
    ),
    line(
      ['splash', 'bupivacaine', 'local_block', 'splash'],
      ['1', 'mg/kg'],
      'bupivacaine-5',
      'What the block left of the ceiling.',
    ),
    line(
      ['nsaid', 'meloxicam', 'nsaid', 'SC'],
      ['0.2', 'mg/kg'],
      'meloxicam-5',
      'After closing, pressure and bleeding being right.',
      'day 1',
    ),
  ],
}

const catPlan: Plan = {
  plan: 'our usual plan, cat',
  species: 'cat',
  lines: [
    line(['antiemetic', 'maropitant', 'antiemetic', 'SC'], ['1', 'mg/kg'], 'maropitant-10', 'The label dose.'),
    line(
      ['opioid', 'methadone', 'analgesia_bolus', 'IM'],
      ['0.3', 'mg/kg'],
      'methadone-10',
      'Our anaesthetist’s choice for bone pain in cats; every source read allows it.',
    ),
    line(
      ['premedication', 'midazolam', 'premed', 'IM'],
      ['0.2', 'mg/kg'],
      'midazolam-5',
      'With the opioid, in an older cat.',
    ),
    line(
      ['induction', 'alfaxalone', 'induction', 'IV'],
      ['2', 'mg/kg'],
      'alfaxalone-10',
      'Drawn up in full, given to effect.',
    ),
    line(
      ['maintenance', 'isoflurane', 'maintenance', 'INH'],
      ['1.6', '%{vol}'],
      null,
      'Where we start the vaporiser; then to effect.',
    ),
    line(
      ['antibiotic', 'cefazolin', 'antibiotic_periop', 'IV'],
      ['22', 'mg/kg'],
      'cefazolin-100',
      'Within the hour before the incision.',
    ),
    line(
      ['block', 'bupivacaine', 'local_block', 'perineural'],
      ['0.5', 'mg/kg'],
      'bupivacaine-5',
      'Half of the cat’s ceiling.',
    ),
    line(
      ['nsaid', 'meloxicam', 'nsaid', 'SC'],
      ['0.2', 'mg/kg'],
      'meloxicam-2',
      'The European label dose, after closing.',
      'EU label',
    ),
  ],
}

/** What some dogs need beside the usual plan: an infusion for a hard ear, and tablets for home. */
const besidePlan: Plan = {
  plan: 'beside the usual plan, dog',
  species: 'dog',
  lines: [
    {
      ...line(
        ['ketamine infusion', 'ketamine', 'cri', 'IV'],
        ['10', 'ug/kg/min'],
        'ketamine-100',
        'For a bulla that has hurt for months; during surgery only.',
      ),
      how: storedHow({
        container: {
          kind: 'syringe',
          name: 'ketamine infusion',
          volume: quantity('50', 'mL'),
          rate: quantity('5', 'mL/h'),
          fluid: 'sodium-chloride-0.9',
        },
        loading: { dose: quantity('0.5', 'mg/kg') as Dose, over: quantity('2', 'min') },
      }),
    },
    {
      ...line(
        ['tablets for home', 'amoxicillin-clavulanate', 'antibiotic_course', 'PO'],
        ['12.5', 'mg/kg'],
        'amoxiclav-250',
        'Until the culture of the bulla is read.',
      ),
      how: storedHow({ days: 7 }),
    },
  ],
}

/** The practice's own stream: shelf, usual plans, one policy. A practice that is open keeps a register of its methadone. */
export function practiceChart({ keepsRegister = false } = {}): Chart {
  const chart = new Chart(demoClinic, 'clinic', zone)
  const subject = { kind: 'clinic' } as const
  for (const item of shelf) {
    const controlled = keepsRegister && item.drug === 'methadone' ? 'yes' : item.controlled
    chart.write('shelf-item', { at: '2025-01-06 09:30', by: 'person-adeyemi', subject }, { ...item, controlled })
  }
  for (const plan of [dogPlan, catPlan, besidePlan])
    chart.write('usual-plan', { at: '2025-01-06 10:00', by: 'person-adeyemi', subject }, plan)
  chart.write(
    'dose-policy',
    { at: '2025-01-06 10:20', by: 'person-adeyemi', subject },
    {
      drug: 'maropitant',
      species: 'dog',
      use: 'antiemetic',
      route: 'SC',
      qualifier: null,
      dose: { value: '1', unit: 'mg/kg' },
      because: 'The label dose; there is no reason for another.',
    },
  )
  chart.write(
    'house-policy',
    { at: '2025-01-06 10:30', by: 'person-holm', subject },
    { policy: 'lasting-deficit-days', value: '180', because: 'We keep the default; discussed at the January meeting.' },
  )
  return chart
}
