import type { Provenance } from '#core/evidence/sourced.ts'
import { say } from './findings.ts'
import { rungsOf } from './ladder.ts'
import { limitMet } from './limit.ts'
import { asPrinted, changed, flagged, type Isolate, type Line, lineOf, named, warnsOf } from './lines.ts'
import { meansAgent, meansOrganism } from './meant.ts'
import { readPrinted } from './printed-value.ts'
import type { Phenotype } from './reading.ts'
import type { BetaLactamaseRules } from './rules.ts'
import { strainSays } from './strain-words.ts'

export type Enzymes = Pick<Phenotype, 'esbl' | 'ampc' | 'carbapenemase'>
type Answer = { readonly enzymes: Enzymes; readonly isolate: Isolate }

/**
 * Enzymes that break cephalosporins or carbapenems: screened by limits, confirmed beside an inhibitor or by the
 * laboratory's own test. A confirmed one takes the cephalosporins off that a house rule names.
 */
export function readBetaLactamases(isolate: Isolate, rules: BetaLactamaseRules): Answer {
  const esbl = esblOf(isolate, rules)
  const ampc = ampcOf(isolate, rules, esbl.status)
  const carbapenemase = carbapenemaseOf(isolate, rules)
  const about = { organism: isolate.organism.name }
  const notOffered = (line: Line) => line.agent !== null && rules.esblNotOffered.value.includes(line.agent.id)
  const lines = isolate.lines.map((line) => {
    if (!notOffered(line) || line.read.category === 'R') return line
    if (esbl.status === 'confirmed') return changed(line, 'R', 'esbl', rules.esblNotOffered)
    return esbl.status === 'screen-positive' ? flagged(line, 'esbl-suspected') : line
  })
  const findings = [
    ...(esbl.status === 'confirmed'
      ? [say('confirm', 'esbl-confirmed', { ...about, by: esbl.by }, rules.esblNotOffered)]
      : []),
    ...(esbl.status === 'screen-positive'
      ? [say('confirm', 'esbl-screen-positive', { ...about, by: esbl.by }, rules.esblConfirmation)]
      : []),
    ...(ampc.status === 'suspected'
      ? [say('confirm', 'ampc-suspected', { ...about, by: ampc.by }, ...ampc.because)]
      : []),
    ...(carbapenemase.status === 'suspected'
      ? [say('confirm', 'carbapenemase-suspected', { ...about, by: carbapenemase.by }, rules.carbapenemase)]
      : []),
  ]
  return {
    enzymes: { esbl: esbl.status, ampc: ampc.status, carbapenemase: carbapenemase.status },
    isolate: { ...isolate, lines, findings: [...isolate.findings, ...findings] },
  }
}

type Told<Status> = { readonly status: Status; readonly by: string }

function esblOf({ organism, printed: name, lines, tests }: Isolate, rules: BetaLactamaseRules): Told<Enzymes['esbl']> {
  const limits = rules.esblScreen.filter((limit) => meansOrganism(limit, organism))
  if (limits.length === 0) return { status: 'not-applicable', by: '' }
  const outcomes = limits.flatMap((limit) =>
    lines.flatMap((line) => {
      const outcome = line.row && limitMet(limit, line.row)
      return outcome ? [{ line, outcome }] : []
    }),
  )
  const met = outcomes.filter(({ outcome }) => outcome === 'met').map(({ line }) => line)
  const test = tests.find((one) => one.test === 'esbl-confirmation')?.result
  if (test === 'positive') return { status: 'confirmed', by: asPrinted(met) }
  if (strainSays(name, 'esbl')) return { status: 'confirmed', by: name }
  const pairs = pairsOf(lines, rules)
  if (pairs.some(({ gained }) => gained)) {
    return {
      status: 'confirmed',
      by: asPrinted(pairs.filter(({ gained }) => gained).flatMap(({ lines: both }) => both)),
    }
  }
  if (test === 'negative' || pairs.length > 0)
    return { status: met.length > 0 ? 'not-confirmed' : 'screen-negative', by: '' }
  if (met.length > 0) return { status: 'screen-positive', by: asPrinted(met) }
  return { status: outcomes.some(({ outcome }) => outcome === 'not-met') ? 'screen-negative' : 'not-tested', by: '' }
}

