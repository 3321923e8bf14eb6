import { type FormEvent, useMemo } from 'react'
import { owedScreen } from '#content/wording/app-lists.ts'
import { trayInEnglish as words } from '#content/wording/app-tray.ts'
import type { Side } from '#core/animal/species.ts'
import { fits } from '#core/identity/search.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { paperKinds } from '#core/journal/kinds/arrived-paper.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Moment, readMoment } from '#core/time/moment.ts'
import { Attached } from '../../design/attached.tsx'
import { Choices } from '../../design/choices.tsx'
import { Field } from '../../design/field.tsx'
import { Modal } from '../../design/modal.tsx'
import { Notice } from '../../design/notice.tsx'
import { SideWord } from '../../design/side-word.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import { useDraft } from '../../journal/drafts.ts'
import { keepEntries } from '../../journal/outbox.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './file-it.module.css'
import { type Arrived, file } from './filing.ts'

type Case = Lists['cases'][number]
type What = (typeof paperKinds)[number] | 'photograph'
type Named = BodyOf<'paper'>['sideOnPaper']
type Taker = BodyOf<'photograph'>['takenBy']
type Draft = {
  readonly find: string
  readonly stream: string | null
  readonly place: Side | 'animal' | null
  readonly what: What | null
  readonly title: string
  readonly dated: string
  readonly from: string
  readonly named: Named | null
  readonly takenBy: Taker | null
}

const places = ['LEFT', 'RIGHT', 'animal'] as const
const onPaper = ['LEFT', 'RIGHT', 'BOTH', 'not-stated'] as const
const inPicture = ['LEFT', 'RIGHT', 'not-stated'] as const
const takers = ['us', 'owner', 'referring-vet', 'laboratory'] as const

/** What whoever took it in noted is offered; whose it is and which side nobody has said yet. */
function begin({ body: { seems, from } }: Arrived): Draft {
  const what = seems === 'not-said' ? null : seems
  const nothing = { find: '', stream: null, place: null, title: '', dated: '', named: null, takenBy: null }
  return { ...nothing, what, from: from ?? '' }
}

/** Files one thing of the tray to its animal, ear and side. */
export function FileIt({ arrived, onClose }: { readonly arrived: Arrived; readonly onClose: () => void }) {
  const { me, pen } = useWho()
  const lists = useLists()
  const { draft, change, clear } = useDraft(`tray file ${arrived.header.id}`, me.id, () => begin(arrived))
  const put = (part: Partial<Draft>) => change({ ...draft, ...part })
  const cases = lists.kind === 'read' ? lists.value.cases : []
  const chosen = cases.find(({ stream }) => stream === draft.stream) ?? null
  const dated = useMemo(() => readDate(draft.dated, pen.zone), [draft.dated, pen.zone])
  const missing = missingIn(draft, chosen)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const named = namedIn(draft, dated.moment)
    if (missing.length > 0 || dated.error || !chosen || !named || draft.place === null) return
    const side = draft.place === 'animal' ? null : draft.place
    const place = { stream: chosen.stream, animal: chosen.animal, side }
    await keepEntries(file(pen, arrived, place, named, words.filedReason))
    await clear()
    onClose()
  }
  return (
    <Modal
      wide
      title={fill(words.fileTitle, { what: words.seems[arrived.body.seems] })}
      close={words.close}
      onClose={onClose}
    >
      <form className={styles.filing} onSubmit={keep}>
        <div className={styles.pages}>
          {arrived.header.attachments.map((one) => (
            <Attached key={one.hash} file={one} large />
          ))}
          {arrived.body.says !== null && <p>{fill(words.says, { text: arrived.body.says })}</p>}
        </div>
        <div className="stack">
          <Whose cases={cases} chosen={chosen} find={draft.find} put={put} />
          <Choices
            legend={words.which}
            value={draft.place}
            options={places}
            say={(one) => (one === 'animal' ? words.sides.animal : <SideWord side={one} />)}
            onChoose={(place) => put({ place })}
          />
          <WhatItIs draft={draft} put={put} dateError={dated.error} />
          <Disagreement draft={draft} />
          {missing.length > 0 && <p className="soft">{fill(words.missing, { list: missing.join(', ') })}</p>}
          <p>
            <button type="submit" data-weight="main" disabled={missing.length > 0 || dated.error !== null}>
              {chosen && draft.place
                ? fill(words.keep, { name: chosen.name, side: words.sides[draft.place] })
                : words.keepNowhere}
            </button>
          </p>
        </div>
      </form>
    </Modal>
  )
}

const mostShown = 6

