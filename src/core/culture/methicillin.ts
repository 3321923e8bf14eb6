import type { Provenance } from '#core/evidence/sourced.ts'
import type { Edition } from './breakpoint.ts'
import { say } from './findings.ts'
import { onLadder, rungsOf } from './ladder.ts'
import { limitMet } from './limit.ts'
import { asPrinted, changed, flagged, type Isolate, type Line, lineOf, named, warnsOf } from './lines.ts'
import { meansAgent, meansOrganism, nearness } from './meant.ts'
import type { Organism } from './organism.ts'
import { printedCategory, readPrinted } from './printed-value.ts'
import type { Phenotype } from './reading.ts'
import type { MethicillinRules, MethicillinTest } from './rules.ts'
import { strainSays } from './strain-words.ts'

export type Methicillin = Phenotype['methicillinResistant']
type Answer = { readonly status: Methicillin; readonly isolate: Isolate }

/**
 * Whether the isolate is methicillin-resistant by the tests of its species, and what follows: all beta-lactams R with
 * the tube's own category kept. Without an answer nothing is turned, but nothing is left unsaid either.
 */
export function readMethicillin(isolate: Isolate, rules: MethicillinRules, convention: Edition['convention']): Answer {
  const { organism } = isolate
  if (!meansOrganism(rules, organism)) return { status: 'not-applicable', isolate }
  const unused = (line: Line) =>
    rules.notUsed.some((rule) => line.agent?.id === rule.agent && meansOrganism(rule, organism))
  const lines = isolate.lines.map((line) => (unused(line) ? setAside(line) : line))
  const found = judge({ ...isolate, lines }, rules, convention, unused)
  const name = methicillinName(organism, rules)
  const about = { name, organism: organism.name }
  switch (found.status) {
    case 'yes':
    case 'presumed': {
      const code = found.status === 'yes' ? 'methicillin-resistant' : 'methicillin-presumed'
      const said = say('confirm', code, { ...about, by: found.by }, rules.becomesR)
      const after = lines.map((line) => (isBetaLactam(line, rules) ? resistant(line, rules.becomesR) : line))
      return {
        status: found.status,
        isolate: { ...isolate, lines: after, findings: [...isolate.findings, said, ...found.findings] },
      }
    }
    case 'possible': {
      const after = lines.map((line) => (isBetaLactam(line, rules) ? flagged(line, 'methicillin-possible') : line))
      return {
        status: found.status,
        isolate: { ...isolate, lines: after, findings: [...isolate.findings, ...found.findings] },
      }
    }
    case 'no':
      return {
        status: 'no',
        isolate: withoutIt({ ...isolate, lines, findings: [...isolate.findings, ...found.findings] }, rules),
      }
    default:
      return {
        status: found.status,
        isolate: { ...isolate, lines, findings: [...isolate.findings, ...found.findings] },
      }
  }
}

/** MRSP, MRSA …; of any other species MR and its name. */
export function methicillinName(organism: Organism, rules: MethicillinRules): string {
  const known = [organism.id, ...organism.groups].map((id) => rules.names[id]).find((name) => name !== undefined)
  return known ?? `MR ${organism.name}`
}

type Found = { readonly status: Methicillin; readonly by: string; readonly findings: Isolate['findings'] }

function judge(
  { organism, printed, tests, lines }: Isolate,
  rules: MethicillinRules,
  convention: Edition['convention'],
  unused: (line: Line) => boolean,
): Found {
  const about = { organism: organism.name, name: methicillinName(organism, rules) }
  const read = testsOf(rules.tests, organism, convention).flatMap((test) =>
    lines.flatMap((line) => {
      const outcome = line.row && limitMet(test, line.row)
      return outcome ? [{ test, line, outcome }] : []
    }),
  )
  const decides = read.filter(({ test }) => test.decides)
  const met = decides.filter(({ outcome }) => outcome === 'met')
  const against = read.filter(({ test, outcome }) => !test.decides && outcome === 'not-met')
  const disagree =
    met.length > 0
      ? against.map(({ test, line }) =>
          say(
            'confirm',
            'methicillin-standards-disagree',
            {
              ...about,
              drug: named([line]),
              raw: line.read.raw,
              decides: met.map((one) => one.test.standard).join(', '),
              other: test.standard,
            },
            test.value,
          ),
        )
      : []
  const gene = tests.filter(({ test }) => test === 'meca' || test === 'pbp2a')
  const genePositive = gene.some(({ result }) => result === 'positive')
  const geneNegative = gene.length > 0 && !genePositive
  const testDrugs = lines.filter((line) => isTestDrug(line, rules, organism) && !unused(line))
  const byWord = testDrugs.filter((line) => !read.some((one) => one.line === line))
  const saysR = byWord.filter((line) => printedCategory(line.read.laboratory) === 'R')
  const by = asPrinted([...met.map(({ line }) => line), ...saysR])
  if (genePositive) return { status: 'yes', by: gene.map(({ test }) => geneNames[test]).join(', '), findings: disagree }
  if (met.length > 0 || saysR.length > 0) {
    const conflict = geneNegative ? [say('confirm', 'methicillin-tests-disagree', { ...about, by })] : []
    const sure = met.some(({ test, line }) => !atDisputed(test, line))
    return {
      status: sure && !geneNegative ? 'yes' : 'presumed',
      by,
      findings: [...disagree, ...conflict],
    }
  }
  if (strainSays(printed, 'methicillin')) {
    return { status: 'presumed', by: printed, findings: [say('confirm', 'strain-named-resistant', { printed })] }
  }
  if (geneNegative) return { status: 'no', by: '', findings: [] }
  const open = decides.filter(({ outcome }) => outcome === 'open').map(({ line }) => line)
  const saidR = lines.filter(
    (line) => (unused(line) || testDrugs.includes(line)) && printedCategory(line.read.laboratory) === 'R',
  )
  if (open.length > 0 || saidR.length > 0) return possible('methicillin-possible', [...open, ...saidR], about)
  const negative = decides.length > 0 || byWord.some((line) => printedCategory(line.read.laboratory) === 'S')
  if (negative) return { status: 'no', by: '', findings: [] }
  const suspects = lines.filter(
    (line) => line.agent !== null && rules.suspectedBy.value.includes(line.agent.id) && resistantLine(line),
  )
  if (suspects.length > 0) return possible('methicillin-suspected', suspects, about, rules.suspectedBy)
  const tempting = lines.filter((line) => isBetaLactam(line, rules) && warnsOf(line) === 'S')
  const untested = say('confirm', 'methicillin-not-tested', { ...about, drugs: named(tempting) }, rules.becomesR)
  return { status: 'not-tested', by: '', findings: tempting.length > 0 ? [untested] : [] }
}

