import type { Species } from '#core/animal/species.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { agentById } from './agent.ts'
import { readBetaLactamases } from './beta-lactamases.ts'
import type { BodySite, Edition } from './breakpoint.ts'
import { editionById } from './editions.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { type CultureFinding, say } from './findings.ts'
import { readInducible } from './inducible.ts'
import { readIntrinsic } from './intrinsic.ts'
import { differing, flagged, type Isolate, type Line, named } from './lines.ts'
import { readMethicillin } from './methicillin.ts'
import { readMultidrug } from './multidrug.ts'
import { type Organism, organismById } from './organism.ts'
import { type ReadBy, readDrug } from './read-drug.ts'
import type { DrugReading, IsolateReading, Phenotype } from './reading.ts'
import { numberFindings } from './say-numbers.ts'
import { readStandIns } from './stand-for.ts'

export type ReadingRequest = {
  readonly host: Species
  /** Where the breakpoint has to be for. An ear and a bulla are read as soft tissue: there are no values for otitis. */
  readonly site: BodySite
  /** One edition for the whole report; an old case is read by the one it was judged by. */
  readonly edition: Edition['id']
  /** The edition that the laboratory names, where it is known. */
  readonly laboratory?: Edition['id'] | null
  /** Whose disks and ends it uses, where only that is known of its standard. */
  readonly laboratoryConvention?: Edition['convention'] | null
  readonly isolates: readonly StoredIsolate[]
}

/**
 * Every isolate of a report read by one edition: number by number, then by what the numbers alone do not tell. What
 * nobody recognises is not read, and is said.
 *
 * @example readIsolates({ host: 'dog', site: 'soft-tissue', edition: 'clsi-vet01s-7', isolates }, susceptibility)
 */
export function readIsolates(request: ReadingRequest, facts: SusceptibilityFacts): IsolateReading[] {
  const edition = editionById(facts.editions, request.edition)
  const by: ReadBy = {
    host: request.host,
    site: request.site,
    edition,
    people: facts.people.map((id) => editionById(facts.editions, id)),
    proposals: proposalsOf(facts.editions),
    laboratoryConvention: request.laboratory
      ? editionById(facts.editions, request.laboratory).convention
      : (request.laboratoryConvention ?? null),
    printedSums: facts.rules.printedSums,
  }
  return request.isolates.map((isolate) => readIsolate(isolate, by, facts))
}

/** Looked for once: a table of results asks for one isolate at a time. */
const proposals = new WeakMap<readonly Edition[], readonly Edition[]>()
function proposalsOf(editions: readonly Edition[]): readonly Edition[] {
  const known = proposals.get(editions)
  const found = known ?? editions.filter(({ rows }) => rows.some(({ kind }) => kind === 'proposal'))
  if (!known) proposals.set(editions, found)
  return found
}

function readIsolate(stored: StoredIsolate, by: ReadBy, facts: SusceptibilityFacts): IsolateReading {
  const organism = organismById(facts.organisms, stored.species)
  if (!organism) return unread(stored, 'organism-not-recognised')
  if (organism.kind !== 'bacterium') return unread(stored, 'not-a-bacterium', organism)
  const lines = stored.results.map((row): Line => {
    const agent = agentById(facts.agents, row.agent) ?? null
    return { row, agent, read: readDrug(agent ? row : { ...row, agent: null }, organism, by) }
  })
  const twice = differing(lines)
  const marked = lines.map((line) => (twice.includes(line) ? flagged(line, 'same-drug-differs') : line))
  const first: Isolate = {
    organism,
    printed: stored.organism,
    tests: stored.tests,
    lines: marked,
    findings: openFindings(organism, marked, by, facts),
  }
  const { rules, agents } = facts
  const { status, isolate: afterMethicillin } = readMethicillin(first, rules.methicillin, by.edition.convention)
  const afterStandIns = readStandIns(readInducible(afterMethicillin, rules.inducible), rules.standsFor, agents)
  const { enzymes, isolate: afterEnzymes } = readBetaLactamases(afterStandIns, rules.betaLactamases)
  const last = readIntrinsic(afterEnzymes, rules.intrinsic)
  const multidrug = readMultidrug(last, status, by.edition.convention, rules.multidrug, rules.intrinsic, agents)
  return {
    key: stored.key,
    printed: stored.organism,
    organism: organism.id,
    results: last.lines.map(({ read }) => bare(read)),
    phenotype: { methicillinResistant: status, ...enzymes, ...multidrug },
    findings: [...last.findings, ...multidrugFinding(organism, multidrug, facts)],
  }
}

function openFindings(
  organism: Organism,
  lines: readonly Line[],
  by: ReadBy,
  facts: SusceptibilityFacts,
): CultureFinding[] {
  const unknown = lines.filter(({ read }) => read.flags.includes('drug-not-recognised')).map(({ read }) => read.printed)
  const twice = differing(lines)
  return [
    ...(organism.rank === 'group' ? [say('note', 'named-by-group-only', { organism: organism.name })] : []),
    ...(unknown.length > 0 ? [say('confirm', 'drug-not-recognised', { drugs: unknown.join(', ') })] : []),
    ...(twice.length > 0
      ? [say('confirm', 'same-drug-differs', { organism: organism.name, drugs: named(twice.slice(0, 1)) })]
      : []),
    ...lines.flatMap((line) => numberFindings(line, organism, by, facts)),
  ]
}

function multidrugFinding(
  organism: Organism,
  { multidrug, counted, tested, of }: ReturnType<typeof readMultidrug>,
  { rules }: SusceptibilityFacts,
): CultureFinding[] {
  if (multidrug === 'no' || multidrug === 'not-known') return []
  const about = {
    organism: organism.name,
    kind: multidrug,
    counted: counted.join(', '),
    tested: String(tested),
    of: String(of),
  }
  return [say('confirm', 'multidrug', about, rules.multidrug.least)]
}

/** Nothing is read of what nobody recognises, and nothing of a yeast: there is no breakpoint for it. */
function unread(
  stored: StoredIsolate,
  code: 'organism-not-recognised' | 'not-a-bacterium',
  organism?: Organism,
): IsolateReading {
  const category = organism ? 'no_breakpoint' : 'NI'
  return {
    key: stored.key,
    printed: stored.organism,
    organism: organism?.id ?? null,
    results: stored.results.map((row) => ({
      agent: row.agent,
      printed: row.drug,
      raw: row.raw,
      method: row.method,
      category,
      before: null,
      changedBy: null,
      possible: [],
      breakpoint: null,
      fallback: null,
      laboratory: row.category,
      flags: [],
    })),
    phenotype: nothingKnown,
    findings: [say(organism ? 'note' : 'confirm', code, { organism: organism?.name ?? stored.organism })],
  }
}

/** Of an isolate of which nothing was tested. */
export const nothingKnown: Phenotype = {
  methicillinResistant: 'not-applicable',
  esbl: 'not-applicable',
  ampc: 'not-applicable',
  carbapenemase: 'not-applicable',
  multidrug: 'not-known',
  counted: [],
  tested: 0,
  of: 0,
}

function bare({ doubt: _doubt, proposal: _proposal, ...reading }: Line['read']): DrugReading {
  return reading
}
