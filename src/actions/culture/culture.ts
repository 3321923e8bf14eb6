import { sources } from '#content/sources/index.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { caution } from '#content/wording/caution.ts'
import { cultureFindingWords, noChoiceWords } from '#content/wording/culture.ts'
import { compareEditions, type EditionDifference } from '#core/culture/compare-editions.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { editionById } from '#core/culture/editions.ts'
import type { CultureFinding } from '#core/culture/findings.ts'
import { methicillinName } from '#core/culture/methicillin.ts'
import { organismById } from '#core/culture/organism.ts'
import { type ReadingRequest, readIsolates } from '#core/culture/read-isolates.ts'
import type {
  Category,
  DrugReading,
  IsolateReading,
  NoChoice,
  Phenotype,
  UsedBreakpoint,
} from '#core/culture/reading.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import { fill } from '#core/outcome/finding.ts'
import { type AboutAnimal, type OptionAnswer, optionsOf } from './culture-options.ts'
import { readCultureRequest } from './culture-request.ts'

type SaidBreakpoint = {
  readonly standard: string
  readonly host: string
  readonly site: string
  readonly organism: string
  readonly step: UsedBreakpoint['step']
  readonly S: string | null
  readonly between: string | null
  readonly R: string | null
  readonly dose: string | null
  readonly sources: readonly Cited[]
}
type SaidFinding = {
  readonly code: string
  readonly level: CultureFinding['level']
  readonly text: string
  readonly sources: readonly Cited[]
}

export type CultureAnswer = {
  readonly standard: string
  /** Where the laboratory's edition is known and another: what it says otherwise. */
  readonly laboratory?: {
    readonly standard: string
    readonly differences: readonly (Omit<EditionDifference, 'key' | 'printed'> & {
      readonly id: string
      readonly drug: string
    })[]
  }
  readonly isolates: readonly {
    readonly id: string
    readonly organism: string
    /** What it is taken for; null where nobody knows it. */
    readonly species: string | null
    readonly results: readonly {
      readonly drug: string
      /** Null for a drug nobody knows. */
      readonly agent: string | null
      readonly category: Category
      readonly possible?: readonly Category[]
      readonly breakpoint?: SaidBreakpoint
      /** Of people or of another species: apart, and never the category. */
      readonly fallback?: { readonly category: Category; readonly breakpoint: SaidBreakpoint }
      /** Without a breakpoint: why. */
      readonly none?: { readonly code: NoChoice; readonly text: string }
      readonly raw: string
      /** What the number alone gave, when a rule changed it. */
      readonly before?: Category
      readonly changedBy?: string
      readonly because?: readonly Cited[]
      readonly laboratory?: string
      readonly flags: readonly string[]
    }[]
    readonly phenotype: {
      readonly mr: string
      readonly esbl: Phenotype['esbl']
      readonly ampc: Phenotype['ampc']
      readonly carbapenemase: Phenotype['carbapenemase']
      readonly mdr: string
      /** What an incomplete panel does not exclude. */
      readonly possible: readonly string[]
      /** The categories that counted as not susceptible. */
      readonly categories: readonly string[]
      readonly tested: number
      readonly of: number
    }
    readonly findings: readonly SaidFinding[]
  }[]
  /** What could be used, first what should be taken first; empty without an animal. */
  readonly options: readonly OptionAnswer[]
  readonly caution: string
}

/**
 * Reads a culture as programs send it. A drug without a breakpoint, or a value that cannot be told, is an answer;
 * malformed input throws an InputError.
 *
 * @example culture({ host: 'dog', specimen: 'middle-ear', isolates: [{ id: '1', organism: 'Proteus mirabilis', results: [] }] })
 */
export function culture(input: unknown): CultureAnswer {
  const request = readCultureRequest(input)
  const edition = editionById(susceptibility.editions, request.edition)
  const readings = readIsolates(request, susceptibility)
  return {
    standard: editionName(edition),
    ...(request.laboratory && { laboratory: besides(request, request.laboratory, readings) }),
    isolates: readings.map(isolate),
    options: optionsOf(input as AboutAnimal, request, readings),
    caution,
  }
}

