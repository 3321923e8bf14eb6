import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { emergencyNotes, emergencyTitles, lossActs } from '#content/wording/emergency.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { emergencySheetWords as words } from '#content/wording/papers-emergency.ts'
import { type EmergencySheet, type Placement, placements, type Waveform, waveforms } from '#core/dosing/emergency.ts'
import { type LocalRoom, localRoomOf } from '#core/dosing/local-room.ts'
import { judgedAt } from '#core/dosing/plan-now.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill } from '#core/outcome/finding.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { animalOf, paperOf, whenOf } from '../case/case-words.ts'
import { knowledgeOf } from '../case/knowledge-of.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { sayQuantity } from '../case/say-quantity.ts'
import { sourceLines } from '../case/sources-list.ts'
import { type Block, heading, list, paragraph, small, type Table } from '../render/model.ts'
import { lineNote } from './line-note.ts'
import { sayEnergy, whole, wholeVolume } from './say-whole.ts'
import { sheetOfCase } from './sheet-of-case.ts'
import { sheetRows } from './sheet-rows.ts'

/** One page for the wall, legible from the table; on the back, how each row is given and where it comes from. */
export const emergencySheetPaper: PaperDefinition = {
  id: 'emergency-sheet',
  title: 'Emergency sheet',
  per: 'case',
  of: (input) => {
    const { file } = input
    const animal = animalOf(file)
    const made = sheetOfCase(file)
    if (made.kind !== 'sheet' || !animal) return notYet(made.kind === 'no-weight' ? 'no-weight' : 'no-identity')
    const { sheet, weighed } = made
    const { weight } = sheet
    const about = { shown: inBothUnits(weight), how: words.how[weighed.body.how], date: whenOf(weighed) }
    return paperOf(input, {
      id: 'emergency-sheet',
      title: fill(words.title, { name: animal.name, weight: sayQuantity(weight) }),
      print: 'wall',
      blocks: [
        paragraph(fill(words.weighed, about)),
        ...weightNotes(sheet),
        wallTable(sheet, localRoomOf(file, judgedAt(file.theCase, input.on.at), knowledgeOf(file))),
        bloodTable(sheet),
        shockTable(sheet),
        paragraph([small(editionWords(sheet))]),
        { kind: 'page-break' },
        heading(1, words.behind),
        behindTable(sheet),
        heading(1, words.stepsHeading),
        list(sheet.groups.flatMap(({ call, steps }) => steps.map(({ value }) => `${emergencyTitles[call]}: ${value}`))),
        heading(1, words.sources),
        list(sourceLines(factsOf(sheet)).map((line) => [small(line)])),
      ],
    })
  },
}

function weightNotes({ findings }: EmergencySheet): Block[] {
  const lines = findings.map(({ code, about }) => fill(emergencyNotes[code], about))
  return lines.length === 0 ? [] : [{ kind: 'callout', tone: 'attention', word: papersInEnglish.pleaseNote, lines }]
}

function editionWords({ groups }: EmergencySheet): string {
  const editions = new Set(groups.flatMap(({ lines }) => lines.map(({ row }) => row.edition)))
  return fill(words.editions, { editions: [...editions].join('; ') })
}

function wallTable(sheet: EmergencySheet, room: LocalRoom | undefined): Table {
  const { call, drug, volume, from } = words.columns
  return {
    kind: 'table',
    caption: words.rowsCaption,
    rowHeader: true,
    columns: [
      { head: call, align: 'left', share: 2.3 },
      { head: drug, align: 'left', share: 2.6, weight: 'strong' },
      { head: volume, align: 'right', share: 2, weight: 'big' },
      { head: from, align: 'left', share: 4.1 },
    ],
    rows: sheet.groups.flatMap(({ call: which, lines }) =>
      sheetRows(lines, room).map((row, index) => [index === 0 ? emergencyTitles[which] : '', ...row]),
    ),
  }
}

function bloodTable({ blood, lossAt }: EmergencySheet): Table {
  const { part, volume, act } = words.bloodColumns
  const about = { volume: whole(blood.counted), low: whole(blood.low), high: whole(blood.high) }
  return {
    kind: 'table',
    caption: fill(words.bloodCaption, about),
    rowHeader: true,
    columns: [
      { head: part, align: 'left', share: 1.2 },
      { head: volume, align: 'right', share: 1.5, weight: 'strong' },
      { head: act, align: 'left', share: 6 },
    ],
    rows: lossAt.map(({ mark, volume: lost }) => [
      fill(words.percent, { percent: plain(new Decimal(mark.value.fraction).times(100)) }),
      wholeVolume(lost),
      lossActs[mark.value.code],
    ]),
  }
}

function shockTable({ energy }: EmergencySheet): Table {
  const said = (placement: Placement, waveform: Waveform): string => {
    const one = energy.find((entry) => entry.placement === placement && entry.waveform === waveform)
    if (!one) return papersInEnglish.notKnown
    return sayEnergy(one)
  }
  return {
    kind: 'table',
    caption: words.shockCaption,
    rowHeader: true,
    columns: [
      { head: words.paddles, align: 'left', share: 2 },
      ...waveforms.map(
        (waveform) => ({ head: words.waveforms[waveform], align: 'left', share: 3, weight: 'strong' }) as const,
      ),
    ],
    rows: placements.map((placement) => [
      words.placements[placement],
      ...waveforms.map((waveform) => said(placement, waveform)),
    ]),
  }
}

function behindTable(sheet: EmergencySheet): Table {
  const { drug, dose, note } = words.behindColumns
  return {
    kind: 'table',
    caption: words.behindCaption,
    rowHeader: true,
    columns: [
      { head: drug, align: 'left', share: 1.6 },
      { head: dose, align: 'left', share: 1.2 },
      { head: note, align: 'left', share: 6 },
    ],
    rows: sheet.groups.flatMap(({ lines }) =>
      lines.map((line) => [line.row.name, sayQuantity(line.row.dose.value), [small(lineNote(line))]]),
    ),
  }
}

function factsOf(sheet: EmergencySheet): Provenance[] {
  return [
    ...sheet.groups.flatMap(({ steps, lines }) => [
      ...steps,
      ...lines.flatMap(({ row }) => [row.dose, ...row.otherEditions, ...(row.follow ? [row.follow] : [])]),
    ]),
    emergencyFacts.bloodPerKg[sheet.species],
    ...sheet.lossAt.map(({ mark }) => mark),
    ...sheet.energy.map(({ perKg }) => perKg),
  ]
}
