import { findingWords, letterInEnglish as words } from '#content/wording/letter.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { otis3Total } from '#core/workup/otis3.ts'
import { earOf, sayDay, whenOf } from '../case/case-words.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { type Block, paragraph, type Table } from '../render/model.ts'

/** A coded answer in words; a code without a word of its own is read with its dashes taken out. */
export function sayCode(code: string): string {
  return findingWords.codes[code] ?? code.replaceAll('-', ' ')
}

/** Both ears side by side, then face and eye, then what a scan said. */
export function findingBlocks(file: CaseFile): Block[] {
  const baseline = file.theCase.latest('baseline')
  return [
    pairTable(words.findingsCaption, earRows(file)),
    ...(baseline
      ? [
          pairTable(
            fill(words.baselineCaption, {
              when: whenOf(baseline),
              sedation: words.sedation[baseline.body.beforeSedation ? 'yes' : 'no'],
            }),
            faceRows(baseline.body),
          ),
        ]
      : []),
    ...imagingBlocks(file),
  ]
}

type Pair = readonly [sign: string, left: string, right: string]

function pairTable(caption: string, rows: readonly Pair[]): Table {
  const { sign, LEFT, RIGHT } = words.findingsColumns
  return {
    kind: 'table',
    caption,
    rowHeader: true,
    columns: [
      { head: sign, align: 'left', share: 1.4 },
      { head: LEFT, align: 'left', share: 1.5 },
      { head: RIGHT, align: 'left', share: 1.5 },
    ],
    rows,
  }
}

const earSigns = [
  'examined',
  'canalFeel',
  'painOnPressing',
  'painOnJawOpening',
  'swelling',
  'drainingTract',
  'discharge',
  'stenosis',
  'drum',
  'mass',
  'flapCarriage',
] as const

function earRows({ theCase }: CaseFile): Pair[] {
  const of = (side: Side) => theCase.live('ear-findings').findLast((line) => earOf(line) === side)?.body
  const [left, right] = [of('LEFT'), of('RIGHT')]
  const said = (body: typeof left, sign: (typeof earSigns)[number]) =>
    sign === 'mass' ? massWords(body) : seen(body?.[sign])
  const rows = earSigns.map((sign): Pair => [findingWords.signs[sign], said(left, sign), said(right, sign)])
  return [...rows, [findingWords.signs.otis3, otisWords(left), otisWords(right)]]
}

function seen(code: string | undefined): string {
  return code === undefined ? words.notExamined : sayCode(code)
}

/** Place and size stand beside a mass that is there, and nowhere else. */
function massWords(findings: BodyOf<'ear-findings'> | undefined): string {
  if (findings?.mass !== 'yes') return seen(findings?.mass)
  const { massPlace, massSize } = findings
  return fill(findingWords.massWhere, {
    place: findingWords.massPlaces[massPlace],
    size: findingWords.massSizes[massSize],
  })
}

function otisWords(findings: BodyOf<'ear-findings'> | undefined): string {
  if (!findings) return words.notExamined
  const total = otis3Total(findings.otis3)
  return total.kind === 'answer' ? String(total.answer) : papersInEnglish.notKnown
}

const faceSigns = ['blink', 'lipOrEarDroop', 'nostril', 'pupil', 'thirdEyelidUp', 'fluorescein'] as const

function faceRows({ LEFT, RIGHT }: BodyOf<'baseline'>): Pair[] {
  const tears = (face: BodyOf<'baseline'>['LEFT']) =>
    face.tearTest === null ? sayCode('not-assessed') : sayUnit(face.tearTest)
  return [
    ...faceSigns.map((sign): Pair => [findingWords.signs[sign], sayCode(LEFT[sign]), sayCode(RIGHT[sign])]),
    [findingWords.signs.tearTest, tears(LEFT), tears(RIGHT)],
  ]
}

function imagingBlocks({ theCase }: CaseFile): Block[] {
  return theCase.live('imaging').map((line) =>
    paragraph(
      fill(words.imaging, {
        modality: line.body.modality,
        date: sayDay(line.header.happenedAt),
        by: line.body.reportedBy,
        text: line.body.text,
      }),
    ),
  )
}
