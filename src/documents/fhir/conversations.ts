import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Mapping } from './around.ts'
import { answer, notes, words } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { entryUuid } from './naming.ts'
import { coded, component, finding, observation } from './observations.ts'
import { sideOf } from './side.ts'

/** A try to speak with somebody; "nobody reached" is a conversation that was not done. */
export const call: Mapping<'call'> = (line, around) => {
  const { body, header } = line
  const contact = around.people.contact(body.contact)
  const we = around.author(line)
  const [sender, recipient] = body.direction === 'we-called' ? [we, contact] : [contact, we]
  const nobody = body.reached === 'no'
  return [
    {
      resourceType: 'Communication',
      id: entryUuid(header.id),
      status: nobody ? 'not-done' : 'completed',
      statusReason: nobody ? words(say.nobodyReached) : undefined,
      medium: [answer(body.channel)],
      subject: header.subject.kind === 'animal' ? around.patient(line) : undefined,
      topic: answer(body.about),
      sent: dateTime(header.happenedAt),
      recipient: [recipient],
      sender,
      payload: body.text === null ? [] : [{ contentString: body.text }],
      note: notes(body.reached === 'message-left' ? say.messageLeft : null),
    },
  ]
}

/** Somebody outside was told what an entry says. */
export const told: Mapping<'told'> = (line, around) => {
  const { body, header } = line
  return [
    {
      resourceType: 'Communication',
      id: entryUuid(header.id),
      status: 'completed',
      medium: [answer(body.by)],
      subject: around.patient(line),
      about: [around.entry(body.about)],
      sent: dateTime(header.happenedAt),
      recipient: [around.people.contact(body.contact)],
      sender: around.author(line),
      payload: body.text === null ? [] : [{ contentString: body.text }],
    },
  ]
}

/** A late event belongs to the operation it came after; what it needed stands in its words. */
export const lateEvent: Mapping<'late-event'> = (line, around) => {
  const { body, header } = line
  const done = around.operations.get(body.operation)
  const spaced = (code: string) => code.replaceAll('-', ' ')
  const said = fill(say.lateEvent, {
    what: spaced(body.what),
    side: sideOf(line) ?? '',
    needed: spaced(body.needed),
    by: spaced(body.seenBy),
  })
  return [
    {
      resourceType: 'AdverseEvent',
      id: entryUuid(header.id),
      actuality: 'actual',
      event: { ...answer(body.what), text: body.text === null ? said : `${said} ${body.text}` },
      subject: around.patient(line),
      date: dateTime(body.firstSeen),
      recordedDate: dateTime(header.happenedAt),
      recorder: header.author.kind === 'import' ? undefined : around.author(line),
      suspectEntity: done === undefined ? [] : [{ instance: around.entry(done, 'Procedure') }],
    },
  ]
}

/** How and of what; the day itself stands with the animal. */
export const death: Mapping<'death'> = (line, around) => [
  observation(line, around, {
    code: finding('death'),
    value: { valueString: line.body.cause },
    component: [
      component('death-how', coded(line.body.how)),
      component('death-related', coded(line.body.relatedToEar)),
      component('death-of-operation', coded(line.body.relatedToOperation)),
      component('death-heard-from', coded(line.body.heardFrom)),
    ],
  }),
]
