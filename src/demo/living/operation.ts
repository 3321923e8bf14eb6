import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side } from '#core/animal/species.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { Decimal } from '#core/units/quantity.ts'
import { agreedWithOwner } from '../agreed.ts'
import { moment } from '../chart.ts'
import { staff, zone } from '../practice.ts'
import { confirmSide, countAll, labelAndSignOut } from '../sign-out.ts'
import { giver, mg, planAndCheck, stamp } from '../writers.ts'
import type { Living } from './animal.ts'

type Agreed = {
  readonly side: Side
  readonly procedure: ProcedureId
  readonly estimate: { readonly low: string; readonly high: string }
}

/** Estimate, consent and the booked day, in one conversation; the consent is bound to its plan by its fingerprint. */
export function agreeAndBook(one: Living, at: string, plannedFor: string, agreed: Agreed): void {
  const { side, procedure, estimate } = agreed
  const agreement = one.chart.write(
    'agreement',
    { at, by: staff.holm, subject: one.animal },
    agreedWithOwner({
      ears: [{ side, procedure }],
      ...estimate,
      consentBy: one.owner,
      resuscitate: 'yes',
      photographs: 'record-only',
      withHelp: ['two-risks'],
    }),
  )
  one.chart.write(
    'booking',
    { at, by: staff.moretti, subject: one.operation, writtenAfter: 20 },
    {
      side,
      procedure,
      agreement,
      plannedFor: moment(plannedFor, zone),
      surgeon: staff.holm,
      anaesthetist: staff.adeyemi,
    },
  )
}

type Given = Parameters<ReturnType<typeof giver>>[1]
const givenAt: Readonly<Record<string, string>> = {
  antiemetic: '08:30',
  opioid: '08:55',
  premedication: '08:55',
  induction: '09:15',
  maintenance: '09:18',
  antibiotic: '09:25',
  block: '09:32',
  splash: '10:45',
  nsaid: '11:10',
}

/** The named plan worked out, checked by a second person, and given line by line as it was worked out. */
export function givePlan(one: Living, day: string, plan: string, blockedAt: string): void {
  planAndCheck(one.chart, one.operation, plan, `${day} 08:05`, `${day} 08:15`)
  const give = giver(one.chart, one.operation)
  const lines = one.chart.entries.filter(({ kind }) => kind === 'planned-line')
  for (const { body } of lines as unknown as readonly { readonly body: BodyOf<'planned-line'> }[]) {
    const time = givenAt[body.line]
    if (time === undefined) throw new Error(`The plan "${plan}" has a line that nobody gives: ${body.line}.`)
    const local = body.use === 'local_block'
    const ampoule = body.drug === 'methadone' ? numbered(one, day) : null
    give(`${day} ${time}`, {
      drug: body.drug,
      amount: body.amount as Given['amount'],
      volume: body.volume,
      route: body.route ?? 'unknown',
      use: body.use,
      line: body.line,
      ...(local && { site: blockedAt }),
      ...(ampoule !== null && { ampoule }),
    })
    if (ampoule !== null) wasteRest(one, `${day} ${time}`, body, ampoule)
  }
}

/** "M-1112-B": the day and whose it is, and which of the day when there are several. */
export function numbered({ chart }: Living, day: string, which = ''): string {
  return `M-${day.slice(5).replace('-', '')}-${chart.stream.replace('case:', '').charAt(0).toUpperCase()}${which}`
}

/** An ampoule of methadone holds 10 mg; what was not given is wasted before a witness. */
export function wasteRest(
  one: Living,
  at: string,
  { drug, amount }: Pick<BodyOf<'planned-line'>, 'drug' | 'amount'>,
  ampoule: string,
): void {
  const rest = new Decimal('10').minus(amount.value).toFixed()
  one.chart.write(
    'drug-wasted',
    { at, by: staff.adeyemi, subject: one.operation, writtenAfter: 4 },
    { drug, amount: mg(rest), ampoule, witness: staff.castellane, because: 'Rest of the ampoule.' },
  )
}

type Done = Pick<
  BodyOf<'operation-summary'>,
  'side' | 'procedure' | 'mainReason' | 'indication' | 'findings' | 'plan'
> &
  Partial<BodyOf<'operation-summary'>>

/** Start, cut and end by the clock, and the surgeon's signed summary at noon. */
export function operate(one: Living, day: string, done: Done): void {
  stamp(one.chart, one.operation, `${day} 09:16`, 'anaesthesia-start')
  countAll(one.chart, one.operation, `${day} 09:42`, 'before', 'in')
  stamp(one.chart, one.operation, `${day} 09:45`, 'incision')
  stamp(one.chart, one.operation, `${day} 11:05`, 'closed')
  countAll(one.chart, one.operation, `${day} 11:06`, 'final', 'out')
  stamp(one.chart, one.operation, `${day} 11:20`, 'tube-out')
  one.chart.write(
    'operation-summary',
    { at: `${day} 12:00`, by: staff.holm, subject: one.operation },
    {
      surgeon: staff.holm,
      assistant: null,
      anaesthetist: staff.adeyemi,
      incisionAt: moment(`${day} 09:45`, zone),
      closedAt: moment(`${day} 11:05`, zone),
      complications: [],
      drain: false,
      signedBy: staff.holm,
      remark: null,
      ...done,
    },
  )
  confirmSide(one.chart, one.operation, `${day} 11:12`)
  labelAndSignOut(one.chart, one.operation, { labelled: `${day} 11:10`, signed: `${day} 11:14` })
}
