import type { Side } from '#core/animal/species.ts'
import { type CaseFile, contactNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { sayMoment } from '#core/time/moment.ts'
import { type Agreement, agreementFor } from './agreed-for.ts'
import type { AuthorityRefusal } from './authority.ts'
import { type PlanChangeWords, sayPlanChange, type ToldToday } from './plan-changes.ts'
import { type ConsentState, stateOf } from './state.ts'

export type AgreementWords = PlanChangeWords & {
  readonly none: string
  readonly agreed: string
  readonly holds: string
  readonly done: string
  readonly broken: string
  readonly takenBack: string
  readonly mayNot: string
  readonly notYet: string
  readonly authorityOf: Readonly<Record<Agreement['body']['authority'], string>>
  readonly withdrawnHow: Readonly<Record<string, string>>
  readonly refusals: Readonly<Record<AuthorityRefusal, string>>
  readonly taughtItems: Readonly<Record<string, string>>
}

/** `holds`: nothing asks again. `asks`: at least one ear does. `done`: every ear was operated on under it. */
export type SaidAgreement = {
  readonly standing: 'none' | 'holds' | 'asks' | 'done'
  readonly agreement: Agreement | null
  /** The whole state, for the top of a page. */
  readonly lines: readonly string[]
  /** The ears for which it was neither taken back nor carried out. */
  readonly open: readonly Side[]
}

/**
 * How the newest agreement stands, in sentences: agreed when and by whom; whether it holds for each ear; what changed,
 * from what to what; and what the owner could not say back yet.
 *
 * @example sayAgreement(file, toldToday, words).lines // ['Agreed on … by …, the owner.', 'It holds.']
 */
export function sayAgreement(file: CaseFile, told: ToldToday, words: AgreementWords): SaidAgreement {
  const agreement = file.theCase.live('agreement').at(-1)
  if (!agreement) return { standing: 'none', agreement: null, lines: [words.none], open: [] }
  const { body, header } = agreement
  const operations = operationsOf(file).filter((one) => agreementFor(one, file.theCase)?.header.id === header.id)
  const ears = body.plan.ears.map(({ side }) => {
    const here = operations.filter((one) => one.side === side)
    const done = here.length > 0 && here.every((one) => one.done)
    return { side, done, state: stateOf(agreement, side, here, file, done ? null : told) }
  })
  const asking = ears.filter(({ done, state }) => !done && asksAgain(state))
  const standing = ears.every(({ done }) => done) ? 'done' : asking.length > 0 ? 'asks' : 'holds'
  const agreed = fill(words.agreed, {
    when: sayMoment({ ...header.happenedAt, zone: file.clinic.zone }),
    who: contactNamed(file, body.consentBy),
    authority: words.authorityOf[body.authority],
    ears: body.plan.ears.map(({ side }) => side).join(', '),
  })
  const lines = ears.flatMap(({ side, done, state }) => (done ? [] : sayState(side, state, file, words)))
  const first = ears.find(({ done }) => !done)?.state
  const notYet = (first?.notYet ?? []).map((item) => words.taughtItems[item] ?? item).join(', ')
  return {
    standing,
    agreement,
    lines: [
      agreed,
      ...(standing === 'done' ? [words.done] : standing === 'holds' ? [words.holds] : [...new Set(lines)]),
      ...(notYet === '' ? [] : [fill(words.notYet, { items: notYet })]),
    ],
    open: ears.filter(({ done, state }) => !done && state.withdrawn === null).map(({ side }) => side),
  }
}

type Given = Extract<ConsentState, { kind: 'given' }>

function asksAgain({ changes, withdrawn, refusals }: Given): boolean {
  return changes.length > 0 || withdrawn !== null || refusals.length > 0
}

function sayState(side: Side, state: Given, file: CaseFile, words: AgreementWords): string[] {
  const { withdrawn, changes, refusals } = state
  if (withdrawn) {
    const { header, body } = withdrawn
    const when = sayMoment({ ...header.happenedAt, zone: file.clinic.zone })
    const who = contactNamed(file, body.by)
    return [fill(words.takenBack, { side, who, when, how: words.withdrawnHow[body.how] ?? body.how })]
  }
  if (!asksAgain(state)) return [`${side}: ${words.holds}`]
  const changed = changes.map((change) => sayPlanChange(change, file, words)).join('; ')
  return [
    ...(changed === '' ? [] : [fill(words.broken, { changes: changed })]),
    ...refusals.map((code) => fill(words.mayNot, { because: words.refusals[code] })),
  ]
}
