import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { labelWords as words } from '#content/wording/papers-labels.ts'
import { judgedAt, type LineNow, planNow } from '#core/dosing/plan-now.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import { bySeverity, fill } from '#core/outcome/finding.ts'
import { spellUnits } from '#core/units/unit-words.ts'
import { animalOf, operationOf, paperOf } from '../case/case-words.ts'
import { drugName } from '../case/drug-name.ts'
import { knowledgeOf } from '../case/knowledge-of.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { type Block, heading, list, paragraph, small } from '../render/model.ts'
import { labelsOf } from './label.ts'

/** One label for every syringe of an operation still to come; a line without one says why. */
export const syringeLabels: PaperDefinition = {
  id: 'syringe-labels',
  title: 'Syringe labels',
  per: 'operation',
  of: (input) => {
    const { file, on } = input
    const animal = animalOf(file)
    if (!animal) return notYet('no-identity')
    const operation = operationOf(input)
    if (!operation) return notYet('no-operation')
    if (operation.done) return notYet('operated')
    const { lines } = planNow(file, operation, judgedAt(file.theCase, on.at), knowledgeOf(file))
    if (lines.length === 0) return notYet('no-plan')
    const made = lines.map((line) => ({ line, own: labelsOf(line, { file, animal, operation, lines }) }))
    const labels = made.flatMap(({ own }) => (typeof own === 'string' ? [] : own))
    const without = made.flatMap(({ line, own }) => (typeof own === 'string' ? [sayNone(line, own, file)] : []))
    const none: Block[] = without.length === 0 ? [] : [heading(1, words.noneHeading), list(without)]
    return paperOf(input, {
      id: 'syringe-labels',
      title: fill(words.title, { name: animal.name, side: papersInEnglish.sides[operation.side] }),
      print: 'wall',
      blocks: [
        paragraph([small(words.howTo)]),
        ...(labels.length === 0 ? [] : [{ kind: 'labels', labels } as const]),
        ...none,
      ],
    })
  },
}

function sayNone({ entry, now, check }: LineNow, why: keyof typeof words.because, file: CaseFile): string {
  const { drug, line, drawn, amount } = entry.body
  const worst = bySeverity(now?.findings ?? [])[0]
  const because = fill(words.because[why], {
    was: sayUnit(drawn ?? amount),
    finding: worst ? sentence(spellUnits(fill(doseFindingWords[worst.code], worst.about))) : '',
    name: entry.body.how?.container?.name ?? '',
    person: check.kind === 'none' ? '' : authorNamed(file, check.check.header.author),
  })
  return fill(words.none, { drug: drugName(drug), line, because })
}

function sentence(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1)
}
