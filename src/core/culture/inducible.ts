import { say } from './findings.ts'
import { changed, flagged, type Isolate, type Line, lineOf, warnsOf } from './lines.ts'
import { meansOrganism } from './meant.ts'
import { printedCategory } from './printed-value.ts'
import type { InducibleRules } from './rules.ts'

/**
 * Erythromycin resistant and clindamycin not: the D-test decides. Not done, clindamycin is not to be relied on, and in
 * some species it reads R.
 */
export function readInducible(isolate: Isolate, rules: InducibleRules): Isolate {
  const { organism, lines, tests } = isolate
  const clindamycin = lineOf(lines, rules.agent)
  const erythromycin = lineOf(lines, rules.inducedBy)
  const test = tests.find((one) => one.test === 'd-test')?.result
  if (!clindamycin || !meansOrganism(rules, organism) || warnsOf(clindamycin) === 'R') return isolate
  const induced =
    test === 'positive' ||
    warnsOf(erythromycin) === 'R' ||
    printedCategory(erythromycin?.read.laboratory ?? null) === 'R'
  if (!induced || test === 'negative') return isolate
  const untestedIsR = meansOrganism({ organisms: rules.untestedIsR }, organism)
  const turn = (line: Line) => {
    const marked = test === 'positive' ? line : flagged(line, 'd-test-missing')
    return test === 'positive' || untestedIsR ? changed(marked, 'R', 'inducible', rules.because) : marked
  }
  const about = { organism: organism.name, drug: clindamycin.agent?.name ?? '', by: erythromycin?.agent?.name ?? '' }
  return {
    ...isolate,
    lines: lines.map((line) => (line.agent?.id === rules.agent ? turn(line) : line)),
    findings: [
      ...isolate.findings,
      test === 'positive'
        ? say('confirm', 'inducible-resistance', about, rules.because)
        : say('confirm', 'd-test-missing', about, rules.because),
    ],
  }
}
