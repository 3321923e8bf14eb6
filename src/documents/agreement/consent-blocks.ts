import type { OwnerWords } from '#content/languages/owner-words.ts'
import { type Agreement, agreementFor, withdrawnFor } from '#core/agreement/agreed-for.ts'
import { authorityRefusalsOf } from '#core/agreement/authority.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { planChanges, sayPlanChange } from '#core/agreement/plan-changes.ts'
import { signatureSvg } from '#core/agreement/signature.ts'
import { type CaseFile, contactNamed, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { whenOf } from '../case/case-words.ts'
import { ownerLanguageOf, type Spoken } from '../case/owner-words.ts'
import { type Block, facts, heading, paragraph, small } from '../render/model.ts'
import { toldToday } from './consent-today.ts'

type Body = Agreement['body']
type Fact = readonly [term: string, value: string]

/** What is no longer as it was agreed, and each ear for which the yes was taken back. After the cut it was used. */
export function notAsAgreed(file: CaseFile, agreement: Agreement, spoken: OwnerWords): Block[] {
  const { agreement: words, dates } = spoken
  const { plan } = agreement.body
  const operations = operationsOf(file).filter(
    (one) => agreementFor(one, file.theCase)?.header.id === agreement.header.id,
  )
  const open = plan.ears.filter(({ side }) => !operations.some((one) => one.side === side && one.done))
  if (open.length === 0) return []
  const ahead = operations.filter(({ done }) => !done)
  // The mark that does not fit has its own words above.
  const changes = planChanges(agreement, ahead, file, toldToday).filter(({ code }) => code !== 'mark')
  const inTheirWords = { ...words, procedures: spoken.procedures, outcomes: spoken.odds.outcomes }
  const said = changes.map((change) => `– ${sayPlanChange(change, file, inTheirWords)}`)
  return [
    ...open.flatMap(({ side }): Block[] => {
      const withdrawn = withdrawnFor(agreement, side, file.theCase)
      if (!withdrawn) return []
      const about = {
        side: words.sides[side],
        name: contactNamed(file, withdrawn.body.by),
        how: words.takenBackHow[withdrawn.body.how],
        date: whenOf(withdrawn, dates),
      }
      return [{ kind: 'callout', tone: 'stop', word: words.takenBackWord, lines: [fill(words.takenBack, about)] }]
    }),
    ...(said.length === 0
      ? []
      : [{ kind: 'callout', tone: 'stop', word: words.changedWord, lines: [words.askAgain, ...said] } as const]),
  ]
}

/** The numbers of that day, in the words and the language of that day. */
export function numbersTold({ plan }: Body, { language, words: { agreement: words } }: Spoken): Block[] {
  if (plan.numbers.length === 0) return []
  const then = ownerLanguageOf(plan.language) ?? 'en'
  const items = plan.numbers.map(({ said }) => said)
  return [
    heading(1, words.numbers),
    paragraph([small(words.numbersWhy)]),
    { kind: 'list', numbered: false, items, ...(then === language ? {} : { language: then }) },
  ]
}

/** On whose word, in which way, before whom, and the copy. What version 1 did not ask is not said. */
export function howGiven(file: CaseFile, body: Body, spoken: OwnerWords): Fact[] {
  const { agreement: words } = spoken
  const { authorised, given, witness, soundMind, copy } = body
  return [
    ...(authorised === null ? [] : [[words.authorised, sayAuthority(file, authorised, spoken)] as const]),
    ...(soundMind === 'not-assessed' ? [] : [[words.adult, words.adultValue[soundMind]] as const]),
    ...(given === 'not-recorded' ? [] : [[words.given, words.givenHow[given]] as const]),
    ...(witness === null ? [] : [[words.witness, personNamed(file, witness)] as const]),
    ...(copy === 'not-recorded' ? [] : [[words.copy, words.copyGiven[copy]] as const]),
  ]
}

function sayAuthority(
  file: CaseFile,
  { by, how, when, until, upTo, witness }: NonNullable<Body['authorised']>,
  { agreement: words, dates }: OwnerWords,
): string {
  const { zone } = file.clinic
  return [
    fill(words.authorisedValue, {
      name: contactNamed(file, by),
      how: words.authorisedHow[how],
      date: sayMoment({ ...when, zone }, dates),
    }),
    ...(until === null
      ? []
      : [
          fill(words.authorisedUntil, {
            date: sayMoment({ at: `${until}T12:00:00.000Z`, zone, precision: 'day', by: 'person' }, dates),
          }),
        ]),
    ...(upTo === null ? [] : [fill(words.authorisedUpTo, { amount: sayMoney(upTo) })]),
    ...(witness === null ? [] : [fill(words.heardBy, { name: personNamed(file, witness) })]),
  ].join(', ')
}

/** Whether somebody signed on the screen, so that no line is left for the pen. */
export function isSignedHere({ given, signature }: Body): boolean {
  return given === 'signed-here' && signature !== null
}

/** The signature as it was drawn, or the name as it was typed. */
export function signed(file: CaseFile, agreement: Agreement, { agreement: words, dates }: OwnerWords): Block[] {
  const { signature, consentBy } = agreement.body
  if (signature === null) return []
  const said = fill(words.signed, { name: contactNamed(file, consentBy), date: whenOf(agreement, dates) })
  const { strokes, name } = signature
  return [
    ...(strokes.length === 0
      ? []
      : [{ kind: 'picture', svg: signatureSvg(strokes, said), alt: said, caption: said } as const]),
    ...(name === null ? [] : [facts([words.typedName, name])]),
  ]
}

/** Somebody who may not agree is pointed out, never refused after the fact. */
export function mayAgree(file: CaseFile, { body, at }: Agreement, words: OwnerWords['agreement']): Block[] {
  const day = dayOf({ at, zone: file.clinic.zone })
  const refusals = authorityRefusalsOf({ ...body, ceiling: body.plan.ceiling }, file, day)
  const household = file.theCase.latest('household')
  if (refusals.length === 0 && household) return []
  return [{ kind: 'callout', tone: 'attention', word: words.mayNotWord, lines: [words.mayNot] }]
}
