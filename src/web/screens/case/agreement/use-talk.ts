import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { beginConversation, plannedEars } from '#core/agreement/begin.ts'
import { agreementIn, type Conversation, type ConversationPart, type Setting } from '#core/agreement/conversation.ts'
import { animalOf } from '#core/chapters/ears.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { secondSideAhead } from '#core/second-side/second-side.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { toldToday } from '#documents/agreement/consent-today.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'
import { placeOf } from '../write/use-writing.ts'

type Kept = { readonly talk: Conversation; readonly reviewing: boolean }

export type Talk = ReturnType<typeof useTalk>

/** The talk about a second side is a new one: what was typed for the first stays with the first. */
function draftName({ theCase, stream }: CaseFile): string {
  const second = secondSideAhead(theCase)?.second
  return second ? `agreement ${stream} after ${second.first.id}` : `agreement ${stream}`
}

/** The talk of this case as this person has typed it, kept on the device at every change. */
export function useTalk() {
  const { file } = useCaseView()
  const { theCase } = file
  const { me, pen } = useWho()
  const now = useMinute()
  const { draft, change, clear, ready, found } = useDraft<Kept>(draftName(file), me.id, () => ({
    talk: beginConversation(theCase, me.id),
    reviewing: false,
  }))
  const setting: Setting = {
    file,
    place: placeOf(file),
    planned: plannedEars(theCase),
    told: toldToday,
    today: dayOf({ at: now, zone: file.clinic.zone }),
  }
  const { faults, body } = agreementIn(draft.talk, setting)
  const animal = animalOf(theCase)
  const staff = [...file.people]
    .filter(([, { role }]) => role !== 'read-only')
    .map(([id, { name }]) => [id, name] as const)
    .sort(([, one], [, other]) => one.localeCompare(other, 'en'))
  const contacts = (theCase.latest('household')?.body.contacts ?? []).map(
    ({ contact }) => [contact, file.contacts.get(contact)?.name ?? contact] as const,
  )
  return {
    ...draft,
    ready,
    found,
    setting,
    faults,
    body,
    staff,
    contacts,
    put: (part: Partial<Conversation>) => change({ talk: { ...draft.talk, ...part }, reviewing: false }),
    /** What is signed is what was read: the signature alone changes while it is read through. */
    sign: (part: Pick<Partial<Conversation>, 'strokes' | 'name'>) =>
      change({ ...draft, talk: { ...draft.talk, ...part } }),
    review: (reviewing: boolean) => change({ ...draft, reviewing }),
    faultsIn: (part: ConversationPart) =>
      faults.filter((one) => one.part === part).map(({ code }) => words.faults[code]),
    keep: async () => {
      if (!body || faults.length > 0 || animal === null) return
      await writeEntry(pen, { kind: 'agreement', stream: file.stream, subject: { kind: 'animal', animal }, body })
      await clear()
    },
  }
}