const geneNames: Readonly<Record<string, string>> = { meca: 'mecA', pbp2a: 'PBP2a' }

function possible(
  code: 'methicillin-possible' | 'methicillin-suspected',
  lines: readonly Line[],
  about: Readonly<Record<string, string>>,
  ...because: readonly Provenance[]
): Found {
  const by = asPrinted(lines)
  return { status: 'possible', by, findings: [say('confirm', code, { ...about, by }, ...because)] }
}

/** Of each drug and method the tests of the edition's own convention, and of those the ones nearest to the organism. */
function testsOf(
  all: readonly MethicillinTest[],
  organism: Organism,
  convention: Edition['convention'],
): MethicillinTest[] {
  const mine = all.flatMap((test) => {
    const near = nearness(test, organism)
    return near === null ? [] : [{ test, near }]
  })
  const ways = new Set(mine.map(({ test }) => `${test.agent} ${test.method}`))
  return [...ways].flatMap((way) => {
    const ofWay = mine.filter(({ test }) => `${test.agent} ${test.method}` === way)
    const ofConvention = ofWay.filter(({ test }) => test.convention === convention)
    const used = ofConvention.length > 0 ? ofConvention : ofWay
    const least = Math.min(...used.map(({ near }) => near))
    return used.filter(({ near }) => near === least).map(({ test }) => test)
  })
}

/** Exactly where the sources disagree: the value may be that one. */
function atDisputed({ presumedAt }: MethicillinTest, { row }: Line): boolean {
  const value = row && readPrinted(row.raw, row.method)
  const disputed = presumedAt === undefined ? null : onLadder(presumedAt)
  if (!disputed || value?.kind !== 'mic') return false
  const rungs = rungsOf(value.sign, value.amount)
  return rungs !== null && rungs.from <= disputed.rung && disputed.rung <= rungs.to
}

function isTestDrug(line: Line, rules: MethicillinRules, organism: Organism): boolean {
  return rules.tests.some((test) => test.agent === line.agent?.id && meansOrganism(test, organism))
}

function isBetaLactam(line: Line, rules: MethicillinRules): boolean {
  return line.agent !== null && meansAgent(rules.becomesR.value, line.agent)
}

function resistant(line: Line, because: Provenance): Line {
  return line.read.category === 'R' ? line : changed(line, 'R', 'methicillin-resistance', because)
}

function resistantLine(line: Line): boolean {
  const category = warnsOf(line)
  return category === 'R' || category === 'NS' || printedCategory(line.read.laboratory) === 'R'
}

/** A drug that says nothing in this species, neither for itself nor for methicillin. */
function setAside(line: Line): Line {
  const bare = { ...line.read, category: 'no_breakpoint', possible: [], breakpoint: null, fallback: null } as const
  return flagged({ ...line, read: bare }, 'not-used-in-this-species')
}

/** Not resistant: what reads S by that, what is to be repeated, and the beta-lactamase of penicillin. */
function withoutIt(isolate: Isolate, rules: MethicillinRules): Isolate {
  const { organism, lines, tests } = isolate
  const inferred = lines.map((line) =>
    line.agent && meansAgent(rules.withoutIt.value, line.agent) && onlyFallbackSaysS(line)
      ? changed(line, 'S', 'inferred', rules.withoutIt)
      : line,
  )
  const repeat = inferred.filter(
    (line) => line.agent && rules.repeatIfR.value.includes(line.agent.id) && line.read.category === 'R',
  )
  const { tested, becomesR } = rules.betaLactamase.value
  const enzyme =
    warnsOf(lineOf(inferred, tested)) === 'R' ||
    tests.some(({ test, result }) => test === 'beta-lactamase' && result === 'positive')
  const turned = inferred.filter(
    (line) => enzyme && line.agent && becomesR.includes(line.agent.id) && line.read.category !== 'R',
  )
  return {
    ...isolate,
    lines: inferred.map((line) =>
      turned.includes(line) ? changed(line, 'R', 'beta-lactamase', rules.betaLactamase) : line,
    ),
    findings: [
      ...isolate.findings,
      ...(repeat.length > 0
        ? [say('confirm', 'repeat-beta-lactam', { organism: organism.name, drugs: named(repeat) }, rules.repeatIfR)]
        : []),
      ...(turned.length > 0
        ? [say('note', 'beta-lactamase', { organism: organism.name, drugs: named(turned) }, rules.betaLactamase)]
        : []),
    ],
  }
}

/** A drug without a row of its own whose stand-in says S: what is printed does not speak against it. */
export function onlyFallbackSaysS({ read }: Line): boolean {
  return (
    read.category === 'no_breakpoint' && read.fallback?.category === 'S' && printedCategory(read.laboratory) !== 'R'
  )
}