function Whose(props: {
  readonly cases: readonly Case[]
  readonly chosen: Case | null
  readonly find: string
  readonly put: (part: Partial<Draft>) => void
}) {
  const { cases, chosen, find, put } = props
  const found = find.trim() === '' ? [] : cases.filter((row) => fits(row, find))
  const shown = [...(chosen ? [chosen] : []), ...found.filter(({ stream }) => stream !== chosen?.stream)]
  const few = shown.slice(0, mostShown)
  return (
    <fieldset className="stack">
      <legend className={styles.legend}>{words.whose}</legend>
      <TextField
        label={words.find}
        type="search"
        autoComplete="off"
        spellCheck={false}
        value={find}
        onText={(text) => put({ find: text })}
      />
      {find.trim() !== '' && found.length === 0 && <p role="status">{words.noneFound}</p>}
      <div className={styles.found}>
        {few.map((row) => (
          <label key={row.stream} className={styles.animal}>
            <input
              type="radio"
              name="whose"
              checked={row.stream === chosen?.stream}
              onChange={() => put({ stream: row.stream })}
            />
            <span>
              {fill(words.animal, {
                name: row.name,
                species: owedScreen[row.species === 'cat' ? 'cat' : 'dog'],
                owner: row.ownerName ?? words.noOwner,
              })}
            </span>
          </label>
        ))}
      </div>
      {shown.length > mostShown && (
        <p className="soft">{fill(words.more, { count: String(shown.length - mostShown) })}</p>
      )}
    </fieldset>
  )
}

function WhatItIs(props: {
  readonly draft: Draft
  readonly put: (part: Partial<Draft>) => void
  readonly dateError: string | null
}) {
  const { draft, put, dateError } = props
  const picture = draft.what === 'photograph'
  const options = [...paperKinds, 'photograph'] as const
  return (
    <>
      <Field label={words.what}>
        {(control) => (
          <select
            {...control}
            value={draft.what ?? ''}
            onChange={(event) => put({ what: event.target.value as What, named: null })}
          >
            <option value="" disabled />
            {options.map((one) => (
              <option key={one} value={one}>
                {words.seems[one]}
              </option>
            ))}
          </select>
        )}
      </Field>
      <TextField
        label={words.titleOf}
        help={words.titleHelp}
        maxLength={300}
        autoComplete="off"
        value={draft.title}
        onText={(text) => put({ title: text })}
      />
      {!picture && (
        <TextField
          label={words.dated}
          help={words.datedHelp}
          error={dateError}
          autoComplete="off"
          value={draft.dated}
          onText={(text) => put({ dated: text })}
        />
      )}
      {!picture && (
        <TextField
          label={words.takeIn.from}
          maxLength={300}
          autoComplete="off"
          value={draft.from}
          onText={(text) => put({ from: text })}
        />
      )}
      <Choices
        legend={picture ? words.sideInPicture : words.sideOnPaper}
        value={draft.named}
        options={picture ? inPicture : onPaper}
        say={(one) =>
          one !== 'not-stated' ? <SideWord side={one} /> : picture ? words.noSide : words.onPaper['not-stated']
        }
        onChoose={(named) => put({ named })}
      />
      {picture && (
        <Choices
          legend={words.takenBy}
          value={draft.takenBy}
          options={takers}
          say={(one) => words.takers[one]}
          onChoose={(takenBy) => put({ takenBy })}
        />
      )}
    </>
  )
}

/** Another side on the paper than the one it is filed to is said before it is kept; the person decides. */
function Disagreement({ draft: { named, place } }: { readonly draft: Draft }) {
  if (place === null || place === 'animal' || named === null || named === 'not-stated' || named === place) return null
  return (
    <Notice tone="warn" title={fill(words.disagree, { named: words.onPaper[named], filed: place })} live>
      <p>{words.disagreeHelp}</p>
    </Notice>
  )
}

function missingIn(draft: Draft, chosen: Case | null): string[] {
  const names = words.missingNames
  return [
    ...(chosen ? [] : [names.whose]),
    ...(draft.place === null ? [names.which] : []),
    ...(draft.what === null ? [names.what] : []),
    ...(draft.title.trim() === '' ? [names.titleOf] : []),
    ...(draft.named === null ? [draft.what === 'photograph' ? names.sideInPicture : names.sideOnPaper] : []),
    ...(draft.what === 'photograph' && draft.takenBy === null ? [names.takenBy] : []),
  ]
}

function namedIn(draft: Draft, dated: Moment | null): Parameters<typeof file>[3] | null {
  const { what, title, named, takenBy, from } = draft
  if (what === null || named === null) return null
  if (what !== 'photograph') {
    const body = { what, title: title.trim(), dated, from: from.trim() || null, sideOnPaper: named }
    return { kind: 'paper', body }
  }
  if (takenBy === null || named === 'BOTH') return null
  const sideInPicture = named === 'not-stated' ? 'none' : named
  return { kind: 'photograph', body: { shows: title.trim(), sideInPicture, takenBy } }
}

function readDate(text: string, zone: string): { readonly moment: Moment | null; readonly error: string | null } {
  if (text.trim() === '') return { moment: null, error: null }
  const read = readMoment(text, zone)
  if (!('because' in read)) return { moment: read, error: null }
  if (read.because !== 'day-or-month-first') return { moment: null, error: words.datedWrong }
  return { moment: null, error: fill(words.datedTwice, { readings: read.readings.join(', ') }) }
}
