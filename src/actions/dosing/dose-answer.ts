import { sources } from '#content/sources/index.ts'
import { animalWordsInEnglish } from '#content/wording/app-formulary.ts'
import { doseFindingWords, liftedWords, spelledUnits } from '#content/wording/dosing-findings.ts'
import type { BloodAnswer } from '#core/dosing/blood-answer.ts'
import { operations } from '#core/dosing/calc/registry.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { sayLifted } from '#core/dosing/emergency-declared.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import type { FluidPlan } from '#core/dosing/fluids.ts'
import type { Ceiling } from '#core/dosing/local-anaesthetic.ts'
import type { ChosenBy, DoseLine, Loading, Measured } from '#core/dosing/request.ts'
import { saidConditions } from '#core/dosing/said-conditions.ts'
import type { Dilution } from '#core/dosing/volume.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill, type Level } from '#core/outcome/finding.ts'
import { type ContainerAnswer, writeContainer } from './container-answer.ts'
import { type DripAnswer, writeDrip } from './drip-answer.ts'
import { type QuantityAnswer, write, writeRounded } from './write-quantity.ts'

export type FindingAnswer = {
  readonly code: string
  readonly level: Level
  readonly text: string
  /** A block that a declared emergency lifted. */
  readonly lifted?: true
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
    readonly recipe: { readonly product: QuantityAnswer; readonly diluent: QuantityAnswer }
  }
  readonly tablets?: {
    readonly each: QuantityAnswer
    readonly strength: QuantityAnswer
    readonly total?: QuantityAnswer
    /** Set when the label's own table of weights decided. */
    readonly label?: { readonly fromKg: string; readonly toKg: string }
  }
  readonly dispense?: { readonly doses: number; readonly days: number; readonly amount: QuantityAnswer }
  readonly perHour?: QuantityAnswer
  readonly perMinute?: QuantityAnswer
  readonly bag?: ContainerAnswer
  readonly syringe?: ContainerAnswer
  readonly loading?: {
    readonly dose: QuantityAnswer
    readonly amount: QuantityAnswer
    readonly volume?: QuantityAnswer
    readonly drawn?: QuantityAnswer
    readonly delivered?: QuantityAnswer
    readonly dilution?: LineAnswer['dilution']
    readonly rate?: QuantityAnswer
  }
  readonly fluid?: {
    readonly maintenance: { readonly perDay: QuantityAnswer; readonly perHour: QuantityAnswer }
    readonly hours: readonly { readonly hour: number; readonly rate: QuantityAnswer }[]
    readonly hoursTotal?: QuantityAnswer
    readonly deficit?: {
      readonly volume: QuantityAnswer
      readonly over: QuantityAnswer
      readonly perHour: QuantityAnswer
      readonly together: QuantityAnswer
    }
  }
  /** Drops of the gravity set that was told. */
  readonly drip?: DripAnswer
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
  /** The animal's blood volume, and how much of it may be lost; only when the haematocrit was asked about. */
  readonly blood?: {
    readonly volume: QuantityAnswer
    readonly low: QuantityAnswer
    readonly high: QuantityAnswer
    readonly weight: QuantityAnswer
    readonly allowableLoss: readonly {
      readonly dividedBy: 'start' | 'mean'
      readonly formula: string
      readonly volume: QuantityAnswer
    }[]
    readonly sources: readonly Cited[]
  }
  readonly findings: readonly FindingAnswer[]
  /** Everything that wants a reason and a second person, asked once; null when nothing does. */
  readonly confirmation: {
    readonly asks: readonly { readonly code: string; readonly lines: readonly string[]; readonly text: string }[]
    readonly secondName: 'now' | 'later'
  } | null
  readonly caution: string
}

/** Writes the engine's result as the JSON of the `dose` contract: numbers as numbers, sources with their citation. */
export function writeAnswer(result: DoseResult, caution: string, blood?: BloodAnswer): DoseAnswer {
  return {
    lines: result.lines.map((line) => writeLine(line, result.lines)),
    ceilings: result.ceilings.map(writeCeiling),
    ...(blood && { blood: writeBlood(blood) }),
    findings: result.findings.map(writeFinding),
    confirmation: writeConfirmation(result),
    caution,
  }
}

function writeConfirmation({ confirmation }: DoseResult): DoseAnswer['confirmation'] {
  if (!confirmation) return null
  const asks = confirmation.asks.map(({ finding, lines }) => {
    const { code, text } = writeFinding(finding)
    return { code, lines, text }
  })
  return { asks, secondName: confirmation.secondName }
}

