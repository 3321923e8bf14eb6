import { systems } from '#content/exchange/fhir-codes.ts'
import { procedures } from '#content/procedures/index.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { withdrawnFor } from '#core/agreement/agreed-for.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side } from '#core/animal/species.ts'
import { personNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Mapping } from './around.ts'
import { local } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { entryUuid, urn } from './naming.ts'
import { answers, codedAnswer, formBehind, textAnswer } from './questionnaire.ts'

export function procedureName(id: ProcedureId): string {
  return procedures.find((procedure) => procedure.id === id)?.name ?? id
}

function operationOnEar({ side, procedure }: { side: Side; procedure: ProcedureId }) {
  return local(`${procedure}-${side}`, `${procedureName(procedure)}, ${say.sides[side]}`)
}

/** Consent to these operations on these ears; estimate and limits stand in the form behind it. */
export const agreement: Mapping<'agreement'> = (line, around) => {
  const { body, header } = line
  const form = formBehind(header.id)
  const { plan, estimate } = body
  const standing = plan.ears.filter(({ side }) => !withdrawnFor(line, side, around.file.theCase))
  return [
    {
      resourceType: 'Consent',
      id: entryUuid(header.id),
      identifier: [{ system: systems.planFingerprint, value: body.fingerprint }],
      status: standing.length === 0 ? 'inactive' : 'active',
      scope: { coding: [{ system: systems.consentScope, code: 'treatment' }] },
      category: [local('agreement', say.agreement)],
      patient: around.patient(line),
      dateTime: dateTime(header.happenedAt),
      performer: [around.people.contact(body.consentBy)],
      organization: [around.people.clinic],
      sourceReference: { reference: urn(form), type: 'QuestionnaireResponse' },
      policyRule: { text: say.policy },
      // The root rule has no type in R4; each rule inside must have one.
      provision: {
        provision: plan.ears.map((ear) => ({
          type: standing.includes(ear) ? ('permit' as const) : ('deny' as const),
          code: [operationOnEar(ear)],
        })),
      },
    },
    answers(line, around, { id: form, name: 'agreement' }, [
      codedAnswer('authority', say.questions.authority, body.authority),
      codedAnswer('resuscitate', say.questions.resuscitate, body.resuscitate),
      codedAnswer('may-extend', say.questions['may-extend'], plan.mayExtend),
      codedAnswer('photographs', say.questions.photographs, body.photographs),
      textAnswer('estimate', say.questions.estimate, range(estimate)),
      textAnswer('ceiling', say.questions.ceiling, fill(say.money, plan.ceiling)),
      textAnswer('explained-by', say.questions['explained-by'], personNamed(around.file, body.explainedBy)),
      textAnswer('leaflet', say.questions.leaflet, plan.leaflet),
      ...body.teachBack.map(({ item, answer }) => codedAnswer(`said-back.${item}`, item.replaceAll('-', ' '), answer)),
    ]),
  ]
}

function range({ low, high }: BodyOf<'agreement'>['estimate']): string {
  return fill(say.range, {
    low: low.amount,
    lowCurrency: low.currency,
    high: high.amount,
    highCurrency: high.currency,
  })
}
