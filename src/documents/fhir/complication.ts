import { systems } from '#content/exchange/fhir-codes.ts'
import { troubleInEnglish as words } from '#content/wording/trouble.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Mapping } from './around.ts'
import { answer, local } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { entryUuid } from './naming.ts'
import { sideOf } from './side.ts'

/**
 * A trouble as it was written down: what it needed, how it was before and what it is held for. Grades are not sent: they
 * are worked out from these, by whichever scheme the receiver reads.
 */
export const complication: Mapping<'complication'> = (line, around) => {
  const { body, header } = line
  const done = around.operations.get(body.operation)
  const side = sideOf(line)
  const said = [
    words.events[body.event],
    side === undefined ? words.paper.animal : fill(words.paper.ear, { side }),
  ].join(', ')
  const held = words.classes[body.judged]
  return [
    {
      resourceType: 'AdverseEvent',
      id: entryUuid(header.id),
      actuality: 'actual',
      event: { ...answer(body.event), text: body.text === null ? said : `${said}. ${body.text}` },
      subject: around.patient(line),
      date: dateTime(body.firstNoticed),
      recordedDate: dateTime(header.happenedAt),
      outcome: { coding: [{ system: systems.adverseOutcome, code: outcomeOf(body) }] },
      seriousness: local(`needed-${body.needed}`, words.needs[body.needed]),
      category: [local(`held-for-${body.judged}`, held)],
      recorder: header.author.kind === 'import' ? undefined : around.author(line),
      suspectEntity: done === undefined ? [] : [{ instance: around.entry(done, 'Procedure') }],
    },
  ]
}

/** The codes are FHIR's own; what nobody knows yet stays unknown. */
function outcomeOf({ needed, lasting }: BodyOf<'complication'>): string {
  if (needed === 'death') return 'fatal'
  if (lasting === 'not-known') return 'unknown'
  return lasting === 'full' ? 'resolved' : 'resolvedWithSequelae'
}
