import type { Draft, OwedItem } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'

/** What may answer an owner: a talk, a word written down, or the decision itself. */
const answers = ['call', 'note', 'choice', 'agreement'] as const

/**
 * What an owner sent through the private link waits for an eye. The newest of one person stands for those before it, and
 * what somebody of the house wrote down for the owner was heard already.
 */
export function owedAfterWishes(setting: Setting): Draft[] {
  const { rules, zone, revision, file } = setting
  const { theCase } = file
  const newest = new Map(
    theCase
      .live('owner-wishes')
      .flatMap((line) =>
        line.header.author.kind === 'owner-link' ? [[line.header.author.contact, line] as const] : [],
      ),
  )
  return [...newest.values()].map((line): Draft => {
    const item: OwedItem = {
      ...dueWithin(line.at, rules.wishesReadWithin, zone),
      id: `owner-wishes-to-read:${line.header.id}`,
      what: 'owner-wishes-to-read',
      about: {},
      who: 'surgeon',
      person: null,
      way: 'call',
      side: null,
      operation: null,
      why: [{ code: 'owner-wrote', about: {} }],
      facts: [rules.wishesReadWithin],
      withOwner: true,
      revision,
    }
    const answered = answers
      .flatMap((kind) => theCase.live(kind).map(({ at, header }) => ({ at, header })))
      .filter(({ at, header }) => at > line.at && header.author.kind === 'person')
      .sort((a, b) => (a.at < b.at ? -1 : 1))[0]
    if (!answered) return { item, ended: null }
    return { item, ended: { because: answered.at > item.dueBy ? 'settled-late' : 'settled', by: answered.header.id } }
  })
}
