import { emergencyBars, emergencyRowNotes as words } from '#content/wording/emergency.ts'
import type { EmergencyLine } from '#core/dosing/emergency-line.ts'
import { smallestDrawable } from '#core/dosing/syringe.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Decimal, plain } from '#core/units/quantity.ts'
import { sayQuantity } from '../case/say-quantity.ts'

/**
 * What stands behind a row of the emergency sheet: the bar or the dilution first, then how to give it, what follows,
 * and which edition this is.
 *
 * @example lineNote(line) // 'Every 3 to 5 minutes … Edition: Merck table, current edition. …'
 */
export function lineNote(line: EmergencyLine): string {
  const { row } = line
  const edition = [
    fill(words.edition, { edition: row.edition }),
    ...row.otherEditions.map(({ value, edition }) => {
      const isSame = value.unit === row.dose.value.unit && value.value.eq(row.dose.value.value)
      return isSame
        ? fill(words.sameEdition, { edition })
        : fill(words.otherEdition, { dose: sayQuantity(value), edition })
    }),
  ]
  if (line.kind === 'barred') return [emergencyBars[line.because], ...edition].join(' ')
  return [
    ...dilutionNote(line),
    row.give,
    ...followNote(line),
    ...(row.barredBy ? [words.barWhen] : []),
    ...edition,
  ].join(' ')
}

type DrawnLine = Extract<EmergencyLine, { kind: 'drawn' }>

function dilutionNote({ row, dilution, tooSmall, volume }: DrawnLine): string[] {
  if (tooSmall) return [fill(words.tooSmall, { least: `${smallestDrawable}` })]
  if (!dilution || !row.stock || !row.diluent) return []
  const about = {
    from: sayQuantity(row.stock),
    undiluted: `${short(volume.value.div(dilution.parts))} mL`,
    diluent: row.diluent,
    strength: sayQuantity(dilution.strength),
    times: String(Math.round(Math.log10(dilution.parts))),
  }
  return [fill(dilution.parts === 10 ? words.diluteOnce : words.diluteAgain, about)]
}

function followNote({ row, follow }: DrawnLine): string[] {
  if (!row.follow || !follow) return []
  const { rate: perKg } = row.follow.value
  const about = { perKg: sayQuantity(perKg), rate: `${short(follow.rate.value)} mL/h` }
  if (!follow.minutes || !follow.total) return [fill(words.followOpen, about)]
  return [fill(words.followFor, { ...about, minutes: `${follow.minutes}`, total: `${short(follow.total.value)} mL` })]
}

/** Four figures, as a person reads them off a pump. */
const short = (value: Decimal): string => plain(value.toSignificantDigits(4))
