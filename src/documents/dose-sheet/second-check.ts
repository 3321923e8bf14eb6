import { doseSheetWords as words } from '#content/wording/papers-dose.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { whenOf } from '../case/case-words.ts'
import { drugName } from '../case/drug-name.ts'
import { type Block, paragraph } from '../render/model.ts'
import type { PlannedEntry } from './plan-tables.ts'

/** Who worked it out again; "nobody available" and "not yet" are printed as loudly as a name. */
export function secondCheckBlocks(file: CaseFile, planned: readonly PlannedEntry[]): Block[] {
  const ids = new Map(planned.map((line) => [line.header.id, drugName(line.body.drug)]))
  const checks = file.theCase.live('second-check').filter(({ body }) => body.of.some((id) => ids.has(id)))
  const checked = new Set(checks.flatMap(({ body }) => body.of))
  const missing = planned.filter(({ header }) => !checked.has(header.id)).map(({ body }) => drugName(body.drug))
  return [
    ...checks.map((line) => checkBlock(file, line, named(line.body.of.flatMap((id) => ids.get(id) ?? [])))),
    ...(missing.length === 0
      ? []
      : [stop('attention', words.secondWords.missing, fill(words.secondMissing, { lines: named(missing) }))]),
  ]
}

function checkBlock(file: CaseFile, line: Line<BodyOf<'second-check'>>, lines: string): Block {
  const { author } = line.header
  const person = author.kind === 'person' ? personNamed(file, author.person) : author.kind
  const about = { person, when: whenOf(line), lines, text: line.body.text ?? '' }
  switch (line.body.verdict) {
    case 'agrees':
      return paragraph(fill(words.secondAgrees, about))
    case 'disagrees':
      return stop('stop', words.secondWords.disagrees, fill(words.secondDisagrees, about))
    case 'nobody-available':
      return stop('attention', words.secondWords.agrees, fill(words.secondNobody, about))
  }
}

function stop(tone: 'stop' | 'attention', word: string, line: string): Block {
  return { kind: 'callout', tone, word, lines: [line] }
}

/** Each drug once, in the order of the plan. */
function named(drugs: readonly string[]): string {
  return [...new Set(drugs)].join(', ')
}
