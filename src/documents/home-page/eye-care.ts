import { owedRules } from '#content/follow-up/owed-rules.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { procedures } from '#content/procedures/index.ts'
import type { Side } from '#core/animal/species.ts'
import { type BlinkLook, blinkLooksOf } from '#core/home/last-blink.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { eyeStateOf } from '#core/owed/eye-state.ts'
import { settingOf } from '#core/owed/setting.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { type Operation, sayDay } from '../case/case-words.ts'
import { type Block, heading, paragraph } from '../render/model.ts'

/**
 * The eye of each operated side by its last examination, and whether its care goes on: until a normal blink was seen, again
 * when it is weak later, and as long as tears or cornea need it. What an owner told ends nothing.
 *
 * @param care what the discharge says of it, what is said where it says nothing, since when it is at home, and
 *   whether any medicine is still given
 */
export function eyeBlocks(
  file: CaseFile,
  operations: readonly Operation[],
  care: { readonly written: string | null; readonly missing: string; readonly from: string; readonly inTable: boolean },
  said: OwnerWords,
): Block[] {
  const words = said.home
  const sides = [...new Set(operations.map(({ side }) => side))]
  const last = sides.map((side) => ({ side, look: blinkLooksOf(file.theCase, side).at(-1) ?? null }))
  const blinks = last.length > 0 && last.every(({ look }) => look?.blink === 'normal')
  const atRisk = isAtRisk(file, operations)
  const ended = blinks && !atRisk && sides.some((side) => wasNotNormal(file, side, care.from))
  const toDo = ended ? null : (care.written ?? (blinks && !atRisk ? null : care.missing))
  return [
    heading(1, words.eye),
    ...last.map(({ side, look }) => paragraph(sayLook(side, look, said))),
    ...(toDo === null ? [] : [paragraph(toDo)]),
    ...(blinks ? [] : [paragraph(words.eyeUntil)]),
    ...(blinks && atRisk ? [paragraph(words.eyeRisk)] : []),
    ...(ended && care.written !== null ? [paragraph(words.eyeEnded)] : []),
    ...(ended && care.inTable ? [paragraph(words.eyeMedicineGoesOn)] : []),
  ]
}

/** When it went home its blink was not known to be normal, so that the care was for it. */
function wasNotNormal(file: CaseFile, side: Side, at: string): boolean {
  return blinkLooksOf(file.theCase, side).findLast((look) => look.at <= at)?.blink !== 'normal'
}

function isAtRisk(file: CaseFile, operations: readonly Operation[]): boolean {
  const setting = settingOf(file, procedures, { rules: owedRules })
  return operations.some((operation) => {
    const dayOfOperation = dayOf({ at: operation.moment.at, zone: setting.zone })
    return eyeStateOf({ ...operation, dayOfOperation }, setting).risk.length > 0
  })
}

function sayLook(side: Side, look: BlinkLook | null, { home: words, papers, dates }: OwnerWords): string {
  const sideWord = papers.sides[side]
  if (!look) return fill(words.eyeNow['not-recorded'], { side: sideWord })
  const said = fill(words.eyeNow[look.blink], { side: sideWord, date: sayDay(look.happenedAt, dates) })
  return look.inBlock ? `${said} ${words.eyeBlock}` : said
}
