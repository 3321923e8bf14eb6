import { owedRules } from '#content/follow-up/owed-rules.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { procedures } from '#content/procedures/index.ts'
import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { eyeStateOf } from '#core/owed/eye-state.ts'
import { settingOf } from '#core/owed/setting.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { earOf, type Operation, sayDay } from '../case/case-words.ts'
import { type Block, heading, paragraph } from '../render/model.ts'

type Look = {
  readonly at: string
  readonly happenedAt: Line<unknown>['header']['happenedAt']
  readonly blink: 'normal' | 'weak' | 'absent'
  readonly inBlock: boolean
}

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
  const last = sides.map((side) => ({ side, look: looksAt(file, side).at(-1) ?? null }))
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

/** Checks and rounds at which somebody examined the blink of a side, oldest first. */
function looksAt({ theCase }: CaseFile, side: Side): Look[] {
  const checks = theCase
    .live('check')
    .filter((line) => earOf(line) === side && line.body.seenBy !== 'owner-words')
    .map((line) => ({ line, blink: line.body.blink, inBlock: line.body.possibleBlockEffect }))
  const rounds = theCase.live('ward-score').map((line) => ({ line, blink: line.body[side].blink, inBlock: false }))
  return [...checks, ...rounds]
    .flatMap(({ line, blink, inBlock }) =>
      blink === 'not-assessed' ? [] : [{ at: line.at, happenedAt: line.header.happenedAt, blink, inBlock }],
    )
    .sort((a, b) => (a.at < b.at ? -1 : 1))
}

/** When it went home its blink was not known to be normal, so that the care was for it. */
function wasNotNormal(file: CaseFile, side: Side, at: string): boolean {
  return looksAt(file, side).findLast((look) => look.at <= at)?.blink !== 'normal'
}

function isAtRisk(file: CaseFile, operations: readonly Operation[]): boolean {
  const setting = settingOf(file, procedures, { rules: owedRules })
  return operations.some((operation) => {
    const dayOfOperation = dayOf({ at: operation.moment.at, zone: setting.zone })
    return eyeStateOf({ ...operation, dayOfOperation }, setting).risk.length > 0
  })
}

function sayLook(side: Side, look: Look | null, { home: words, papers, dates }: OwnerWords): string {
  const sideWord = papers.sides[side]
  if (!look) return fill(words.eyeNow['not-recorded'], { side: sideWord })
  const said = fill(words.eyeNow[look.blink], { side: sideWord, date: sayDay(look.happenedAt, dates) })
  return look.inBlock ? `${said} ${words.eyeBlock}` : said
}
