import type { OwnerWords } from '#content/languages/owner-words.ts'
import { options as optionFacts } from '#content/options/index.ts'
import { leafletEdition } from '#content/wording/leaflet.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { type Species, sides } from '#core/animal/species.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import { type OptionId, type ToldId, yearHeadings } from '#core/choice/option.ts'
import { optionNamed, optionsFor, type Told, toldFor } from '#core/choice/told.ts'
import { sessionIds } from '#core/choice/told-ids.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { fill } from '#core/outcome/finding.ts'
import { animalOf, earOf, paperOf } from '../case/case-words.ts'
import { otherLanguageNote, spokenWith, translationNote } from '../case/owner-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { readingNote } from '../case/reading-note.ts'
import { drawingPictures } from '../plate/plate-picture.ts'
import { type Block, facts, heading, list, paragraph, small, text } from '../render/model.ts'
import { earSentences } from './ears.ts'
import { figureBlocks } from './figures.ts'
import { numberSources } from './numbered-sources.ts'

/** What an owner takes home before deciding: every choice in equal depth, with what studies counted and what nobody knows. */
export const ownerLeaflet: PaperDefinition = {
  id: 'owner-leaflet',
  title: 'Leaflet for the owner',
  per: 'case',
  of: (input) => {
    const { file } = input
    const animal = animalOf(file)
    if (!animal) return notYet('no-identity')
    const { theCase } = file
    if (!theCase.latest('ear-findings') && !theCase.latest('choice')) return notYet('no-findings')
    if (theCase.latest('death')) return notYet('dead')
    const { name, species } = animal
    const options = optionsFor(species, optionIds, optionFacts)
    const both = affectedEars(theCase).length === 2 ? sessionIds : []
    const spoken = spokenWith(input)
    const said = spoken.words
    const words = said.leaflet
    const { numbered, listed } = numberSources(said)
    const told = options.flatMap((option) => {
      const procedure = procedureIds.find((id) => id === option)
      return [
        ...optionBlocks(option, species, said),
        ...answersFor(file, option, said).map((answer) => paragraph([text(answer)])),
        ...(procedure ? figureBlocks(procedure, { species, house: file.house }, numbered, said) : noFigures(said)),
      ]
    })
    const known = [...options, ...both].flatMap((id) => toldOf(id, species, said).flatMap((told) => told.known))
    numbered([words.basicsText, words.staysText, ...known])
    const read: Block[] = [
      ...otherLanguageNote(file, spoken),
      heading(1, words.ears),
      ...earSentences(file, said).map((sentence) => paragraph(sentence)),
      ...drawnForOwner(file, said),
      heading(1, words.basics),
      ...words.basicsText.value.map((line) => paragraph(line)),
      heading(1, words.choices),
      paragraph(words.choicesIntro),
      paragraph(fill(words.figuresIntro, { name })),
      ...told,
      ...bothEarsBlocks(both, species, said),
      heading(1, words.stays),
      list(words.staysText.value.map((line) => fill(line, { name }))),
      heading(1, words.own),
      paragraph(file.house.live('figures-approved').length > 0 ? words.ownCounted : words.ownText),
      heading(1, words.questions),
      list(words.questionsText),
      { kind: 'callout', tone: 'calm', word: words.undecidedWord, lines: [words.undecided] },
    ]
    return paperOf(input, {
      id: 'owner-leaflet',
      title: fill(words.title, { name }),
      words: said,
      blocks: [
        ...read,
        heading(1, words.sources),
        paragraph(words.sourcesIntro),
        paragraph([small(listed().join('\n'))]),
        facts([words.edition, fill(words.editionValue, { edition: leafletEdition })]),
        readingNote(read, spoken),
        ...translationNote(spoken),
      ],
    })
  },
}

/** What was drawn in front of the owner, for them to take home. */
function drawnForOwner(file: CaseFile, words: OwnerWords): Block[] {
  return sides.flatMap((side) => drawingPictures(file, side, ({ drawnFor }) => drawnFor === 'owner', words))
}

/** One choice by the same headings as every other: what it is, then what a year could look like. */
function optionBlocks(id: ToldId, species: Species, words: OwnerWords): Block[] {
  const { options } = words
  const told = toldOf(id, species, words)
  const ofYear = (one: Told) => yearHeadings.some((heading) => heading === one.heading)
  const asFact = ({ heading: about, text: said }: Told): [string, string] => [options.headings[about], said]
  return [
    heading(2, options.options[id].name),
    facts(...told.filter((one) => !ofYear(one)).map(asFact)),
    heading(3, options.year),
    facts(...told.filter(ofYear).map(asFact)),
  ]
}

function toldOf(id: ToldId, species: Species, { options }: OwnerWords): Told[] {
  return toldFor(optionNamed(id, optionFacts), species, options)
}

/** When both ears are ill: one session or two, told as the choices are. */
function bothEarsBlocks(both: readonly ToldId[], species: Species, words: OwnerWords): Block[] {
  if (both.length === 0) return []
  return [
    heading(1, words.leaflet.bothEars),
    paragraph(words.leaflet.bothEarsIntro),
    ...both.flatMap((id) => optionBlocks(id, species, words)),
  ]
}

function answersFor({ theCase }: CaseFile, option: OptionId, { leaflet, papers }: OwnerWords): string[] {
  return theCase.live('choice').flatMap((line) => {
    const side = earOf(line)
    const about = side ? papers.sides[side] : papers.notRecorded
    return line.body.options
      .filter((one) => one.option === option)
      .map(({ answer, because }) => fill(leaflet[answer], { side: about, because }))
  })
}

function noFigures({ leaflet }: OwnerWords): Block[] {
  return [paragraph([small(leaflet.noFigures)])]
}
