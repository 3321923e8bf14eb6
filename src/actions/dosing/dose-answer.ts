import { sources } from '#content/sources/index.ts'
import { doseFindingWords, spelledUnits } from '#content/wording/dosing-findings.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import type { Ceiling } from '#core/dosing/local-anaesthetic.ts'
import type { ChosenBy, DoseLine, Measured } from '#core/dosing/request.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill, type Level } from '#core/outcome/finding.ts'
import type { Decimal } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'

export type QuantityAnswer = { readonly value: number; readonly unit: Unit }
export type FindingAnswer = {
  readonly code: string
  readonly level: Level
  readonly text: string
  readonly sources: readonly Cited[]
}

export type LineAnswer = {
  readonly id: string
  readonly drug: string
  readonly use: string
  readonly route?: string
  readonly verdict: DoseLine['verdict']
  readonly dose?: QuantityAnswer
  readonly chosenBy?: ChosenBy
  readonly range?: { readonly low: QuantityAnswer; readonly high: QuantityAnswer }
  readonly interval?: string
  readonly amount?: QuantityAnswer
  readonly dosingWeight?: QuantityAnswer
  readonly bodySurface?: QuantityAnswer
  readonly volume?: QuantityAnswer
  readonly drawn?: QuantityAnswer
  readonly delivered?: QuantityAnswer
  readonly rate?: QuantityAnswer
  readonly total?: QuantityAnswer
  readonly dilution?: {
    readonly parts: number
    readonly strength: QuantityAnswer
    readonly volume: QuantityAnswer
    readonly drawn: QuantityAnswer
  }
  readonly tablets?: {
    readonly each: QuantityAnswer
    readonly strength: QuantityAnswer
    readonly total?: QuantityAnswer
  }
  readonly secondPerson?: boolean
  readonly findings: readonly FindingAnswer[]
  readonly cautions: readonly string[]
  readonly never: readonly string[]
  readonly rows?: readonly string[]
  readonly sources: readonly Cited[]
}

export type DoseAnswer = {
  readonly lines: readonly LineAnswer[]
  readonly ceilings: readonly {
    readonly group: string
    readonly used: number
    readonly granted: number
    readonly limit: number
    readonly infusion: number
    readonly parts: readonly {
      readonly kind: string
      readonly drug: string
      readonly line?: string
      readonly amount: QuantityAnswer
      readonly limit: QuantityAnswer
      readonly fraction: number
      readonly counted: boolean
    }[]
    readonly sources: readonly Cited[]
  }[]
  readonly findings: readonly FindingAnswer[]
  readonly caution: string
}

/** Writes the engine's result as the JSON of the `dose` contract: numbers as numbers, sources with their citation. */
export function writeAnswer(result: DoseResult, caution: string): DoseAnswer {
  return {
    lines: result.lines.map(writeLine),
    ceilings: result.ceilings.map(writeCeiling),
    findings: result.findings.map(writeFinding),
    caution,
  }
}

function writeLine(line: DoseLine): LineAnswer {
  return {
    id: line.id,
    drug: line.drug,
    use: line.use,
    ...(line.route && { route: line.route }),
    verdict: line.verdict,
    ...(line.dose && { dose: write(line.dose) }),
    ...(line.chosenBy && { chosenBy: line.chosenBy }),
    ...(line.range && { range: { low: write(line.range.low), high: write(line.range.high) } }),
    ...(line.interval && { interval: line.interval }),
    ...(line.verdict !== 'refused' && writeMeasured(line)),
    findings: line.findings.map(writeFinding),
    cautions: line.cautions,
    never: line.never,
    ...(line.rows.length > 0 && { rows: line.rows }),
    sources: cited(line.sources),
  }
}

function writeMeasured(measured: Measured) {
  const { dilution, tablets } = measured
  return {
    amount: write(measured.amount),
    ...(measured.dosingWeight && { dosingWeight: write(measured.dosingWeight) }),
    ...(measured.bodySurface && { bodySurface: write(measured.bodySurface) }),
    ...(measured.volume && { volume: write(measured.volume) }),
    ...(measured.drawn && { drawn: write(measured.drawn) }),
    ...(measured.delivered && { delivered: writeRounded(measured.delivered) }),
    ...(measured.rate && { rate: write(measured.rate) }),
    ...(measured.total && { total: write(measured.total) }),
    ...(dilution && {
      dilution: {
        parts: dilution.parts,
        strength: write(dilution.strength),
        volume: write(dilution.volume),
        drawn: write(dilution.drawn),
      },
    }),
    ...(tablets && {
      tablets: {
        each: write(tablets.each),
        strength: write(tablets.strength),
        ...(tablets.total && { total: write(tablets.total) }),
      },
    }),
    secondPerson: measured.secondPerson,
  }
}

function writeCeiling(ceiling: Ceiling): DoseAnswer['ceilings'][number] {
  return {
    group: ceiling.group,
    used: ceiling.used.toNumber(),
    granted: ceiling.granted.toNumber(),
    limit: ceiling.limit.toNumber(),
    infusion: ceiling.infusion.toNumber(),
    parts: ceiling.parts.map(({ mass, limit, fraction, ...part }) => ({
      ...part,
      amount: write(mass),
      limit: write(limit),
      fraction: fraction.toNumber(),
    })),
    sources: cited(ceiling.sources),
  }
}

type Written = { readonly value: Decimal; readonly unit: Unit }

function write({ value, unit }: Written): QuantityAnswer {
  return { value: value.toNumber(), unit }
}

/** What a syringe really gives is shown to four places; nobody reads further. */
function writeRounded({ value, unit }: Written): QuantityAnswer {
  const rounded = value.abs().lt('0.1') ? value.toSignificantDigits(4) : value.toDecimalPlaces(4)
  return { value: rounded.toNumber(), unit }
}

function writeFinding(finding: DoseFinding): FindingAnswer {
  const { code, level, about } = finding
  const text = sentence(fill(doseFindingWords[code], about))
  return { code, level, text, sources: cited(finding.provenance) }
}

/** Drug names are written small inside a sentence and large at its beginning; units as people say them. */
function sentence(text: string): string {
  const spelled = Object.entries(spelledUnits).reduce((said, [unit, words]) => said.replaceAll(unit, words), text)
  return spelled.charAt(0).toUpperCase() + spelled.slice(1)
}

/** Every source of every fact, in the one form that every answer has. */
const cited = (facts: readonly Provenance[]): Cited[] => cite(facts, sources)
