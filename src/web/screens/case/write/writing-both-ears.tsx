import { type FormEvent, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { refusePlacing } from '#core/complications/refuse-placing.ts'
import type { Draft } from '#core/forms/draft.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import { readDraft } from '#core/forms/read-draft.ts'
import type { FieldRefusal } from '#core/forms/refusal.ts'
import { isUntouched } from '#core/forms/relevant.ts'
import type { KindName } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { formFor, wordsFor } from '../../../forms/forms.ts'
import { PairedEntryForm } from '../../../forms/paired-entry-form.tsx'
import { asServer } from '../../../journal/device.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { makeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, keptHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { formChoices } from './form-choices.ts'
import { placeOf } from './use-writing.ts'
import { readWhen, type When, WhenPart } from './when-part.tsx'
import styles from './write.module.css'

const words = caseInEnglish.write
type Ears<Of> = Readonly<Record<Side, Of>>
type Typed = { readonly bodies: Ears<Draft>; readonly when: When }
const nothing: Ears<readonly FieldRefusal[]> = { LEFT: [], RIGHT: [] }

/** LEFT and RIGHT at one look: an entry for each ear in which something was answered, kept together. */
export function WritingBothEars({ kind }: { readonly kind: KindName }) {
  const view = useCaseView()
  const { file, id } = view
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const form = formFor(kind)
  const place = placeOf(file)
  const { zone } = place
  const { draft, change, clear, ready } = useDraft<Typed>(`${file.stream} ${kind} both`, me.id, () => ({
    bodies: { LEFT: emptyDraft(form), RIGHT: emptyDraft(form) },
    when: { how: 'now', text: '' },
  }))
  const [refusals, setRefusals] = useState(nothing)
  const [wrong, setWrong] = useState<{ readonly when: string | null; readonly empty: boolean } | null>(null)

  const misplaced = (side: Side): FieldRefusal[] => {
    const read = readDraft(form, draft.bodies[side], place)
    const subject = { kind: 'ear', animal: animalIn(file), side } as const
    return read.kind === 'answer' ? refusePlacing(kind, read.answer, subject, file) : []
  }

  const submit = async (event: FormEvent) => {
    event.preventDefault()
    const touched = sides.filter((side) => !isUntouched(draft.bodies[side]))
    const when = readWhen(draft.when, { before: null, zone, now: asServer(new Date().toISOString()) })
    const read = touched.map((side) => ({ side, body: readDraft(form, draft.bodies[side], place) }))
    const refused = read.flatMap(({ side, body }) => {
      const found = body.kind === 'refusal' ? body.refusal : misplaced(side)
      return found.length > 0 ? [[side, found] as const] : []
    })
    setRefusals({ ...nothing, ...Object.fromEntries(refused) })
    setWrong({ when: 'error' in when ? when.error : null, empty: touched.length === 0 })
    if ('error' in when || refused.length > 0 || touched.length === 0) return
    const entries = read.flatMap(({ side, body }) => {
      if (body.kind === 'refusal') return []
      const subject = { kind: 'ear', animal: animalIn(file), side } as const
      return [makeEntry(pen, { kind, stream: file.stream, subject, body: body.answer, happenedAt: when.moment })]
    })
    await keepEntries(entries)
    await clear()
    navigate(keptHref(id, entries[0]?.id ?? ''))
  }

  if (!ready) return <DraftAwaited />
  return (
    <Page
      title={fill(words.title, { kind: kindsInEnglish[kind] })}
      whose={<CaseLine />}
      lead={wordsFor(kind).purpose}
      wide
    >
      <form className={styles.writing} onSubmit={(event) => void submit(event)} noValidate>
        <WhenPart
          legend={words.when}
          when={draft.when}
          before={null}
          error={wrong?.when ?? null}
          onWhen={(when) => change({ ...draft, when })}
        />
        <PairedEntryForm
          kind={kind}
          drafts={draft.bodies}
          onDrafts={(bodies) => change({ ...draft, bodies })}
          refusals={refusals}
          beside={wrong ? { LEFT: misplaced('LEFT'), RIGHT: misplaced('RIGHT') } : nothing}
          place={place}
          choices={formChoices(view, null, draft.bodies.LEFT)}
          now={() => sayMoment({ at: asServer(new Date().toISOString()), zone, precision: 'minute', by: 'clock' })}
        />
        {wrong?.empty && (
          <Notice tone="warn" live>
            <p>{words.bothEmpty}</p>
          </Notice>
        )}
        <div className={styles.buttons}>
          <button type="submit" data-weight="main">
            {words.keep}
          </button>
          <Link href={casePageHref(id)} className={styles.leave}>
            {words.leave}
          </Link>
        </div>
      </form>
    </Page>
  )
}
