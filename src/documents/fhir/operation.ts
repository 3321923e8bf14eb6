import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { mainReasonNames } from '#content/wording/main-reasons.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureName } from './agreement.ts'
import type { Mapping } from './around.ts'
import { answer, local, notes, sideSite, words } from './concepts.ts'
import { dateTime, period } from './fhir-time.ts'
import { entryUuid } from './naming.ts'
import { component, finding, measured, observation } from './observations.ts'

/** What is booked: a plan, whatever became of it. */
export const booking: Mapping<'booking'> = (line, around) => {
  const { body, header } = line
  const { subject } = header
  const done = subject.kind === 'operation' && around.operations.has(subject.operation)
  return [
    {
      resourceType: 'ServiceRequest',
      id: entryUuid(header.id),
      status: done ? 'completed' : 'active',
      intent: 'order',
      code: local(body.procedure, procedureName(body.procedure)),
      subject: around.patient(line),
      occurrenceDateTime: dateTime(body.plannedFor),
      authoredOn: dateTime(header.happenedAt),
      performer: [around.people.person(body.surgeon)],
      supportingInfo: body.agreement === null ? [] : [around.entry(body.agreement)],
      bodySite: [sideSite(body.side)],
    },
  ]
}

/** The operation as its surgeon signed it. */
export const operationSummary: Mapping<'operation-summary'> = (line, around) => {
  const { body, header } = line
  const { subject } = header
  const booked = around.file.theCase.live('booking').find((other) => {
    const about = other.header.subject
    return about.kind === 'operation' && subject.kind === 'operation' && about.operation === subject.operation
  })
  const performer = (role: string, person: string | null) =>
    person === null ? [] : [{ function: answer(role), actor: around.people.person(person) }]
  return [
    {
      resourceType: 'Procedure',
      id: entryUuid(header.id),
      basedOn: booked === undefined ? [] : [around.entry(booked.header.id, 'ServiceRequest')],
      status: 'completed',
      code: local(body.procedure, procedureName(body.procedure)),
      subject: around.patient(line),
      performedPeriod: period(body.incisionAt, body.closedAt),
      recorder: around.author(line),
      asserter: around.people.person(body.signedBy),
      performer: [
        ...performer('surgeon', body.surgeon),
        ...performer('assistant', body.assistant),
        ...performer('anaesthetist', body.anaesthetist),
      ],
      reasonCode: [
        ...(body.mainReason === null ? [] : [local(body.mainReason, mainReasonNames[body.mainReason])]),
        words(body.indication),
      ],
      bodySite: [sideSite(body.side)],
      complication: body.complications.map(answer),
      note: notes(fill(say.findings, { text: body.findings }), fill(say.plan, { text: body.plan }), body.remark),
    },
  ]
}

/** What was measured, and nothing worked out from it: lavage that was not recovered stays unknown. */
export const bloodLoss: Mapping<'blood-loss'> = (line, around) => [
  observation(line, around, {
    code: finding('blood-loss'),
    component: [
      component('jar', measured(line.body.jar)),
      component('lavage-in', measured(line.body.lavageIn)),
      component('lavage-in-jar', measured(line.body.lavageInJar)),
      ...line.body.swabs.flatMap(({ dry, wet, saline }) => [
        component('swab-dry', measured(dry)),
        component('swab-wet', measured(wet)),
        component('swab-saline', measured(saline)),
      ]),
    ],
  }),
]
