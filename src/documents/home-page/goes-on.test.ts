import { expect, it } from 'vitest'
import { languages } from '#content/languages/index.ts'
import type { TimedMedicine } from '#core/home/medicine-times.ts'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { medicineBlocks } from './medicines.ts'

const [tablet] = discharge.example.medicines as unknown as [TimedMedicine]
const page = (medicine: TimedMedicine) => JSON.stringify(medicineBlocks([medicine], 'Europe/London', languages.en))

it('A dose of another year than the day of going home is said with its year', () => {
  expect(page({ ...tablet, firstDay: '2027-11-30', sentOn: '2026-11-29' })).toContain('30 November 2027')
  expect(page({ ...tablet, firstDay: '2026-11-30', sentOn: '2026-11-29' })).not.toContain('2026')
  const overNewYear = page({ ...tablet, firstDay: '2026-12-29', days: 7, sentOn: '2026-12-29' })
  expect(overNewYear).toContain('4 January 2027')
  expect(overNewYear).not.toContain('December 2026')
})

it('Gel for an eye that does not blink has no last dose and no number in all', () => {
  const gel = { ...tablet, label: 'Gel', form: 'eye-gel', side: 'LEFT', untilSaid: true } as const
  const said = page(gel)
  expect(said).toContain('we say when')
  expect(said).not.toContain('18 February')
  expect(said).not.toContain('7 drops')
  expect(page({ ...gel, untilSaid: false })).toContain('18 February')
})

it('Of gel that is given less often later, only the last step goes on', () => {
  const step = { fromDay: '2026-02-15', each: '1', times: ['09:00'], onDays: 'every-day' as const }
  const said = page({ ...tablet, form: 'eye-gel', side: 'LEFT', untilSaid: true, steps: [step] })
  expect(said.split('we say when')).toHaveLength(2)
  expect(said).toContain('14 February, 08:00')
})
