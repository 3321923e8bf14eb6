import { describe, expect, it } from 'vitest'
import { emergency } from '#actions/dosing/emergency.ts'

/**
 * Volumes per kilogram as printed in the Merck Veterinary Manual, table of drugs and defibrillation used in
 * cardiopulmonary resuscitation, current edition. Checked at 100 kg so that no volume is too small to draw; the
 * weight is only noted, never refused.
 */
const printed: readonly [species: 'dog' | 'cat', call: string, drug: string, mLPerKg: number, tolerance: number][] = [
  ['dog', 'no-pulse', 'epinephrine', 0.01, 0],
  ['cat', 'no-pulse', 'epinephrine', 0.01, 0],
  ['dog', 'no-pulse', 'vasopressin', 0.04, 0],
  ['cat', 'no-pulse', 'vasopressin', 0.04, 0],
  // The table rounds 0.093 to 0.1 mL/kg for bottles of 0.4 to 0.54 mg/mL.
  ['dog', 'no-pulse', 'atropine', 0.1, 0.01],
  ['cat', 'no-pulse', 'atropine', 0.1, 0.01],
  ['dog', 'fast-wide-rhythm', 'lidocaine', 0.1, 0],
  ['cat', 'fast-wide-rhythm', 'amiodarone', 0.1, 0],
  ['dog', 'fast-wide-rhythm', 'esmolol', 0.05, 0],
  ['cat', 'fast-wide-rhythm', 'esmolol', 0.05, 0],
]

function row(species: 'dog' | 'cat', weight: string, call: string, drug: string) {
  const group = emergency({ species, weight }).groups.find((one) => one.call === call)
  const found = group?.rows.find((one) => one.drug === drug)
  if (!found) throw new Error(`${call} has no ${drug} for the ${species}.`)
  return found
}

describe('emergency volumes against the Merck table', () => {
  for (const [species, call, drug, mLPerKg, tolerance] of printed) {
    it(`${drug} for the ${species} is ${mLPerKg} mL/kg from the strength stated on the line`, () => {
      const { volume, sources } = row(species, '100 kg', call, drug)
      expect(Math.abs((volume?.value ?? Number.NaN) - 100 * mLPerKg)).toBeLessThanOrEqual(100 * tolerance + 1e-9)
      expect(sources.map(({ id }) => id)).toContain('merck-cpr-table')
    })
  }

  it('prints the shock energies of the table: 2–4 and 4–6 J/kg outside, 0.2–0.4 and 0.5–1 inside', () => {
    const { energy } = emergency({ species: 'dog', weight: '10 kg' })
    const ends = ({ low, high }: { low: { value: number }; high: { value: number } }) => [low.value, high.value]
    expect(ends(energy.external.biphasic)).toEqual([20, 40])
    expect(ends(energy.external.monophasic)).toEqual([40, 60])
    expect(ends(energy.internal.biphasic)).toEqual([2, 4])
    expect(ends(energy.internal.monophasic)).toEqual([5, 10])
  })
})

/** Columns of the RECOVER 2012 chart (Fletcher 2012, remembered): where both editions hold the number, so do we. */
describe('emergency volumes against the chart of 2012', () => {
  it('epinephrine: 0.1 mL at 10 kg and 0.3 mL at 30 kg', () => {
    expect(row('dog', '10 kg', 'no-pulse', 'epinephrine').drawn?.value).toBe(0.1)
    expect(row('dog', '30 kg', 'no-pulse', 'epinephrine').drawn?.value).toBe(0.3)
  })

  it('vasopressin: 0.8 mL at 20 kg; naloxone: 0.5 mL at 5 kg; flumazenil: 1.5 mL at 15 kg', () => {
    expect(row('dog', '20 kg', 'no-pulse', 'vasopressin').drawn?.value).toBe(0.8)
    expect(row('dog', '5 kg', 'undo', 'naloxone').drawn?.value).toBe(0.5)
    expect(row('dog', '15 kg', 'undo', 'flumazenil').drawn?.value).toBe(1.5)
  })

  it('keeps the atropine of 2012 beside the current one, each with its edition', () => {
    const atropine = row('dog', '20 kg', 'no-pulse', 'atropine')
    expect(atropine.dose.value).toBe(0.05)
    expect(atropine.otherEditions.map(({ dose }) => dose.value)).toEqual([0.04, 0.04])
    expect(atropine.note).toContain('Merck table, current edition')
    expect(atropine.note).toContain('0.04 mg/kg (earlier table, repeatable)')
  })
})
