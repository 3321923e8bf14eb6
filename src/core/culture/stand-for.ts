import { type Agent, agentById } from './agent.ts'
import { type CultureFinding, say } from './findings.ts'
import { changed, type Isolate, inferredLine, type Line, lineOf, warnsOf } from './lines.ts'
import { meansAgent, meansOrganism } from './meant.ts'
import { onlyFallbackSaysS } from './methicillin.ts'
import { printedCategory } from './printed-value.ts'
import type { StandsFor } from './rules.ts'

/** One drug read from another, where the rules allow it; where they forbid what a reader may think, that is said. */
export function readStandIns(isolate: Isolate, rules: readonly StandsFor[], agents: readonly Agent[]): Isolate {
  return rules
    .filter(({ of }) => of === undefined || meansOrganism(of, isolate.organism))
    .reduce((so, rule) => apply(so, rule, agents), isolate)
}

function apply(isolate: Isolate, rule: StandsFor, agents: readonly Agent[]): Isolate {
  const tested = lineOf(isolate.lines, rule.tested)
  if (!tested) return isolate
  const { category } = tested.read
  switch (rule.carries) {
    case 'R':
      return warnsOf(tested) === 'R' ? allResistant(isolate, rule, tested) : isolate
    case 'all':
      return category === 'NI' || category === 'no_breakpoint' ? isolate : added(isolate, rule, tested, agents)
    case 'S':
      if (category === 'S') return upgraded(added(isolate, rule, tested, agents), rule, tested)
      return rule.openIfR && (category === 'R' || category === 'NS')
        ? said(isolate, rule, tested, agents, 'open-though-resistant')
        : isolate
    case 'nothing': {
      const tempting = warnsOf(tested) === 'S' || printedCategory(tested.read.laboratory) === 'S'
      return tempting ? said(isolate, rule, tested, agents, 'does-not-stand-for') : isolate
    }
  }
}

/** Against what its own number says too: a first step of resistance that the number does not show yet. */
function allResistant(isolate: Isolate, { reports, because }: StandsFor, tested: Line): Isolate {
  const lines = isolate.lines.map((line) =>
    line !== tested && line.agent && meansAgent(reports, line.agent) && line.read.category !== 'R'
      ? changed(line, 'R', 'inferred', because)
      : line,
  )
  return { ...isolate, lines }
}

/** Drugs that the rule names and nobody tested. */
function added(isolate: Isolate, { reports, because }: StandsFor, tested: Line, agents: readonly Agent[]): Isolate {
  const missing = untested(isolate, reports.agents ?? [], agents)
  return {
    ...isolate,
    lines: [...isolate.lines, ...missing.map((agent) => inferredLine(agent, tested.read.category, because))],
  }
}

/** Drugs on the report without a row of their own, where nothing printed speaks against it. */
function upgraded(isolate: Isolate, { reports, because }: StandsFor, tested: Line): Isolate {
  const lines = isolate.lines.map((line) =>
    line !== tested && line.agent && meansAgent(reports, line.agent) && onlyFallbackSaysS(line)
      ? changed(line, 'S', 'inferred', because)
      : line,
  )
  return { ...isolate, lines }
}

function said(
  isolate: Isolate,
  { reports, because }: StandsFor,
  tested: Line,
  agents: readonly Agent[],
  code: 'open-though-resistant' | 'does-not-stand-for',
): Isolate {
  const missing = untested(isolate, reports.agents ?? [], agents)
  if (missing.length === 0) return isolate
  const about = { tested: tested.agent?.name ?? '', other: missing.map(({ name }) => name).join(', ') }
  const finding: CultureFinding = say('note', code, about, because)
  return { ...isolate, findings: [...isolate.findings, finding] }
}

function untested({ lines }: Isolate, ids: readonly string[], agents: readonly Agent[]): Agent[] {
  return ids.flatMap((id) => (lineOf(lines, id) ? [] : (agentById(agents, id) ?? [])))
}
