import type { Agent } from './agent.ts'
import { type CultureFinding, say } from './findings.ts'
import { changed, flagged, type Isolate, type Line } from './lines.ts'
import { meansAgent, meansOrganism } from './meant.ts'
import type { Organism } from './organism.ts'
import { printedCategory } from './printed-value.ts'
import type { Intrinsic } from './rules.ts'

/** The rule by which an organism is always resistant to a drug, if there is one. */
export function intrinsicRule(organism: Organism, agent: Agent, rules: readonly Intrinsic[]): Intrinsic | undefined {
  const known = kept.get(rules) ?? new Map<string, Intrinsic | undefined>()
  kept.set(rules, known)
  const key = `${organism.id} ${agent.id}`
  if (!known.has(key)) known.set(key, ruleFor(organism, agent, rules))
  return known.get(key)
}

/** Asked again for every drug of every isolate. */
const kept = new WeakMap<readonly Intrinsic[], Map<string, Intrinsic | undefined>>()

function ruleFor(organism: Organism, agent: Agent, rules: readonly Intrinsic[]): Intrinsic | undefined {
  const speaking = rules.filter((rule) => meansOrganism(rule, organism) && meansAgent(rule.drugs, agent))
  return speaking.find(({ verdict }) => verdict === 'R') ?? speaking[0]
}

/** What the organism is always resistant to is R whatever was printed; a printed S is kept, and doubted aloud. */
export function readIntrinsic(isolate: Isolate, rules: readonly Intrinsic[]): Isolate {
  const judged = isolate.lines.map((line) => judge(line, isolate.organism, rules))
  return {
    ...isolate,
    lines: judged.map(({ line }) => line),
    findings: [...isolate.findings, ...judged.flatMap(({ finding }) => finding ?? [])],
  }
}

type Judged = { readonly line: Line; readonly finding?: CultureFinding }

function judge(line: Line, organism: Organism, rules: readonly Intrinsic[]): Judged {
  const rule = line.agent && intrinsicRule(organism, line.agent, rules)
  if (!rule) return { line }
  const { read } = line
  const about = { drug: line.agent?.name ?? read.printed, organism: organism.name }
  const reported = line.row === null ? [] : [read.before ?? read.category, printedCategory(read.laboratory)]
  const susceptible = reported.some((one) => one === 'S' || one === 'SDD')
  if (rule.verdict === 'R') {
    const after = rule.lowLevel ? flagged(line, 'low-level-resistance') : line
    const turned = withoutStandIn(changed(after, 'R', 'intrinsic', rule))
    return susceptible
      ? { line: turned, finding: say('confirm', 'susceptible-against-nature', about, rule) }
      : { line: turned }
  }
  if (read.category === 'R' || read.category === 'NS' || read.category === 'no_breakpoint') {
    return { line: flagged(line, 'not-to-be-reported-susceptible') }
  }
  return {
    line: flagged(changed(line, 'NI', 'intrinsic', rule), 'not-to-be-reported-susceptible'),
    finding: say('note', 'not-to-be-reported-susceptible', about, rule),
  }
}

/** What holds for people or another species says nothing here either. */
function withoutStandIn(line: Line): Line {
  return { ...line, read: { ...line.read, fallback: null } }
}
