import { sources } from '#content/sources/index.ts'
import { caution } from '#content/wording/caution.ts'
import { emergencyNotes, emergencyTitles, lossActs } from '#content/wording/emergency.ts'
import type { EmergencyFacts, EmergencySheet, Placement, Waveform } from '#core/dosing/emergency.ts'
import type { EmergencyLine } from '#core/dosing/emergency-line.ts'
import type { EmergencyCall } from '#core/dosing/emergency-row.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill, type Level } from '#core/outcome/finding.ts'
import type { Decimal } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { lineNote } from '#documents/emergency-sheet/line-note.ts'

export type QuantityOut = { readonly value: number; readonly unit: Unit }

export type EmergencyRowOut = {
  readonly drug: string
  readonly name: string
  readonly routes: readonly string[]
  readonly dose: QuantityOut
  /** Null, like volume and drawn, only when the row is barred; `note` then says why. */
  readonly amount: QuantityOut | null
  /** The strength that `volume` is of; null when the dose is a volume of the product itself. */
  readonly stock: QuantityOut | null
  readonly volume: QuantityOut | null
  readonly drawn: QuantityOut | null
  readonly delivered: QuantityOut | null
  readonly note: string
  readonly edition: string
  readonly reason: string
  readonly otherEditions: readonly { readonly edition: string; readonly dose: QuantityOut }[]
  readonly barred: boolean
  readonly dilution?: { readonly parts: number; readonly from: QuantityOut; readonly diluent: string }
  readonly infusion?: { readonly rate: QuantityOut; readonly minutes?: QuantityOut; readonly total?: QuantityOut }
  readonly sources: readonly Cited[]
}

type EnergyOut = { readonly low: QuantityOut; readonly high: QuantityOut; readonly perKg: readonly QuantityOut[] }

export type EmergencyAnswer = {
  readonly species: string
  readonly weight: QuantityOut
  /** Both units: "12.25 kg (27 lb)". */
  readonly weightShown: string
  readonly findings: readonly {
    readonly code: string
    readonly level: Level
    readonly text: string
    readonly sources: readonly Cited[]
  }[]
  readonly groups: readonly {
    readonly call: EmergencyCall
    readonly title: string
    readonly steps: readonly { readonly text: string; readonly sources: readonly Cited[] }[]
    readonly rows: readonly EmergencyRowOut[]
  }[]
  readonly bloodVolume: QuantityOut & {
    readonly low: QuantityOut
    readonly high: QuantityOut
    readonly perKg: QuantityOut
    readonly sources: readonly Cited[]
  }
  readonly lossAt: readonly {
    readonly fraction: number
    readonly volume: QuantityOut
    readonly act: string
    readonly sources: readonly Cited[]
  }[]
  readonly energy: Readonly<Record<Placement, Readonly<Record<Waveform, EnergyOut>>>> & {
    readonly notes: readonly { readonly text: string; readonly sources: readonly Cited[] }[]
    readonly sources: readonly Cited[]
  }
  readonly caution: string
}

/** Writes the sheet as the JSON of the `emergency` contract. */
export function writeEmergency(sheet: EmergencySheet, weightShown: string, facts: EmergencyFacts): EmergencyAnswer {
  const perKg = facts.bloodPerKg[sheet.species]
  return {
    species: sheet.species,
    weight: write(sheet.weight),
    weightShown,
    findings: sheet.findings.map(({ code, level, about, from }) => ({
      code,
      level,
      text: fill(emergencyNotes[code], about),
      sources: cited(from),
    })),
    groups: sheet.groups.map(({ call, steps, lines }) => ({
      call,
      title: emergencyTitles[call],
      steps: steps.map((step) => ({ text: step.value, sources: cited(step) })),
      rows: lines.map(writeRow),
    })),
    bloodVolume: {
      ...write(sheet.blood.counted),
      low: write(sheet.blood.low),
      high: write(sheet.blood.high),
      perKg: write(perKg.value.counted),
      sources: cited(perKg),
    },
    lossAt: sheet.lossAt.map(({ mark, volume }) => ({
      fraction: Number(mark.value.fraction),
      volume: write(volume),
      act: lossActs[mark.value.code],
      sources: cited(mark),
    })),
    energy: writeEnergy(sheet, facts),
    caution,
  }
}

function writeRow(line: EmergencyLine): EmergencyRowOut {
  const { row } = line
  const base = {
    drug: row.drug,
    name: row.name,
    routes: row.routes,
    dose: write(row.dose.value),
    note: lineNote(line),
    edition: row.edition,
    reason: row.reason,
    otherEditions: row.otherEditions.map(({ edition, value }) => ({ edition, dose: write(value) })),
    sources: cited(row.dose, ...row.otherEditions, ...(row.follow ? [row.follow] : [])),
  }
  if (line.kind === 'barred') {
    const stock = row.stock && write(row.stock)
    return { ...base, amount: null, stock, volume: null, drawn: null, delivered: null, barred: true }
  }
  const { follow, dilution } = line
  return {
    ...base,
    amount: write(line.amount),
    stock: line.stock && write(line.stock),
    volume: write(line.volume),
    drawn: write(line.drawn),
    delivered: write({ value: line.delivered.value.toSignificantDigits(4), unit: line.delivered.unit }),
    barred: false,
    ...(dilution &&
      row.stock &&
      row.diluent && { dilution: { parts: dilution.parts, from: write(row.stock), diluent: row.diluent } }),
    ...(follow && {
      infusion: {
        rate: write(follow.rate),
        ...(follow.minutes && { minutes: write(follow.minutes) }),
        ...(follow.total && { total: write(follow.total) }),
      },
    }),
  }
}

function writeEnergy(sheet: EmergencySheet, facts: EmergencyFacts): EmergencyAnswer['energy'] {
  const of = (placement: Placement, waveform: Waveform): EnergyOut => {
    const found = sheet.energy.find((one) => one.placement === placement && one.waveform === waveform)
    if (!found) throw new Error(`The sheet has no energy for ${placement} ${waveform}.`)
    const { low, high } = found.perKg.value
    return { low: write(found.low), high: write(found.high), perKg: [write(low), write(high)] }
  }
  return {
    external: { biphasic: of('external', 'biphasic'), monophasic: of('external', 'monophasic') },
    internal: { biphasic: of('internal', 'biphasic'), monophasic: of('internal', 'monophasic') },
    notes: facts.energyNotes.map((note) => ({ text: note.value, sources: cited(note) })),
    sources: cited(...sheet.energy.map(({ perKg }) => perKg)),
  }
}

const cited = (...facts: readonly Provenance[]): Cited[] => cite(facts, sources)

const write = ({ value, unit }: { readonly value: Decimal; readonly unit: Unit }): QuantityOut => ({
  value: value.toNumber(),
  unit,
})
