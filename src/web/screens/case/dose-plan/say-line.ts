import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import type { DrawnLine } from '#core/dosing/request.ts'
import { fill } from '#core/outcome/finding.ts'
import { plain } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { sayAmount } from '#core/why/why.ts'
import { isDrawn, sayDraw } from '../doses.tsx'

const words = dosePlanInEnglish.line

/** What is drawn, counted out or set at the pump, or the amount alone: a setting of a vaporiser, a ribbon of ointment. */
export function sayTake(now: DrawnLine): string {
  if (!isDrawn(now)) return sayAmount(now.amount)
  const { tablets, drawn, volume, dilution } = now
  if (tablets) return sayDraw(now)
  return `${(drawn ?? volume ?? dilution) ? words.draw : words.run} ${sayDraw(now)}`
}

/** The exact amount, and beside the dose what the syringe really gives, as the dose sheet says it. */
export function sayDelivered(now: DrawnLine): string {
  const amount = isDrawn(now) ? [fill(words.amount, { amount: sayAmount(now.amount) })] : []
  const { delivered, dose } = now
  const gives = delivered && fill(words.gives, { delivered: sayRounded(delivered), dose: sayAmount(dose) })
  return [...amount, ...(gives ? [gives] : [])].join('; ')
}

function sayRounded({ value, unit }: NonNullable<DrawnLine['delivered']>): string {
  return `${plain(value.toSignificantDigits(3))} ${unitWord(unit)}`
}