/** One line as every answer says it. */
export function writeLine(line: DoseLine, lines: readonly DoseLine[]): LineAnswer {
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
    ...(line.verdict !== 'refused' && writeMeasured(line, lines)),
    findings: line.findings.map(writeFinding),
    cautions: line.cautions,
    never: line.never,
    ...(line.rows.length > 0 && { rows: line.rows }),
    sources: cited(line.sources),
  }
}

function writeMeasured(measured: Measured, lines: readonly DoseLine[]) {
  const { dilution, tablets, poured, dispense } = measured
  return {
    amount: write(measured.amount),
    ...(measured.dosingWeight && { dosingWeight: write(measured.dosingWeight) }),
    ...(measured.bodySurface && { bodySurface: write(measured.bodySurface) }),
    ...(measured.volume && { volume: write(measured.volume) }),
    ...(measured.drawn && { drawn: write(measured.drawn) }),
    ...(measured.delivered && { delivered: writeRounded(measured.delivered) }),
    ...(measured.rate && { rate: write(measured.rate) }),
    ...(measured.total && { total: write(measured.total) }),
    ...(measured.perHour && { perHour: write(measured.perHour) }),
    ...(measured.perMinute && { perMinute: write(measured.perMinute) }),
    ...(poured && { [poured.container.kind]: writeContainer(poured, lines) }),
    ...(measured.loading && { loading: writeLoading(measured.loading) }),
    ...(measured.fluid && { fluid: writeFluid(measured.fluid) }),
    ...(measured.drip && { drip: writeDrip(measured.drip) }),
    ...(dilution && { dilution: writeDilution(dilution) }),
    ...(tablets && {
      tablets: {
        each: write(tablets.each),
        strength: write(tablets.strength),
        ...(tablets.total && { total: write(tablets.total) }),
        ...(tablets.label && { label: tablets.label }),
      },
    }),
    ...(dispense && { dispense: { ...dispense, amount: write(dispense.amount) } }),
    secondPerson: measured.secondPerson,
  }
}

function writeDilution({ parts, strength, volume, drawn, recipe }: Dilution) {
  return {
    parts,
    strength: write(strength),
    volume: write(volume),
    drawn: write(drawn),
    recipe: { product: write(recipe.product), diluent: write(recipe.diluent) },
  }
}

function writeLoading({ dose, amount, volume, drawn, delivered, dilution, rate }: Loading) {
  return {
    dose: write(dose),
    amount: write(amount),
    ...(volume && { volume: write(volume) }),
    ...(drawn && { drawn: write(drawn) }),
    ...(delivered && { delivered: writeRounded(delivered) }),
    ...(dilution && { dilution: writeDilution(dilution) }),
    ...(rate && { rate: write(rate) }),
  }
}

function writeFluid({ maintenance, hours, hoursTotal, deficit }: FluidPlan) {
  return {
    maintenance: { perDay: writeRounded(maintenance.perDay), perHour: writeRounded(maintenance.perHour) },
    hours: hours.map(({ hour, rate }) => ({ hour, rate: writeRounded(rate) })),
    ...(hoursTotal && { hoursTotal: writeRounded(hoursTotal) }),
    ...(deficit && {
      deficit: {
        volume: write(deficit.volume),
        over: write(deficit.over),
        perHour: writeRounded(deficit.perHour),
        together: writeRounded(deficit.together),
      },
    }),
  }
}

function writeBlood({ volume, weight, allowable, sources: facts }: BloodAnswer) {
  return {
    volume: write(volume.counted),
    low: write(volume.low),
    high: write(volume.high),
    weight: write(weight),
    allowableLoss: allowable.map(({ volume: loss, dividedBy }) => ({
      dividedBy,
      formula: calcFormulaOf[dividedBy],
      volume: writeRounded(loss),
    })),
    sources: cited(facts),
  }
}

/** The same formulas as `calc` prints, by what they divide by. */
const calcFormulaOf = {
  start: operations.allowable_blood_loss.formula,
  mean: operations.allowable_blood_loss_mean.formula,
} as const

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

export function writeFinding(finding: DoseFinding): FindingAnswer {
  const { code, level, about } = finding
  const text = [
    sentence(fill(doseFindingWords[code], saidConditions(about, animalWordsInEnglish))),
    sayLifted(finding, liftedWords),
  ]
    .filter(Boolean)
    .join(' ')
  return { code, level, text, ...(finding.lifted && { lifted: true }), sources: cited(finding.provenance) }
}

/** Drug names are written small inside a sentence and large at its beginning; units as people say them. */
function sentence(text: string): string {
  const spelled = Object.entries(spelledUnits).reduce((said, [unit, words]) => said.replaceAll(unit, words), text)
  return spelled.charAt(0).toUpperCase() + spelled.slice(1)
}

/** Every source of every fact, in the one form that every answer has. */
const cited = (facts: readonly Provenance[]): Cited[] => cite(facts, sources)
