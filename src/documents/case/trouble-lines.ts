import { ownCounting } from '#content/evidence/own-counting.ts'
import { complicationSchemes } from '#content/outcomes/schemes/index.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { troubleInEnglish as words } from '#content/wording/trouble.ts'
import { gradeBy } from '#core/complications/grade.ts'
import { sayGrade } from '#core/complications/say-graded.ts'
import { classOf } from '#core/complications/standing.ts'
import type { Trouble } from '#core/complications/trouble.ts'
import { troubleFactsOf } from '#core/complications/trouble-facts.ts'
import { troublesOf } from '#core/complications/troubles-of.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'

/**
 * Every trouble of a case, or of one operation, as one line for a colleague: what, when, what it needed, what it is held
 * for, and the grade by every scheme.
 */
export function troubleLines(file: CaseFile, operation: string | null = null): string[] {
  return troublesOf(file, ownCounting)
    .troubles.filter((one) => operation === null || one.operation === operation)
    .map((one) => `${aboutOf(file, one)} ${gradesOf(one)}`)
}

/** The grades of one trouble by every scheme, each named with its version. */
export function gradesOf(trouble: Trouble): string {
  const facts = troubleFactsOf(trouble)
  const grades = complicationSchemes.map((scheme) =>
    fill(words.paper.grade, {
      scheme: scheme.name,
      version: scheme.version,
      grade: sayGrade(gradeBy(scheme, facts), words),
    }),
  )
  return fill(words.paper.grades, { grades: grades.join('; ') })
}

function aboutOf(file: CaseFile, trouble: Trouble): string {
  const { event, side, firstNoticed, needed, before, lasting, text } = trouble
  const name = words.events[event]
  const line = fill(words.paper.line, {
    event: `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    whose: side === null ? words.paper.animal : fill(words.paper.ear, { side: papersInEnglish.sides[side] }),
    when: sayMoment(firstNoticed),
    needed: words.needs[needed],
    before: words.before[before],
    lasting: words.lasting[lasting],
    held: heldFor(file, trouble),
  })
  return text === null ? line : `${line} ${text}`
}

function heldFor(file: CaseFile, trouble: Trouble): string {
  const held = words.classes[classOf(trouble) ?? 'not-decided']
  const by = trouble.decision?.by
  return by ? fill(words.paper.decided, { held, person: personNamed(file, by) }) : held
}
