import { hashText } from '#core/journal/canonical.ts'
import type { Draft, OwedItem } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'

/** What a person has to look at in the journal itself: nothing waits there unseen. Death does not end it. */
export function owedAtTheDesk(setting: Setting): Draft[] {
  const { file, options, policies } = setting
  const { theCase, house } = file
  const conflicts = [...theCase.conflicts, ...house.conflicts].map(({ kind, between }) => {
    const at = latest(between.map((id) => theCase.line(id)?.at ?? house.line(id)?.at ?? ''))
    const about = { kind, count: String(between.length) }
    return task('conflict-to-settle', keyOfSides(between), at, about, 'side-by-side', setting)
  })
  const pending = [...theCase.pending, ...house.pending].map(({ entry, missing }) =>
    task(
      'pending-entry',
      entry,
      (theCase.line(entry) ?? house.line(entry))?.at ?? '',
      { missing: missing.join(', ') },
      'waits-for-entry',
      setting,
    ),
  )
  const unknown = [...theCase.unknown, ...house.unknown].map(({ header, at }) =>
    task(
      'unknown-entry',
      header.id,
      at,
      { kind: header.kind, version: String(header.version) },
      'from-newer-version',
      setting,
    ),
  )
  const aside = firstOfEachId(options.keptAside ?? []).map(({ id, receivedAt }) =>
    task('kept-aside', id, receivedAt, { entry: id }, 'same-id-other-bytes', setting),
  )
  const unreadable = policies.unreadable.map(({ header, at, body }) =>
    task('policy-unreadable', header.id, at, { policy: body.policy, value: body.value }, 'cannot-read-policy', setting),
  )
  return [...conflicts, ...pending, ...unknown, ...aside, ...unreadable]
}

/** The ids side by side; of more than anyone would read, their hash. */
function keyOfSides(ids: readonly string[]): string {
  const all = ids.join('+')
  return ids.length <= 8 ? all : `${ids.length}-${hashText(all)}`
}

/** However often other bytes came under one id, a person looks at that entry once. */
function firstOfEachId<Kept extends { readonly id: string }>(kept: readonly Kept[]): Kept[] {
  return [...new Map([...kept].reverse().map((one) => [one.id, one])).values()].reverse()
}

function latest(instants: readonly string[]): string {
  return [...instants].sort().at(-1) ?? ''
}

function task(
  what: 'conflict-to-settle' | 'pending-entry' | 'unknown-entry' | 'kept-aside' | 'policy-unreadable',
  key: string,
  at: string,
  about: OwedItem['about'],
  code: 'side-by-side' | 'waits-for-entry' | 'from-newer-version' | 'same-id-other-bytes' | 'cannot-read-policy',
  setting: Setting,
): Draft {
  const { rules, zone, revision } = setting
  const item: OwedItem = {
    ...dueWithin(at, rules.settleWithin, zone),
    id: `${what}:${key}`,
    what,
    about,
    who: what === 'policy-unreadable' ? 'desk' : 'surgeon',
    person: null,
    way: 'task',
    side: null,
    operation: null,
    why: [{ code, about }],
    facts: [rules.settleWithin],
    withOwner: false,
    revision,
  }
  return { item, ended: null }
}
