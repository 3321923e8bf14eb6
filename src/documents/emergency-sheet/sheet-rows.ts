import { emergencySheetWords as words } from '#content/wording/papers-emergency.ts'
import type { EmergencyLine } from '#core/dosing/emergency-line.ts'
import { fill } from '#core/outcome/finding.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { sayQuantity } from '../case/say-quantity.ts'
import type { Words } from '../render/model.ts'

/** Drug, volume to draw, and from what: the three cells that are read from the table in an emergency. */
export function sheetRows(lines: readonly EmergencyLine[]): (readonly [Words, Words, Words])[] {
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
    return [name, sayQuantity(line.drawn), from.join('; ')]
  })
}

type Drawn = Extract<EmergencyLine, { kind: 'drawn' }>

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