function besides(
  request: ReadingRequest,
  laboratory: string,
  readings: readonly IsolateReading[],
): NonNullable<CultureAnswer['laboratory']> {
  return {
    standard: editionName(editionById(susceptibility.editions, laboratory)),
    differences: compareEditions(request, readings, susceptibility).map(({ key, printed, ...rest }) => ({
      id: key,
      drug: printed,
      ...rest,
    })),
  }
}

function isolate(reading: IsolateReading): CultureAnswer['isolates'][number] {
  const { key, printed, organism, results, phenotype, findings } = reading
  return {
    id: key,
    organism: printed,
    species: organism,
    results: results.map(drug),
    phenotype: said(reading, phenotype),
    findings: findings.map(({ code, level, about, provenance }) => ({
      code,
      level,
      text: fill(cultureFindingWords[code], about),
      sources: cite(provenance, sources),
    })),
  }
}

function drug(reading: DrugReading): CultureAnswer['isolates'][number]['results'][number] {
  const { agent, printed, raw, category, before, changedBy, because, possible, laboratory, flags, none } = reading
  return {
    drug: printed === '' ? (agent ?? '') : printed,
    agent,
    category,
    ...(possible.length > 0 && { possible }),
    ...(reading.breakpoint && { breakpoint: breakpoint(reading.breakpoint) }),
    ...(reading.fallback && {
      fallback: { category: reading.fallback.category, breakpoint: breakpoint(reading.fallback.breakpoint) },
    }),
    ...(category === 'no_breakpoint' && none && { none: { code: none, text: noChoiceWords[none] } }),
    raw,
    ...(before !== null && { before }),
    ...(changedBy !== null && { changedBy }),
    ...(because && { because: cite([because], sources) }),
    ...(laboratory !== null && { laboratory }),
    flags,
  }
}

function breakpoint(used: UsedBreakpoint): SaidBreakpoint {
  const row = editionById(susceptibility.editions, used.edition).rows.find(({ id }) => id === used.row)
  return {
    standard: used.standard,
    host: used.host,
    site: used.site,
    organism: used.organisms,
    step: used.step,
    S: used.susceptible,
    between: used.between,
    R: used.resistant,
    dose: used.dose,
    sources: row ? cite([row.ends, ...(row.dose ? [row.dose] : [])], sources) : [],
  }
}

/** MDR that is certain, and what an incomplete panel leaves possible above it. */
function said(
  { organism: id }: IsolateReading,
  { methicillinResistant, esbl, ampc, carbapenemase, multidrug, counted, tested, of }: Phenotype,
): CultureAnswer['isolates'][number]['phenotype'] {
  const organism = organismById(susceptibility.organisms, id)
  const resistant = methicillinResistant === 'yes' || methicillinResistant === 'presumed'
  const mr =
    resistant && organism
      ? methicillinName(organism, susceptibility.rules.methicillin)
      : methicillinWords[methicillinResistant]
  const mdr = multidrug === 'no' ? 'not_MDR' : multidrug === 'not-known' ? 'not_known' : multidrug
  const possible = multidrug === 'possible PDR' ? ['XDR', 'PDR'] : multidrug === 'possible XDR' ? ['XDR'] : []
  return {
    mr,
    esbl,
    ampc,
    carbapenemase,
    mdr: mdr === 'possible PDR' ? 'possible XDR' : mdr,
    possible,
    categories: counted,
    tested,
    of,
  }
}

const methicillinWords: Readonly<Record<Phenotype['methicillinResistant'], string>> = {
  yes: 'MR',
  presumed: 'MR',
  possible: 'possible',
  no: 'not_MR',
  'not-tested': 'not_tested',
  'not-applicable': 'not_applicable',
}
