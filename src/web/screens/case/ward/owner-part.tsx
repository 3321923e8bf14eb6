import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { painScales } from '#content/scores/pain-scales.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import { fill } from '#core/outcome/finding.ts'
import { clockOf } from '#core/time/moment.ts'
import type { WardEye } from '#core/ward/eye-view.ts'
import { newsForOwner, type OwnerNews } from '#core/ward/owner-news.ts'
import type { Stay } from '#core/ward/stay.ts'
import { Choices } from '../../../design/choices.tsx'
import { Field } from '../../../design/field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useServerNow } from '../../../journal/use-server-now.ts'
import { useWho } from '../../../session/use-who.ts'
import { clockNear } from '../../ward/say-due.ts'
import { useRounds } from '../../ward/use-rounds.ts'
import { contactsHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './round.module.css'

const words = wardInEnglish.round
type Reached = 'yes' | 'no' | 'message-left'
type Draft = { readonly contact: string | null; readonly reached: Reached | null; readonly text: string | null }
const nothing: Draft = { contact: null, reached: null, text: null }

/** The daily call: whom, what to tell as the entries have it, and whether anybody was reached. */
export function OwnerPart({ stay, eyes }: { readonly stay: Stay; readonly eyes: readonly WardEye[] }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const { phoned } = useRounds(file)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft<Draft>(`ward call ${file.stream}`, me.id, () => nothing)
  if (!ready) return null
  const people = file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? []
  const [only, ...others] = people
  const contact = draft.contact ?? (others.length === 0 ? (only ?? null) : null)
  const name = file.theCase.latest('identity')?.body.name ?? caseInEnglish.untitled
  const news = newsForOwner(file.theCase, stay, eyes, painScales)
  const text = draft.text ?? sayNews(news, name, file.clinic.zone)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (contact === null || draft.reached === null) return
    const told = draft.reached === 'no' ? null : text.trim() || null
    await phoned({
      contact,
      direction: 'we-called',
      channel: 'phone',
      reached: draft.reached,
      about: 'ward',
      text: told,
    })
    change(nothing)
    await clear()
    setTries(0)
  }
  return (
    <>
      <Calls stay={stay} />
      {people.length === 0 ? (
        <p>
          {words.noContact} <Link href={contactsHref(id)}>{words.toContacts}</Link>
        </p>
      ) : (
        <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
          <Choices
            legend={words.whom}
            value={contact}
            options={people}
            say={(one) => {
              const row = file.contacts.get(one)
              return [row?.name ?? one, row?.phone].filter(Boolean).join(', ')
            }}
            error={tries > 0 && contact === null ? words.whomMissing : null}
            onChoose={(one) => change({ ...draft, contact: one })}
          />
          <Field label={words.tell} help={words.tellHelp}>
            {(control) => (
              <textarea
                {...control}
                rows={6}
                value={text}
                onChange={(event) => change({ ...draft, text: event.target.value })}
              />
            )}
          </Field>
          <Choices
            legend={words.reached}
            value={draft.reached}
            options={['yes', 'no', 'message-left'] as const}
            say={(one) => words.reachedHow[one]}
            error={tries > 0 && draft.reached === null ? words.reachedMissing : null}
            onChoose={(reached) => change({ ...draft, reached })}
          />
          <p>
            <button type="submit" data-weight="main">
              {words.keepCall}
            </button>
          </p>
        </form>
      )}
    </>
  )
}

/** Whom we reached last, and the tries since. */
function Calls({ stay }: { readonly stay: Stay }) {
  const { file } = useCaseView()
  const now = useServerNow(20_000)
  const calls = file.theCase.live('call').filter(({ at }) => at >= stay.since)
  const reached = calls.findLast(({ body }) => body.reached === 'yes')
  const at = (instant: string) => clockNear(instant, now, file.clinic.zone)
  return (
    <>
      <p>{reached ? fill(words.ownerLast, { when: at(reached.at) }) : words.ownerNever}</p>
      {calls
        .filter((one) => one.body.reached !== 'yes' && (!reached || one.at > reached.at))
        .map((one) => (
          <p key={one.header.id}>
            {fill(words.ownerTry, { when: at(one.at), how: words.reachedHow[one.body.reached] })}
          </p>
        ))}
    </>
  )
}

/** What there is to tell, in sentences for an owner; what no entry says is said to be missing. */
function sayNews({ awake, pain, eats, eyes }: OwnerNews, name: string, zone: string): string {
  const { news } = words
  const about = pain && { score: String(pain.score), outOf: String(pain.outOf), at: clockOf(pain.at, zone) }
  const ofPain = { act: news.painAct, below: news.painBelow, unknown: news.painUnread }
  return [
    fill(news[awake], { name }),
    pain && about ? fill(ofPain[pain.read.kind], about) : news.painNone,
    eats ? news.eats[eats.said] : news.eatsNone,
    ...eyes.map(({ side, block }) => fill(block ? news.eyeBlock : news.eye, { side: side.toLowerCase() })),
  ].join('\n')
}
