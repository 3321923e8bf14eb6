import { letterInEnglish as words } from '#content/wording/letter.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { specimenWords } from '#content/wording/report.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type ReportInLoop, type SpecimenLine, specimenLoopsOf } from '#core/owed/specimen-loop.ts'
import { earOf, sayDay } from '../case/case-words.ts'
import { type Block, list, paragraph } from '../render/model.ts'

type Tissue = NonNullable<BodyOf<'specimen-result'>['tissue']>

/** Every specimen with what the laboratory wrote, raw, and who read it. A result nobody read says so. */
export function resultBlocks(file: CaseFile): Block[] {
  const loops = specimenLoopsOf(file.theCase)
  if (loops.length === 0) return [paragraph(words.noSamples)]
  return [
    list(
      loops.flatMap(({ specimen, reports }) => {
        const all = reports.length === 0 ? [null] : reports
        return all.map((report) => specimenWordsOf(file, specimen, report))
      }),
    ),
  ]
}

function specimenWordsOf(file: CaseFile, line: SpecimenLine, report: ReportInLoop | null): string {
  const result = report?.result
  const side = earOf(line)
  const head = fill(words.sampleLine, {
    label: line.body.label,
    site: specimenWords.sites[line.body.site],
    side: side ? papersInEnglish.sides[side] : papersInEnglish.notRecorded,
    date: sayDay(line.header.happenedAt),
    state: result ? resultWords(result) : words.sampleWaiting,
  })
  return report ? [head, ...detail(report.result.body), readWords(file, report)].join('\n') : head
}

function resultWords({ body, header }: Line<BodyOf<'specimen-result'>>): string {
  const organisms = body.isolates.map(({ organism }) => organism).join(', ') || papersInEnglish.notRecorded
  const growth = fill(words.growth[body.growth], { organisms })
  return fill(words.sampleResult, {
    status: specimenWords.status[body.status],
    date: sayDay(header.happenedAt),
    growth,
  })
}

/** Raw, as the laboratory printed it; nothing is interpreted in a letter. */
function detail({ isolates, tissue, text }: BodyOf<'specimen-result'>): string[] {
  const tested = isolates
    .filter(({ results }) => results.length > 0)
    .map(({ organism, results }) => {
      const said = results.map(({ drug, raw }) => `${drug} ${raw}`).join(', ')
      return fill(words.resistance, { organism, results: said })
    })
  return [...tested, ...(tissue ? [tissueWords(tissue)] : []), ...(text === null ? [] : [text])]
}

function tissueWords({ diagnosis, margins, marginMillimetres }: Tissue): string {
  const edge = words.edge[margins]
  const free = marginMillimetres === null ? edge : fill(words.edgeOf, { edge, mm: marginMillimetres })
  return fill(words.tissue, { diagnosis, edge: free })
}

function readWords(file: CaseFile, { reads }: ReportInLoop): string {
  const read = reads.at(-1)
  if (!read) return words.notRead
  const { author, happenedAt } = read.header
  const person = author.kind === 'person' ? personNamed(file, author.person) : author.kind
  return fill(words.readDecision, { person, date: sayDay(happenedAt), text: read.body.text })
}
