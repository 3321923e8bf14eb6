import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { agentPrinted, organismPrinted } from './recognised.ts'
import type { LaboratoryReport, ReportedDrug, ReportStatus } from './report.ts'
import { termOf } from './terms.ts'

type Body = BodyOf<'specimen-result'>
type Facts = Pick<SusceptibilityFacts, 'agents' | 'organisms'>

/** What a person said of a report where it does not say it itself. A name taken for nothing known is null. */
export type Answers = {
  readonly status: ReportStatus | null
  readonly growth: Body['growth'] | null
  /** What its bare numbers are; `unknown` keeps them as printed, and nothing is read from them. */
  readonly unit: 'mg/L' | 'mm' | 'unknown' | null
  readonly organisms: Readonly<Record<string, string | null>>
  readonly agents: Readonly<Record<string, string | null>>
}
export const noAnswers: Answers = { status: null, growth: null, unit: null, organisms: {}, agents: {} }

export type Question =
  | { readonly kind: 'status' | 'growth' | 'unit' }
  | { readonly kind: 'organism' | 'agent'; readonly printed: string; readonly near: readonly string[] }

/**
 * What must still be said before a report can be filed.
 *
 * @example questionsOf(report, noAnswers, susceptibility) // [{ kind: 'agent', printed: 'Marb X', near: [] }]
 */
export function questionsOf(report: LaboratoryReport, answers: Answers, facts: Facts): Question[] {
  const drugs = report.isolates.flatMap((isolate) => isolate.drugs)
  const bare = drugs.some((drug) => isBare(drug))
  const organisms = report.isolates.flatMap(({ organism, code }): Question[] => {
    const { id, near } = organismPrinted(organism, code, facts)
    return id !== null || Object.hasOwn(answers.organisms, organism)
      ? []
      : [{ kind: 'organism', printed: organism, near }]
  })
  const agents = drugs.flatMap(({ drug, code }): Question[] => {
    const { id, near } = agentPrinted(drug, code, facts)
    return id !== null || Object.hasOwn(answers.agents, drug) ? [] : [{ kind: 'agent', printed: drug, near }]
  })
  return [
    ...(report.status === null && answers.status === null ? [{ kind: 'status' } as const] : []),
    ...(report.growth === null && answers.growth === null ? [{ kind: 'growth' } as const] : []),
    ...(bare && answers.unit === null ? [{ kind: 'unit' } as const] : []),
    ...onceEach([...organisms, ...agents]),
  ]
}

function onceEach(questions: readonly Question[]): Question[] {
  const seen = new Set<string>()
  return questions.filter((one) => {
    const key = 'printed' in one ? `${one.kind} ${one.printed}` : one.kind
    const before = seen.has(key)
    seen.add(key)
    return !before
  })
}

/** A plain number of which nothing says whether it is milligrams in a litre or millimetres. */
function isBare({ value, unit }: ReportedDrug): boolean {
  return value !== null && unit === null && /^(<=|>=|<|>)?[\d./]+$/.test(value)
}

export type Standing = {
  readonly specimen: string
  /** A contact. */
  readonly laboratory: string | null
  readonly came: Body['came']
}

/**
 * The entry's body of a report whose questions are answered; null while one is open.
 *
 * @example resultBody(report, answers, { specimen: specimen.header.id, laboratory: null, came: 'hl7' }, susceptibility)
 */
export function resultBody(report: LaboratoryReport, answers: Answers, standing: Standing, facts: Facts): Body | null {
  const status = report.status ?? answers.status
  const growth = report.growth ?? answers.growth
  if (status === null || growth === null || questionsOf(report, answers, facts).length > 0) return null
  const said = report.text.join('\n').slice(0, 10_000)
  return {
    specimen: standing.specimen,
    status,
    growth,
    came: standing.came,
    laboratory: standing.laboratory,
    accession: report.accession,
    standard: report.standard,
    isolates: report.isolates.map(({ key, organism, code, amount, drugs, tests }) => ({
      key,
      organism,
      species: organismPrinted(organism, code, facts).id ?? termOf(answers.organisms, organism),
      amount,
      results: drugs.map((drug) => storedDrug(drug, answers, facts)),
      tests: [...tests],
    })),
    tissue: null,
    text: said === '' ? null : said,
  }
}

function storedDrug(drug: ReportedDrug, answers: Answers, facts: Facts): Body['isolates'][number]['results'][number] {
  const unit = isBare(drug) ? (answers.unit === 'unknown' ? null : answers.unit) : drug.unit
  return {
    drug: drug.drug,
    agent: agentPrinted(drug.drug, drug.code, facts).id ?? termOf(answers.agents, drug.drug),
    method: drug.value === null || unit === null ? null : unit === 'mm' ? 'DISK' : 'MIC',
    raw: drug.value === null ? (drug.category ?? '') : `${drug.value}${unit === null ? '' : ` ${unit}`}`,
    disk: drug.disk,
    category: drug.category,
  }
}
