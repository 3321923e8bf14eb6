import { papersInEnglish } from '#content/wording/papers.ts'
import { specimenLabelWords as words } from '#content/wording/papers-specimen-labels.ts'
import { specimenWords } from '#content/wording/report.ts'
import { type CaseFile, contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Pot, potsOf } from '#core/theatre/specimens.ts'
import { sayMoment } from '#core/time/moment.ts'
import { animalOf, operationOf, paperOf, whenOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { type Label, paragraph, small, strong } from '../render/model.ts'

/** One small label for every pot of an operation: whose, which ear, from where, when, what is asked of it. */
export const specimenLabels: PaperDefinition = {
  id: 'specimen-labels',
  title: 'Labels for pots',
  per: 'operation',
  of: (input) => {
    const { file } = input
    const animal = animalOf(file)
    if (!animal) return notYet('no-identity')
    const operation = operationOf(input)
    if (!operation) return notYet('no-operation')
    const pots = potsOf(file.theCase, operation.id)
    if (pots.length === 0) return notYet('no-specimen')
    return paperOf(input, {
      id: 'specimen-labels',
      title: fill(words.title, { name: animal.name, side: papersInEnglish.sides[operation.side] }),
      blocks: [
        paragraph([small(words.howTo)]),
        { kind: 'labels', labels: pots.map((pot) => labelOf(pot, animal, file)) },
      ],
    })
  },
}

/** The side is that of the pot itself, never that of the booking. */
function labelOf({ specimen, side }: Pot, animal: BodyOf<'identity'>, file: CaseFile): Label {
  const { body } = specimen
  const about = {
    species: papersInEnglish.species[animal.species],
    birth: animal.born ? fill(papersInEnglish.born, { date: sayMoment(animal.born) }) : words.bornUnknown,
    chip: animal.chip === null ? words.chipUnknown : fill(papersInEnglish.chip, { chip: animal.chip }),
  }
  return {
    name: fill(words.who, { name: animal.name, household: householdOf(file) }),
    big: body.label,
    of: side === null ? words.unknownSide : fill(words.side, { side: papersInEnglish.sides[side] }),
    lines: [
      [strong(specimenWords.sites[body.site])],
      body.tests.map((test) => specimenWords.tests[test]).join(', '),
      fill(words.animal, about),
      fill(words.taken, { when: whenOf(specimen) }),
      [
        small(
          [
            fill(words.onBoard, { which: body.antibioticsOnBoard ?? words.noneOnBoard }),
            body.laboratory === null
              ? words.inHouse
              : fill(words.laboratory, { laboratory: contactNamed(file, body.laboratory) }),
          ].join(' · '),
        ),
      ],
    ],
    blanks: [],
  }
}

/** Whoever is named first in the household: two animals of one name are told apart by them. */
function householdOf(file: CaseFile): string {
  const [first] = file.theCase.latest('household')?.body.contacts ?? []
  return first ? contactNamed(file, first.contact) : words.noHousehold
}
