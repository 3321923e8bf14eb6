import { useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { draftSummaryInEnglish } from '#content/wording/app-draft-summary.ts'
import { isSameSubject, subjectOfOwed, subjectsFor } from '#core/chapters/subjects-for.ts'
import { refusePlacing } from '#core/complications/refuse-placing.ts'
import type { Draft } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import type { Drafted } from '#core/forms/drafted.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import { readDraft } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import type { HomeDraft } from '#core/home/home-plan.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf, KindName, Line } from '#core/journal/fold.ts'
import { formFor } from '../../../forms/forms.ts'
import type { Waiting } from '../../../journal/database.ts'
import { asServer, newId } from '../../../journal/device.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { momentAgain } from '../../../journal/moment-again.ts'
import type { Attachment } from '../../../journal/take-in.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { keptHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { withAnswersNamed } from './answers-named.ts'
import { changesOf, type Now } from './changes-of.ts'
import { useDrafted } from './use-drafted.ts'
import { readWhen, type When } from './when-part.tsx'

const words = caseInEnglish.write

/** All that is being typed for one entry; kept on this device at every change. */
type Typed = {
  readonly body: Draft
  readonly subject: Subject | null
  readonly when: When
  readonly reason: string
  readonly files: readonly Attachment[]
  /** The id of the operation that a booking would open. */
  readonly operation: string
  /** What was drafted of it from the entries; missing where nothing is. */
  readonly drafted?: Drafted | null
}

/** What stands in the way of keeping it, beside the fields of the form itself. */
type Wrong = Readonly<Record<'subject' | 'when' | 'reason' | 'files' | 'same' | 'unread', string | null>>
const nothingWrong: Wrong = { subject: null, when: null, reason: null, files: null, same: null, unread: null }

/** Kinds that are a picture or a paper. */
const isFile: ReadonlySet<KindName> = new Set<KindName>(['photograph', 'paper'])

/** How this clinic writes numbers, money and time. */
export function placeOf({ clinic: { zone, decimalMark, currency } }: CaseFile): Place {
  return { zone, decimalMark, currency }
}

function beginWith(kind: KindName, { amended, refused }: Before, place: Place, query: URLSearchParams): Typed {
  const form = formFor(kind)
  // A booking that was refused is written again for the operation that it opened.
  const opened = refused?.entry.subject.kind === 'operation' ? refused.entry.subject.operation : null
  const operation = opened ?? `operation-${newId()}`
  if (!amended) {
    const when = { how: 'now', text: '' } as const
    return {
      body: withAnswersNamed(emptyDraft(form), form, query),
      subject: null,
      when,
      reason: '',
      files: [],
      operation,
    }
  }
  const { subject, attachments } = amended.header
  const body = draftOf(form, amended.body as unknown as BodyOf<KindName>, place)
  const reason = refused?.entry.reason ?? ''
  return { body, subject, when: { how: 'kept', text: '' }, reason, files: attachments, operation }
}

/** What the entry begins with: one that is corrected, and the same where only this device has it, because it was refused. */
type Before = { readonly amended: Line | null; readonly refused: Waiting | null }

/**
 * The writing of one entry: what was typed so far, what of it can be read, what stands in its way, and keeping it. An
 * entry that corrects or settles others takes their place, with a reason.
 */
export function useWriting(kind: KindName, from: Before, query: URLSearchParams) {
  const { amended, refused } = from
  const view = useCaseView()
  const { file, id } = view
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const settles = query.get('settle')?.split(',') ?? []
  // Nobody but this device ever had a refused entry: what is written instead of it stands where that one would have.
  const replaces = refused
    ? refused.entry.supersedes
    : settles.length > 0
      ? settles
      : amended
        ? [amended.header.id]
        : []
  const corrects = settles.length === 0 && !refused ? amended : null
  const place = placeOf(file)
  const key = `${file.stream} ${kind} ${query}`
  const { draft, change, clear, ready, found } = useDraft<Typed>(key, me.id, () => beginWith(kind, from, place, query))
  const [refusals, setRefusals] = useState<readonly FieldRefusal[]>([])
  const [keeping, setKeeping] = useState(false)
  const [tries, setTries] = useState(0)

  const subjects = useMemo(() => subjectsFor(kind, file, draft.operation), [kind, file, draft.operation])
  const owed = view.owed.find((one) => one.id === query.get('owed'))
  const subject = draft.subject ?? namedBy(query, subjects) ?? (owed ? subjectOfOwed(owed, kind, file) : null)
  const before = amended?.header.happenedAt ?? null
  const when = readWhen(draft.when, { before, zone: place.zone, now: asServer(new Date().toISOString()) })
  const read = readDraft(formFor(kind), draft.body, place)
  const now: Now | null =
    read.kind === 'answer' && subject !== null && !('error' in when)
      ? { body: read.answer, subject, moment: when.moment, files: draft.files }
      : null

  const home = homeDraftOf(kind, now, place.zone, corrects?.header.id ?? null)
  const misplaced = read.kind === 'answer' ? refusePlacing(kind, read.answer, subject, file) : []

  const drafted = useDrafted({
    kind,
    isNew: !amended && settles.length === 0,
    subject,
    place,
    ready,
    form: { body: draft.body, drafted: draft.drafted ?? null },
    put: (form) => change({ ...draft, ...form }),
  })

  const judge = (): Wrong => ({
    subject: subject ? null : words.subjectMissing,
    when: 'error' in when ? when.error : null,
    reason: replaces.length > 0 && draft.reason.trim() === '' ? words.reasonMissing : null,
    same: corrects && now && changesOf(corrects, now, view).length === 0 ? words.noChange : null,
    files: isFile.has(kind) && draft.files.length === 0 ? words.pictureMissing : null,
    unread: drafted && drafted.unread.length > 0 ? draftSummaryInEnglish.fault : null,
  })

  const keep = async () => {
    const faults = judge()
    setRefusals(read.kind === 'refusal' ? [...read.refusal] : misplaced)
    if (!now || misplaced.length > 0 || Object.values(faults).some((fault) => fault !== null)) {
      setTries(tries + 1)
      return
    }
    setKeeping(true)
    const reason = draft.reason.trim()
    const entry = await writeEntry(pen, {
      kind,
      stream: amended?.header.stream ?? file.stream,
      subject: now.subject,
      body: now.body,
      happenedAt: draft.when.how === 'kept' && amended ? momentAgain(amended) : now.moment,
      supersedes: replaces,
      reason: reason === '' ? null : reason,
      attachments: [...draft.files],
      insteadOf: refused?.entry.id ?? null,
    })
    await clear()
    navigate(keptHref(id, entry.id))
  }

  return {
    draft,
    put: (part: Partial<Typed>) => change({ ...draft, ...part }),
    startAnew: async () => {
      await clear()
      change(beginWith(kind, from, place, query))
    },
    ready,
    found,
    place,
    subjects,
    subject,
    drafted,
    /** What would go home, once the form can be read; null for every other kind. */
    home,
    before,
    /** The moment it happened, as far as it was said; null for now. */
    when: 'error' in when ? null : when,
    now,
    refusals,
    /** What cannot have followed the operation it names; said after the first try. */
    misplaced: tries > 0 ? misplaced : [],
    /** Said after the first try, and no longer than it is wrong. */
    wrong: tries > 0 ? judge() : nothingWrong,
    keep,
    keeping,
    /** Tries to keep it that failed. */
    tries,
    /** The one entry that is corrected, when one is. */
    corrects,
    settling: settles.length > 0,
    needsReason: replaces.length > 0,
  }
}

function homeDraftOf(kind: KindName, now: Now | null, zone: string, corrects: string | null): HomeDraft | null {
  if (now === null || (kind !== 'discharge' && kind !== 'medicine-change')) return null
  const at = asServer(new Date().toISOString())
  const happenedAt = now.moment ?? ({ at, zone, precision: 'minute', by: 'clock' } as const)
  return { body: now.body as HomeDraft['body'], happenedAt, corrects }
}

/** What the link itself named: its ear, its operation, the animal or the household; or the only possibility. */
function namedBy(query: URLSearchParams, subjects: readonly Subject[]): Subject | null {
  const side = query.get('side')
  const operation = query.get('operation')
  const about = query.get('about')
  const found = subjects.find(
    (subject) =>
      (subject.kind === 'ear' && subject.side === side) ||
      (subject.kind === 'operation' && subject.operation === operation) ||
      (subject.kind === about && subjects.filter((one) => isSameSubject(one, subject)).length === 1),
  )
  return found ?? (subjects.length === 1 ? (subjects[0] ?? null) : null)
}
