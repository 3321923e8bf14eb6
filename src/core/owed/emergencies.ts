import { Temporal } from 'temporal-polyfill'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { rootOf } from './operations.ts'
import type { Draft } from './owed-item.ts'
import type { Setting } from './setting.ts'

type Declared = Line<BodyOf<'emergency-declared'>>

/** Reason at once, a second name within a day: whoever declared it is no second person, and "nobody" is no name. */
export function owedAfterEmergencies(setting: Setting): Draft[] {
  return setting.file.theCase.live('emergency-declared').map((line) => secondName(line, setting))
}

function secondName(line: Declared, setting: Setting): Draft {
  const { theCase, people } = setting.file
  const { author, subject, supersedes } = line.header
  const { secondName: within } = setting.rules
  const root = rootOf(theCase, line.header.id)
  // A correction of the words later does not move the limit.
  const declared = theCase.line(root)?.at ?? line.at
  const minutes = within.value.value.times(60).toNumber()
  const dueBy = Temporal.Instant.from(declared).add({ minutes }).toString({ smallestUnit: 'millisecond' })
  const by = author.kind === 'person' ? (people.get(author.person)?.name ?? author.person) : author.kind
  const check = theCase
    .live('second-check')
    .find(
      ({ header, body }) =>
        body.verdict !== 'nobody-available' &&
        body.of.some((id) => rootOf(theCase, id) === root) &&
        header.author.kind === 'person' &&
        !(author.kind === 'person' && header.author.person === author.person),
    )
  const item = {
    id: `second-name-for-emergency:${root}`,
    what: 'second-name-for-emergency',
    about: {},
    who: 'surgeon',
    person: null,
    way: 'task',
    side: null,
    operation: subject.kind === 'operation' ? subject.operation : null,
    dueFrom: declared,
    dueBy,
    zone: setting.zone,
    precision: 'minute',
    why: [{ code: 'emergency-was-declared', about: { by, because: line.body.because } }],
    facts: [within],
    withOwner: false,
    revision: setting.revision + supersedes.length,
  } as const
  if (!check) return { item, ended: null }
  return { item, ended: { because: check.at > dueBy ? 'settled-late' : 'settled', by: check.header.id } }
}