/** Each cephalosporin tested with and without the inhibitor, and whether it gained enough beside it. */
function pairsOf(lines: readonly Line[], rules: BetaLactamaseRules) {
  const { pairs, zoneGain, dilutionsFall } = rules.esblConfirmation.value
  return pairs.flatMap(({ alone, withInhibitor }) => {
    const one = lineOf(lines, alone)
    const beside = lineOf(lines, withInhibitor)
    const gain = one && beside && gainBetween(one, beside)
    if (!one || !beside || !gain) return []
    return [{ lines: [one, beside], gained: gain.by >= (gain.of === 'zone' ? zoneGain : dilutionsFall) }]
  })
}

/** The gain that is certain: of a value printed with a sign its nearer end. */
function gainBetween(alone: Line, beside: Line): { readonly of: 'zone' | 'dilutions'; readonly by: number } | null {
  const [one, other] = [alone, beside].map(({ row }) => row && readPrinted(row.raw, row.method))
  if (one?.kind === 'zone' && other?.kind === 'zone') {
    return { of: 'zone', by: Number(other.millimetres) - Number(one.millimetres) }
  }
  if (one?.kind !== 'mic' || other?.kind !== 'mic') return null
  const [before, after] = [rungsOf(one.sign, one.amount), rungsOf(other.sign, other.amount)]
  return before && after && { of: 'dilutions', by: before.from - after.to }
}

function ampcOf(
  { organism, lines, tests }: Isolate,
  rules: BetaLactamaseRules,
  esbl: Enzymes['esbl'],
): Told<Enzymes['ampc']> & { readonly because: readonly Provenance[] } {
  const limits = rules.ampcScreen.filter((limit) => meansOrganism(limit, organism))
  if (limits.length === 0) return { status: 'not-applicable', by: '', because: [] }
  const test = tests.find((one) => one.test === 'ampc')?.result
  if (test === 'positive') return { status: 'suspected', by: '', because: [] }
  const screened = limits.flatMap((limit) =>
    lines.filter(
      (line) =>
        line.agent?.id === limit.agent && ((line.row && limitMet(limit, line.row) === 'met') || warnsOf(line) === 'R'),
    ),
  )
  const broken = lines.filter((line) => line.agent && meansAgent(rules.ampcWith, line.agent) && warnsOf(line) === 'R')
  const suspected = test !== 'negative' && esbl !== 'confirmed' && screened.length > 0 && broken.length > 0
  return {
    status: suspected ? 'suspected' : 'no',
    by: suspected ? named([...screened, ...broken]) : '',
    because: limits.map(({ value }) => value),
  }
}

function carbapenemaseOf(
  { organism, printed, lines, tests }: Isolate,
  rules: BetaLactamaseRules,
): Told<Enzymes['carbapenemase']> {
  if (!meansOrganism(rules.carbapenemase.value, organism)) return { status: 'not-applicable', by: '' }
  const test = tests.find((one) => one.test === 'carbapenemase')?.result
  const above = lines.filter(
    (line) =>
      line.agent &&
      meansAgent(rules.carbapenemase.value, line.agent) &&
      !rules.carbapenemase.value.notToldBy.some(
        (rule) => meansOrganism(rule, organism) && rule.agents.includes(line.agent?.id ?? ''),
      ) &&
      notSusceptible(line),
  )
  const called = strainSays(printed, 'carbapenemase')
  const suspected = test === 'positive' || called || (test !== 'negative' && above.length > 0)
  return { status: suspected ? 'suspected' : 'no', by: above.length > 0 ? named(above) : printed }
}

function notSusceptible(line: Line): boolean {
  const category = warnsOf(line)
  return category === 'I' || category === 'R' || category === 'NS'
}
