import { type FormEvent, useEffect, useRef, useState } from 'react'
import { useLocation, useParams } from 'wouter'
import { speciesInEnglish } from '#content/wording/app-formulary.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { plansInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { speciesList } from '#core/animal/species.ts'
import { nothingSaid } from '#core/dosing/read-how.ts'
import { type LineDraft, type PlanDraft, type PlanRefusal, planDraftOf, readPlan } from '#core/dosing/read-plan.ts'
import type { Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { Caution } from '../../design/caution.tsx'
import { DraftAwaited } from '../../design/draft-awaited.tsx'
import { Notice } from '../../design/notice.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { TextField } from '../../design/text-field.tsx'
import { useHouse } from '../../journal/cases.ts'
import { newId } from '../../journal/device.ts'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { Options } from './dose-choice.tsx'
import { choosingFacts } from './drugs.ts'
import { SettingsPage } from './frame.tsx'
import { decoded, replacedBy } from './house-lines.ts'
import { useRefusal } from './may.ts'
import { type Plan, planHref } from './plan.tsx'
import { PlanLineEditor } from './plan-line-editor.tsx'

type Draft = PlanDraft & { readonly reason: string }
const emptyLine = (): LineDraft => ({
  ...nothingSaid,
  key: newId(),
  line: '',
  drug: '',
  row: '',
  route: '',
  dose: '',
  because: '',
  shelfItem: '',
})

/** Writes a usual plan, or changes one. */
export function PlanEditorScreen() {
  const { plan } = useParams<{ plan?: string }>()
  const name = plan === undefined ? null : decoded(plan)
  const reading = useHouse()
  const refusal = useRefusal(mayWrite['usual-plan'])
  const title = name === null ? words.newTitle : fill(words.editTitle, { plan: name })
  return (
    <SettingsPage part="plans" title={title} lead={words.cautionNote}>
      {refusal ? (
        <p>{refusal}</p>
      ) : (
        <ReadingView reading={reading}>
          {({ file: { house } }) => {
            const line = house.live('usual-plan').find(({ body }) => body.plan === name) ?? null
            if (name !== null && !line) return <p>{words.noSuch}</p>
            return <Editor key={line?.header.id ?? 'new'} house={house} line={line} />
          }}
        </ReadingView>
      )}
      <Caution />
    </SettingsPage>
  )
}

function Editor({ house, line }: { readonly house: Case; readonly line: Line<Plan> | null }) {
  const { me, pen, clinic } = useWho()
  const facts = { ...choosingFacts, decimalMark: clinic.row.decimalMark }
  const empty = (): Draft =>
    line
      ? { ...planDraftOf(line.body, facts), reason: '' }
      : { plan: '', species: '', lines: [emptyLine()], reason: '' }
  const kept = useDraft<Draft>(`usual-plan ${line?.header.id ?? 'new'}`, me.id, empty)
  const { change, clear, ready, found } = kept
  // A draft that an older build kept lacks the newer questions.
  const draft = { ...kept.draft, lines: kept.draft.lines.map((one) => ({ ...nothingSaid, ...one })) }
  const [refusals, setRefusals] = useState<readonly PlanRefusal[]>([])
  const [, navigate] = useLocation()
  const others = house.live('usual-plan').filter(({ header }) => header.id !== line?.header.id)
  const reasonMissing = line !== null && draft.reason.trim() === ''
  const [tried, setTried] = useState(false)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const read = readPlan(
      draft,
      facts,
      others.map(({ body }) => body.plan),
    )
    setRefusals(read.kind === 'refusal' ? read.refusal : [])
    if (read.kind === 'refusal' || reasonMissing) return
    await writeEntry(pen, {
      kind: 'usual-plan',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: read.answer,
      supersedes: replacedBy(house, line),
      reason: draft.reason.trim() || null,
    })
    await clear()
    navigate(planHref(read.answer.plan))
  }
  if (!ready) return <DraftAwaited />
  const at = (place: 'plan' | 'species' | 'lines') => refusals.find((one) => one.at === place)
  const setLine = (key: string, next: LineDraft) =>
    change({ ...draft, lines: draft.lines.map((one) => (one.key === key ? next : one)) })
  const { species } = draft
  return (
    <form onSubmit={keep} className="stack" noValidate>
      {found && (
        <Notice>
          <p>{fill(settingsInEnglish.draftFound, { when: sayWhen(found, pen.zone) })}</p>
          <p>
            <button type="button" onClick={() => void clear().then(() => change(empty()))}>
              {settingsInEnglish.startAgain}
            </button>
          </p>
        </Notice>
      )}
      <Refusals refusals={refusals} also={tried && reasonMissing ? 1 : 0} />
      <TextField
        label={words.name}
        help={words.nameHelp}
        error={sayPlace(at('plan'))}
        maxLength={300}
        autoComplete="off"
        value={draft.plan}
        onText={(text) => change({ ...draft, plan: text })}
      />
      <Options
        legend={words.species}
        error={sayPlace(at('species'))}
        options={speciesList.map((one) => [one, speciesInEnglish[one]] as const)}
        value={species}
        onChange={(next) => change(forSpecies(draft, next as Draft['species']))}
      />
      {species !== '' && draft.lines.some(({ drug }) => drug !== '') && <p className="soft">{words.speciesFixed}</p>}
      {species !== '' &&
        draft.lines.map((one, index) => (
          <PlanLineEditor
            key={one.key}
            number={index + 1}
            draft={one}
            species={species}
            house={house}
            refusals={refusals}
            onChange={(next) => setLine(one.key, next)}
            onRemove={() => change({ ...draft, lines: draft.lines.filter(({ key }) => key !== one.key) })}
          />
        ))}
      {at('lines') && <p role="alert">{words.noLines}</p>}
      {species !== '' && (
        <p>
          <button type="button" onClick={() => change({ ...draft, lines: [...draft.lines, emptyLine()] })}>
            {words.addLine}
          </button>
        </p>
      )}
      {line && (
        <TextField
          label={words.reason}
          help={words.reasonHelp}
          error={tried && reasonMissing ? words.notWritten : null}
          autoComplete="off"
          value={draft.reason}
          onText={(text) => change({ ...draft, reason: text })}
        />
      )}
      <p>
        <button type="submit" data-weight="main">
          {words.save}
        </button>
      </p>
    </form>
  )
}

/** A plan is for one animal: the rows of another animal mean nothing here. */
function forSpecies(draft: Draft, species: Draft['species']): Draft {
  if (species === draft.species) return draft
  const lines = draft.lines.map((line) => ({
    ...line,
    ...nothingSaid,
    drug: '',
    row: '',
    route: '',
    dose: '',
    shelfItem: '',
  }))
  return { ...draft, species, lines }
}

function sayPlace(refusal: PlanRefusal | undefined): string | null {
  if (!refusal) return null
  if (refusal.at === 'plan' && refusal.because === 'taken') return words.nameTaken
  return refusal.at === 'species' ? words.notChosen : words.notWritten
}

/** How many things are missing; each is said where it is missing. Takes the focus after a try to save. */
function Refusals({ refusals, also }: { readonly refusals: readonly PlanRefusal[]; readonly also: number }) {
  const box = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (refusals.length > 0) box.current?.focus()
  }, [refusals])
  const count = refusals.length + also
  if (count === 0) return null
  return (
    <p ref={box} tabIndex={-1} role="alert">
      <strong>{sayCount(words.refused, count)}</strong>
    </p>
  )
}
