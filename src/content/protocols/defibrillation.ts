import type { EmergencyFacts } from '#core/dosing/emergency.ts'
import { quantity } from '#core/units/quantity.ts'

const checked = '2026-11-25'
const merck = {
  sources: ['merck-cpr-table'],
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked,
} as const
const band = (low: string, high: string) => ({ low: quantity(low, 'J/kg'), high: quantity(high, 'J/kg') })

/** Energy of a shock, by where the paddles stand and what the machine gives. */
export const defibrillation = {
  energy: {
    external: {
      biphasic: { value: band('2', '4'), ...merck },
      monophasic: { value: band('4', '6'), ...merck },
    },
    internal: {
      biphasic: { value: band('0.2', '0.4'), ...merck },
      monophasic: { value: band('0.5', '1'), ...merck },
    },
  },
  energyNotes: [
    {
      value: 'RECOVER 2024: after a first shock that failed the energy is doubled once.',
      sources: ['recover-2024'],
      known: 'remembered',
      strength: 'guideline',
      confidence: 'medium',
      checked,
    },
    {
      value: 'Earlier table: half as much again after each failed shock, at most 10 J/kg.',
      sources: ['msd-cpr-table-earlier'],
      known: 'read',
      strength: 'textbook',
      confidence: 'high',
      checked,
    },
  ],
} as const satisfies Pick<EmergencyFacts, 'energy' | 'energyNotes'>
