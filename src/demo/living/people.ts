import type { Row } from '#core/journal/journal-file.ts'
import type { ContactRow, PersonRow } from '#core/journal/registers.ts'
import { owner, since } from '../practice.ts'
import { closedDaysAround } from './closed-days.ts'

/** Invented owners, a second invented vet, and the two roles that the finished cases never needed. */
const contacts: Record<string, ContactRow> = {
  'contact-strand': owner('Ifeoma Strand', '01632 960151', '8 Ropewalk'),
  'contact-mead': owner('Lucjan Mead', '01632 960152', '41 Fuller Lane'),
  'contact-wetherlow': owner('Ana Wetherlow', '01632 960153', 'Osier Farm'),
  'contact-dale': owner('Kenji Dale', '01632 960154', '5 Lock Cottages'),
  'contact-quill': owner('Noor Quill', '01632 960156', '30 Tannery Walk'),
  'contact-pratt': owner('Sunniva Pratt', '01632 960155', '22 Chandler Street'),
  'contact-oyelaran': {
    kind: 'vet',
    name: 'Femi Oyelaran',
    practice: 'Sallow Lane Vets (invented)',
    phone: '01632 960132',
    email: 'desk@sallowlane.example',
    address: ['1 Sallow Lane', 'Fenbridge'],
  },
}

const people: Record<string, PersonRow> = {
  'person-brandreth': { name: 'Signe Brandreth', role: 'manager', letters: null },
  'person-achterberg': { name: 'Wim Achterberg', role: 'read-only', letters: null },
}

/** What the living cases add to the registers: their people, and the days on which the practice is closed around today. */
export function livingRows(today: string): Row[] {
  const row = (register: Row['register'], id: string, body: object): Row => ({
    register,
    id,
    revision: 1,
    body: body as Record<string, string>,
    by: 'person-moretti',
    at: since,
  })
  return [
    ...closedDaysAround(today).map((closed) => row('closed-day', closed.day, closed)),
    ...Object.entries(contacts).map(([id, contact]) => row('contact', id, contact)),
    ...Object.entries(people).map(([id, person]) => row('person', id, person)),
  ]
}
