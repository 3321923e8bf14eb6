import type { ServiceRequest } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Around, Mapping } from './around.ts'
import { local, notes, words } from './concepts.ts'
import { dateTime, period } from './fhir-time.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import { finding, observation } from './observations.ts'
import { answers, codedAnswer, textAnswer } from './questionnaire.ts'
import { sideOf } from './side.ts'
import type { Resource } from './written.ts'

const priority: Record<BodyOf<'referral'>['urgency'], NonNullable<ServiceRequest['priority']>> = {
  today: 'asap',
  'this-week': 'urgent',
  routine: 'routine',
}

/** The first call: the request, what was asked on the phone, and an allergy when one was named. */
export const referral: Mapping<'referral'> = (line, around) => {
  const { body, header } = line
  const asked = derivedUuid(header.id, 'asked')
  const side = fill(say.reportedSide, { side: say.sides[body.reportedSide] })
  const request: Resource = {
    resourceType: 'ServiceRequest',
    id: entryUuid(header.id),
    status: referralStatus(around),
    intent: 'proposal',
    priority: priority[body.urgency],
    code: local('referral', say.referral),
    subject: around.patient(line),
    authoredOn: dateTime(header.happenedAt),
    requester: body.contact === null ? undefined : around.people.contact(body.contact),
    performer: [around.people.clinic],
    reasonCode: [words(body.complaint)],
    supportingInfo: [{ reference: urn(asked), type: 'QuestionnaireResponse' }],
    bodySite: [words(side)],
    note: notes(
      fill(say.urgency, { urgency: body.urgency.replaceAll('-', ' '), because: body.because }),
      body.daysOfSigns === null ? null : fill(say.daysOfSigns, { days: String(body.daysOfSigns) }),
    ),
  }
  const questions = answers(line, around, { id: asked, name: 'first-call' }, [
    ...body.signs.map(({ sign, answer }) => codedAnswer(sign, sign.replaceAll('-', ' '), answer)),
    codedAnswer('drug-allergy', say.questions['drug-allergy'], body.drugAllergy.answer),
    ...(body.drugAllergy.what === null
      ? []
      : [textAnswer('drug-allergy-what', say.questions['drug-allergy'], body.drugAllergy.what)]),
    codedAnswer('may-fetch-records', say.questions['may-fetch-records'], body.mayFetchRecords),
  ])
  if (body.drugAllergy.answer !== 'yes') return [request, questions]
  const allergy: Resource = {
    resourceType: 'AllergyIntolerance',
    id: derivedUuid(header.id, 'allergy'),
    clinicalStatus: { coding: [{ system: systems.allergyClinical, code: 'active' }] },
    verificationStatus: { coding: [{ system: systems.allergyVerification, code: 'unconfirmed' }] },
    category: ['medication'],
    code: words(body.drugAllergy.what ?? say.questions['drug-allergy']),
    patient: around.patient(line),
    recordedDate: dateTime(header.happenedAt),
    recorder: around.author(line),
  }
  return [request, questions, allergy]
}

/** A referral is fulfilled when the animal has been examined here. */
function referralStatus({ file: { theCase } }: Around): ServiceRequest['status'] {
  if (theCase.live('ear-findings').length > 0) return 'completed'
  return theCase.live('death').length > 0 ? 'revoked' : 'active'
}

/** What happened before us, in the words it was told in: no diagnosis is made of it. */
export const historyItem: Mapping<'history-item'> = (line, around) => {
  const { body, header } = line
  const topic = body.topic.replaceAll('-', ' ')
  const told = observation(line, around, {
    code: { ...finding('history'), text: fill(say.historyOf, { name: say.history, topic }) },
    side: sideOf(line),
    category: 'survey',
    value: { valueString: body.text },
    note: [fill(say.toldBy, { source: body.source.replaceAll('-', ' ') })],
  })
  const { effectiveDateTime: _, ...timeless } = told
  return [{ ...timeless, effectivePeriod: period(body.from, body.until), issued: header.writtenAt }]
}
