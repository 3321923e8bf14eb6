import { susceptibility } from '#content/susceptibility/index.ts'
import { hygieneForClinic as words } from '#content/wording/hygiene.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { type Carriage, carriagesOf } from '#core/culture/carriage.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Block } from '../render/model.ts'

/** The next clinic hears of it before the animal stands in its waiting room. */
export function hygieneCallout(file: CaseFile): Block[] {
  const carriages = carriagesOf(file, susceptibility)
  if (carriages.length === 0) return []
  const lines = [...carriages.map((one) => sayCarriage(one, file.clinic.zone)), words.practice.value, words.lasts]
  return [{ kind: 'callout', tone: 'attention', word: words.title, lines }]
}

/** "MRSP (Staphylococcus pseudintermedius) on record, LEFT ear, 9 March 2026." and what the law may ask. */
export function sayCarriage(one: Carriage, zone: string): string {
  const { name, organism, side, at } = one
  const date = sayMoment({ at, zone, precision: 'day', by: 'clock' })
  const about = { name, organism, side: side ? papersInEnglish.sides[side] : papersInEnglish.notRecorded, date }
  const law =
    one.kind === 'carbapenemase' ? words.report.carbapenemase : name === 'MRSA' ? words.report.methicillinAureus : ''
  return `${fill(one.sure ? words.found : words.maybe, about)} ${law}`.trim()
}
