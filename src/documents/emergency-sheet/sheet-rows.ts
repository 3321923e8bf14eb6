import { emergencySheetWords as words } from '#content/wording/papers-emergency.ts'
import type { EmergencyLine } from '#core/dosing/emergency-line.ts'
import type { LocalRoom } from '#core/dosing/local-room.ts'
import { fill } from '#core/outcome/finding.ts'
import { convert, Decimal, plain } from '#core/units/quantity.ts'
import { sayQuantity } from '../case/say-quantity.ts'
import { type Run, strong, text, type Words } from '../render/model.ts'

/** Drug, volume to draw, and from what: the three cells that are read from the table in an emergency. */
export function sheetRows(
  lines: readonly EmergencyLine[],
  room: LocalRoom | undefined,
): (readonly [Words, Words, Words])[] {
  return lines.map((line) => {
    const { name, routes, barredBy } = line.row
    const bar = barredBy ? [words.barredIf] : []
    if (line.kind === 'barred') return [name, words.barred, bar.join('')]
    const from = [
      strength(line),
      routes.join(' or '),
      ...following(line),
      ...(line.tooSmall ? [words.tooSmall] : []),
      ...bar,
    ]
    const limit = room ? besideTheBlocks(line, room) : []
    return [
      name,
      sayQuantity(line.drawn),
      limit.length === 0 ? from.join('; ') : [text(`${from.join('; ')}. `), ...limit],
    ]
  })
}

type Drawn = Extract<EmergencyLine, { kind: 'drawn' }>

/** A bolus of a local anaesthetic beside what blocks have taken of the animal's one limit: a note, never a bar. */
function besideTheBlocks({ row, amount }: Drawn, { taken, uncounted, left }: LocalRoom): Run[] {
  const most = left.get(row.drug)
  const dose = convert(amount, 'mg')
  if (!most || !dose || (taken.isZero() && !uncounted)) return []
  // What is left never looks more than it is.
  const about = { left: `${plain(most.value.toDecimalPlaces(1, Decimal.ROUND_DOWN))} mg`, dose: sayQuantity(dose) }
  const said = dose.value.gt(most.value) ? words.aboveLimit : words.withinLimit
  return [strong([fill(said, about), ...(uncounted ? [words.notAllCounted] : [])].join(' '))]
}

function strength({ row, stock, dilution }: Drawn): string {
  if (stock === null) return words.product
  const about = { strength: sayQuantity(stock), diluent: row.diluent ?? '' }
  if (!dilution) return fill(words.of, about)
  if (dilution.parts === 10) return fill(words.mixed, about)
  return fill(words.mixedAgain, { ...about, times: String(String(dilution.parts).length - 1) })
}

function following({ follow }: Drawn): string[] {
  if (!follow) return []
  const rate = `${plain(follow.rate.value.toSignificantDigits(3, Decimal.ROUND_HALF_UP))} mL/h`
  if (!follow.minutes) return [fill(words.follow, { rate })]
  return [fill(words.followFor, { rate, minutes: plain(follow.minutes.value) })]
}
