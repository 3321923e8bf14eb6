import { expect, it, test } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { figuresRules } from '#content/follow-up/figures-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { countEvery, dueDays } from '#core/evidence/own/count-own.ts'
import { ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { ownRulesOf } from '#core/evidence/own/own-rules.ts'
import { readEntry } from '#core/journal/accept.ts'
import { fold } from '#core/journal/fold.ts'
import { rowsInOrder } from '#core/journal/journal-file.ts'
import { owedFigures } from '#core/owed/figures.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { addDays, startOfDay } from '#core/time/calendar-day.ts'
import { earsOn, lookAtFigures } from './figures-looked-at.ts'
import { demoCases } from './index.ts'
import { liveCharts } from './living/index.ts'
import { livingRows } from './living/people.ts'
import { practiceChart, registerRows, zone } from './practice.ts'

/** What is owed of the figures on the day the practice is opened, with and without somebody having looked two weeks ago. */
function owedOn(today: string, looked: boolean) {
  const cases = [...demoCases.map((one) => one.chart()), ...liveCharts(today)]
  const rows = rowsInOrder([...registerRows(), ...livingRows(today)])
  const practice = practiceChart()
  if (looked) lookAtFigures(practice, cases, rows, addDays(today, -16))
  const house = fold(practice.entries)
  const rules = ownRulesOf(house, ownCounting)
  const ears = earsOn(cases, practice, rows, today)
  return (['dog', 'cat'] as const).flatMap((species) => {
    const some = ears.filter((ear) => ear.species === species && ear.procedure === 'teca-lbo')
    const { risks } = procedureNamed('teca-lbo', procedures)
    const found = owedFigures({
      species,
      procedure: 'teca-lbo',
      counts: countEvery({ species, procedure: 'teca-lbo' }, ownOutcomes, ears, today, rules),
      isTold: ({ outcome }) => risks.some((risk) => risk.outcome === outcome),
      lateEvents: [],
      dueDays: some.flatMap(({ on }) => ownOutcomes.map((outcome) => addDays(on, dueDays(outcome, rules)))),
      today,
      zone,
      house,
      rules: figuresRules,
    })
    return found ? [found] : []
  })
}

const days = ['2026-03-10', '2026-07-01', '2026-11-30', '2027-02-14']

it.each(days)(
  'opened on %s, the practice is not late with what owners hear, as it would be had nobody looked',
  (today) => {
    const now = startOfDay(today, zone)
    expect(owedOn(today, true).filter(({ dueBy }) => dueBy < now)).toEqual([])
    expect(owedOn(today, false).filter(({ dueBy }) => dueBy < now).length).toBeGreaterThan(0)
  },
)

test('What was looked at is read at the door, and says how many ears there were', () => {
  const practice = practiceChart()
  const rows = rowsInOrder(registerRows())
  const before = practice.entries.length
  lookAtFigures(
    practice,
    demoCases.map((one) => one.chart()),
    rows,
    '2026-06-30',
  )
  const written = practice.entries.slice(before)
  expect(written.map(({ kind }) => kind)).toEqual(['figures-left', 'figures-left'])
  for (const entry of written) expect(readEntry(entry)).toMatchObject({ kind: 'answer' })
  expect(written.map(({ body }) => (body as { species: string }).species)).toEqual(['dog', 'cat'])
  expect(JSON.stringify(written[0]?.body)).toContain('"events":0,"total":1')
})
