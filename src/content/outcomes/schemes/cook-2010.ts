import type { Scheme, TroubleWindow } from '#core/complications/scheme.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { barrettRead, cookRemembered, cookUnclear } from './provenance.ts'

const major = { value: ['major'], ...cookRemembered } as const

/** Three levels, proposed for orthopaedics and used since for other surgery. Words of our own. */
export const cook2010Scheme = {
  id: 'cook-2010',
  name: 'Cook',
  version: '2010',
  grades: [
    { grade: 'minor', label: 'minor: needed no treatment' },
    { grade: 'major', label: 'major: needed further treatment, surgical or medical' },
    {
      grade: 'catastrophic',
      label: 'catastrophic: function unacceptable for good, death, or euthanasia because of it',
    },
  ],
  byNeed: {
    none: { value: ['minor'], ...cookRemembered },
    'wound-care-awake': { value: ['minor', 'major'], ...cookUnclear },
    'supportive-medicine': major,
    'some-drug': major,
    medicine: major,
    'intervention-awake': major,
    'some-operation': major,
    'intervention-sedation': major,
    'intervention-general-anaesthesia': major,
    'intensive-care': major,
    death: { value: ['catastrophic'], ...cookRemembered },
  },
  byLasting: { value: { is: 'unacceptable', grade: 'catastrophic' }, ...cookRemembered },
  onlyDecided: null,
  readByPerson: null,
  agreement: { value: { all: 0.848, setApart: 0.857 }, ...barrettRead },
} as const satisfies Scheme

/** The time frames that the same paper proposes. */
export const cookWindows = {
  value: [
    { id: 'peri-operative', untilMonths: 3 },
    { id: 'short', untilMonths: 6 },
    { id: 'mid', untilMonths: 12 },
    { id: 'long', untilMonths: null },
  ],
  ...cookRemembered,
  confidence: 'medium',
} as const satisfies Sourced<readonly TroubleWindow[]>
