import { papersInEnglish } from '#content/wording/papers.ts'
import { labelWords as words } from '#content/wording/papers-labels.ts'
import type { LineNow } from '#core/dosing/plan-now.ts'
import type { DrawnLine } from '#core/dosing/request.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { sayDay } from '../case/case-words.ts'
import { drugName } from '../case/drug-name.ts'
import { sayQuantity, sayUnit } from '../case/say-quantity.ts'
import { routeOf, sayUse } from '../dose-sheet/plan-tables.ts'
import { type Label, small, strong, type Words } from '../render/model.ts'

export type Around = {
  readonly file: CaseFile
  readonly animal: BodyOf<'identity'>
  readonly operation: OperationOnFile
}
type NoLabel = keyof typeof words.because

/**
 * The label of one line's syringe, or why there is none. What is refused, older than the animal, or disagreed with by
 * the second person is never labelled as if it could be given.
 *
 * @example labelOf(line, { file, animal, operation }) // { name: 'bupivacaine', big: '1.6 mL', … } or 'old'
 */
export function labelOf(line: LineNow, around: Around): Label | NoLabel {
  const { entry, now, check, given, isOld } = line
  if (given.length > 0) return 'given'
  if (!now) return 'gone'
  if (now.verdict === 'refused') return 'refused'
  if (isOld) return 'old'
  if (check.kind === 'disagrees') return 'disagrees'
  const big = drawnOf(now)
  if (big === null) return 'nothing-drawn'
  const strength = strengthOf(now, entry.body)
  if (strength === null) return 'no-strength'
  return {
    name: drugName(entry.body.drug),
    big,
    of: strength,
    lines: [
      ...dilutionLines(now),
      fill(words.dose, { amount: sayQuantity(now.amount), dose: sayUnit(entry.body.dose) }),
      fill(words.route, { route: routeOf(entry.body), purpose: sayUse(entry.body.use) }),
      [strong(sayAnimal(line, around))],
      [small(fill(words.date, { date: sayDay(around.operation.moment), line: entry.body.line }))],
      ...checkedLines(line, around.file),
    ],
    blanks: [words.preparedBy, words.preparedAt, ...(isSigned(line) ? [] : [words.checkedBy])],
  }
}

function drawnOf({ dilution, drawn, rate }: DrawnLine): string | null {
  const volume = dilution?.drawn ?? drawn
  if (volume) return sayQuantity(volume)
  return rate ? fill(words.byPump, { rate: sayQuantity(rate) }) : null
}

/** What stands in the syringe: the product, or its dilution; null when nobody wrote the strength. */
function strengthOf({ dilution, amount }: DrawnLine, { stock }: BodyOf<'planned-line'>): string | null {
  if (dilution) return fill(words.of, { strength: sayQuantity(dilution.strength) })
  if (stock) return fill(words.of, { strength: sayUnit(stock) })
  return amount.unit === 'mL' ? words.asItComes : null
}

/** How the dilution is made, where there is one. */
function dilutionLines({ dilution }: DrawnLine): string[] {
  if (!dilution) return []
  const { parts, recipe } = dilution
  const about = { parts: `${parts}`, product: sayQuantity(recipe.product), diluent: sayQuantity(recipe.diluent) }
  return [fill(words.diluted, about)]
}

/** A block is on a side, and its syringe says which; nothing else has one. */
function sayAnimal({ entry }: LineNow, { animal, operation }: Around): string {
  const about = { name: animal.name, species: papersInEnglish.species[animal.species] }
  if (entry.body.use !== 'local_block') return fill(words.animal, about)
  return fill(words.animalSide, { ...about, side: papersInEnglish.sides[operation.side] })
}

function isSigned({ check }: LineNow): boolean {
  return check.kind === 'agrees' || check.kind === 'nobody-available'
}

function checkedLines({ check }: LineNow, file: CaseFile): Words[] {
  if (check.kind === 'nobody-available') return [words.nobody]
  if (check.kind !== 'agrees') return []
  return [fill(words.checked, { person: authorNamed(file, check.check.header.author) })]
}
