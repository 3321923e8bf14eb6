import type { Subject } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { registerStream } from '#core/register/register.ts'
import { wallClock } from '#core/time/moment.ts'
import { Chart } from './chart.ts'
import { demoClinic, staff, zone } from './practice.ts'

type Body = BodyOf<'register-line'>
type Said = Partial<Pick<Body, 'ampoule' | 'case' | 'paper' | 'witness' | 'text'>>

const methadone = { drug: 'methadone', strength: { value: '10', unit: 'mg/mL' }, form: 'injection' } as const
const subject: Subject = { kind: 'clinic' }
const { holm, adeyemi, lindqvist, castellane } = staff

const lineOf = (what: Body['what'], millilitres: number, said: Said = {}): Body => ({
  ...methadone,
  what,
  amount: { value: String(millilitres), unit: 'mL' },
  ampoule: null,
  case: null,
  paper: null,
  witness: castellane,
  text: null,
  ...said,
})

/**
 * The invented practice's register of its one controlled drug, in ampoules of 1 mL: every ampoule that these cases gave
 * from, one count that differed and was explained, one line amended, one taken back, and the last count on a day given.
 */
export function methadoneRegister(cases: readonly Chart[], countedLast: string): Chart {
  const chart = new Chart(demoClinic, registerStream(methadone), zone)
  const write = (at: string, by: string, body: Body) => chart.write('register-line', { at, by, subject }, body)
  const draws = drawsFor(cases)
  const stock = (day: string) => 13 - draws.filter(({ at }) => at < day).length
  const drawBetween = (from: string, until: string) => {
    for (const { at, body } of draws.filter((one) => from <= one.at && one.at < until)) write(at, adeyemi, body)
  }

  write('2025-01-06 09:45', adeyemi, lineOf('opening', 4, { text: 'Counted when the register was begun.' }))
  const delivery = { paper: 'Delivery note F-2203', witness: null } as const
  const two = write('2025-02-03 10:10', lindqvist, lineOf('received', 20, delivery))
  const amending = { supersedes: [two], reason: 'One box of ten, not two.', writtenAfter: 6 }
  const received = lineOf('received', 10, delivery)
  chart.write('register-line', { at: '2025-02-03 10:10', by: lindqvist, subject, ...amending }, received)
  drawBetween('2025-02-04', '2025-03-31')
  write('2025-03-31 17:30', lindqvist, lineOf('counted', stock('2025-03-31')))
  const broken = { witness: holm, text: 'One ampoule lay broken behind the cabinet; nobody had written it.' }
  write('2025-04-01 08:20', adeyemi, lineOf('lost', 1, broken))
  drawBetween('2025-04-01', '2025-06-30')
  const twice = draws.find(({ at }) => '2025-04-01' <= at && at < '2025-06-30')
  if (twice) {
    const again = write(twice.at, castellane, { ...twice.body, witness: adeyemi })
    const takingBack = { withdraws: again, reason: 'Written twice, on two tablets.', writtenAfter: 30 }
    chart.write('withdrawal', { at: twice.at, by: castellane, subject, ...takingBack }, { because: 'twice' })
  }
  write('2025-06-30 17:40', castellane, lineOf('counted', stock('2025-06-30'), { witness: adeyemi }))
  drawBetween('2025-06-30', countedLast)
  if (countedLast > '2025-07') write(`${countedLast} 17:15`, adeyemi, lineOf('counted', stock(countedLast)))
  drawBetween(countedLast > '2025-07' ? countedLast : '2025-06-30', '9999')
  return chart
}

/** One draw of a whole ampoule for each that a case gave from, three minutes before. */
function drawsFor(cases: readonly Chart[]): { readonly at: string; readonly body: Body }[] {
  return cases
    .flatMap(({ stream, entries }) =>
      fold(entries)
        .live('drug-given')
        .filter(({ body }) => body.drug === methadone.drug && body.ampoule !== null)
        .map(({ header, body }) => {
          const drawn = wallClock(header.happenedAt).subtract({ minutes: 3 })
          const at = `${drawn.toPlainDate()} ${drawn.toPlainTime().toString({ smallestUnit: 'minute' })}`
          return { at, body: lineOf('drawn', 1, { ampoule: body.ampoule, case: stream }) }
        }),
    )
    .sort((a, b) => (a.at < b.at ? -1 : 1))
}
