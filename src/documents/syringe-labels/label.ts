import { howInEnglish } from '#content/wording/app-how.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { labelWords as words } from '#content/wording/papers-labels.ts'
import type { LineNow } from '#core/dosing/plan-now.ts'
import type { DrawnLine } from '#core/dosing/request.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { plain } from '#core/units/quantity.ts'
import { sayDay } from '../case/case-words.ts'
import { drugName } from '../case/drug-name.ts'
import { sayQuantity, sayUnit } from '../case/say-quantity.ts'
import { routeOf, sayUse } from '../dose-sheet/plan-tables.ts'
import { type Label, small, strong, type Words } from '../render/model.ts'

export type Around = {
  readonly file: CaseFile
  readonly animal: BodyOf<'identity'>
  readonly operation: OperationOnFile
  /** All lines of the plan: some share a bag. */
  readonly lines: readonly LineNow[]
}
type NoLabel = keyof typeof words.because

/**
 * The labels of one line: of its syringe, or of the bag it runs from, and of its loading dose; or why there is none.
 * What is refused, older than the animal, or disagreed with by the second person is never labelled as if it could be
 * given. A bag that several lines share has one label, which stands with the first of them.
 *
 * @example labelsOf(line, { file, animal, operation, lines }) // [{ name: 'bupivacaine', big: '1.6 mL', … }] or 'old'
 */
export function labelsOf(line: LineNow, around: Around): readonly Label[] | NoLabel {
  const bar = barOf(line)
  if (bar !== null) return bar
  const { entry, now } = line
  if (now === null || now.verdict === 'refused') return 'refused'
  const { poured } = now
  if (poured) {
    const together = around.lines.filter((one) => poured.parts.some((part) => part.line === one.entry.body.line))
    if (together.some((one) => barOf(one) !== null)) return 'shared-waits'
    const first = poured.parts[0]?.line === entry.body.line
    const container = first ? [containerLabel(poured, together, line, around)] : []
    const labels = [...container, ...loadingLabels(line, now, around)]
    return labels.length === 0 ? 'shared' : labels
  }
  const big = drawnOf(now)
  if (big === null) return 'nothing-drawn'
  const strength = strengthOf(now, entry.body)
  if (strength === null) return 'no-strength'
  const own: Label = {
    name: drugName(entry.body.drug),
    big,
    of: strength,
    lines: [
      ...dilutionLines(now.dilution),
      fill(words.dose, { amount: sayQuantity(now.amount), dose: sayUnit(entry.body.dose) }),
      ...(now.drawn && now.rate ? [fill(words.byPump, { rate: sayQuantity(now.rate) })] : []),
      ...foot(line, around),
    ],
    blanks: blanksOf(line),
  }
  return [own, ...loadingLabels(line, now, around)]
}

/** Why a line has no label at all. */
function barOf({ now, check, given, isOld }: LineNow): NoLabel | null {
  if (given.length > 0) return 'given'
  if (!now) return 'gone'
  if (now.verdict === 'refused') return 'refused'
  if (isOld) return 'old'
  return check.kind === 'disagrees' ? 'disagrees' : null
}

/** What hangs on the pump: everything in it, at which rate, and that it is tied to it. */
function containerLabel(
  { parts, container, final, pump, lasts }: NonNullable<DrawnLine['poured']>,
  together: readonly LineNow[],
  line: LineNow,
  around: Around,
): Label {
  const nameOf = (id: string) => drugName(together.find((one) => one.entry.body.line === id)?.entry.body.drug ?? id)
  const [only, second] = parts
  const rate = sayQuantity(pump)
  return {
    name: parts.map((part) => nameOf(part.line)).join(' + '),
    big:
      only && !second
        ? fill(words.inContainer, { amount: sayQuantity(only.amount), final: sayQuantity(final) })
        : sayQuantity(final),
    of: fill(words.byPump, { rate }),
    lines: [
      ...parts.map((part) => [
        strong(
          fill(words.part, {
            drug: nameOf(part.line),
            amount: sayQuantity(part.amount),
            drawn: sayQuantity(part.drawn),
            strength: sayQuantity(part.from),
          }),
        ),
      ]),
      fill(words.container, {
        name: container.name,
        fluid: container.fluid ? howInEnglish.fluids[container.fluid] : words.fluidUnsaid,
        hours: plain(lasts.value.toSignificantDigits(3)),
      }),
      [strong(fill(words.tied, { rate }))],
      ...foot(line, around),
    ],
    blanks: blanksOf(line),
  }
}

/** The syringe of a loading dose: it is never the syringe of the infusion. */
function loadingLabels(line: LineNow, { loading }: DrawnLine, around: Around): Label[] {
  const { stock, drug } = line.entry.body
  const taken = loading && (loading.dilution?.drawn ?? loading.drawn)
  if (!loading || !taken) return []
  const strength = loading.dilution?.strength ?? (stock && fromStored(stock))
  return [
    {
      name: drugName(drug),
      big: sayQuantity(taken),
      of: strength ? fill(words.of, { strength: sayQuantity(strength) }) : words.asItComes,
      lines: [
        [strong(words.loading)],
        ...dilutionLines(loading.dilution),
        fill(words.dose, { amount: sayQuantity(loading.amount), dose: sayQuantity(loading.dose) }),
        ...(loading.rate ? [fill(words.byPump, { rate: sayQuantity(loading.rate) })] : []),
        ...foot(line, around),
      ],
      blanks: blanksOf(line),
    },
  ]
}

function foot(line: LineNow, around: Around): Words[] {
  const { body } = line.entry
  return [
    fill(words.route, { route: routeOf(body), purpose: sayUse(body.use) }),
    [strong(sayAnimal(line, around))],
    [small(fill(words.date, { date: sayDay(around.operation.moment), line: body.line }))],
    ...checkedLines(line, around.file),
  ]
}

function blanksOf(line: LineNow): string[] {
  return [words.preparedBy, words.preparedAt, ...(isSigned(line) ? [] : [words.checkedBy])]
}

function drawnOf({ dilution, drawn, rate, tablets }: DrawnLine): string | null {
  if (tablets) return null
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
function dilutionLines(dilution: DrawnLine['dilution']): string[] {
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
