import { type FormEvent, useMemo, useState } from 'react'
import { Link, useLocation, useSearchParams } from 'wouter'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { dividesInEnglish } from '#content/wording/app-formulary.ts'
import { howInEnglish as how } from '#content/wording/app-how.ts'
import { plansInEnglish as plans } from '#content/wording/app-settings-doses.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { judgeAmong, judgedAt } from '#core/dosing/plan-now.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import { rowsFor } from '#core/dosing/read-chosen.ts'
import { nothingSaid, questionsOf } from '#core/dosing/read-how.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { rowKey } from '#core/formulary/drug.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { Caution } from '../../../design/caution.tsx'
import { Field } from '../../../design/field.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { DoseChoice } from '../../settings/dose-choice.tsx'
import { choosingFacts, drugs } from '../../settings/drugs.ts'
import { HowPart } from '../../settings/how-part.tsx'
import { sayProduct } from '../../settings/say-product.ts'
import { dosePlanHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { Ceilings } from '../doses.tsx'
import { FindingList } from '../finding-list.tsx'
import { asksReason, becauseOf, reasonFault } from '../line-reason.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { useOperationHere } from '../use-operation-here.ts'
import { WithCase } from '../with-case.tsx'
import styles from './dose-plan.module.css'
import { type Body, draftOfBody, emptyDraft, type LineDraft, readLine } from './line-draft.ts'
import { LineSteps } from './line-steps.tsx'
import { sayDelivered, sayTake } from './say-line.ts'

const words = dosePlanInEnglish.editor

/** One line of a dose plan is added or changed, judged with the whole plan while it is typed. */
export default function PlanLineScreen() {
  return (
    <WithCase>
      <PlanLinePage />
    </WithCase>
  )
}

function PlanLinePage() {
  const { wanted, operation, subject } = useOperationHere()
  const [query] = useSearchParams()
  const { id } = useCaseView()
  const { me } = useWho()
  const name = query.get('line')
  const roles = mayWrite['planned-line']
  return (
    <Page
      title={name === null ? words.newTitle : words.changeTitle}
      lead={<p>{words.lead}</p>}
      whose={<CaseLine about={subject} />}
    >
      {!operation ? (
        <p>{dosePlanInEnglish.noOperation}</p>
      ) : !roles.some((role) => role === me.role) ? (
        <MayNotWrite kind="planned-line" />
      ) : (
        <Editor key={name} operation={operation} name={name} />
      )}
      <p>
        <Link href={dosePlanHref(id, wanted)}>{words.back}</Link>
      </p>
    </Page>
  )
}

function Editor({ operation, name }: { readonly operation: OperationOnFile; readonly name: string | null }) {
  const { file, id } = useCaseView()
  const { me, pen, clinic } = useWho()
  const { theCase, house } = file
  const [, navigate] = useLocation()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const minute = useMinute()
  const species = theCase.latest('identity')?.body.species
  const weight = theCase.latest('weight')
  const planned = linesAbout(theCase, 'planned-line', operation.id)
  const standing = planned.find(({ body }) => body.line === name)
  const facts = species ? { ...choosingFacts, decimalMark: clinic.row.decimalMark, species } : null
  const empty = () => (standing && facts ? draftOfBody(standing.body, facts) : emptyDraft)
  const place = `planned-line ${operation.id} ${standing?.header.id ?? 'new'}`
  const { draft: kept, change, clear, ready } = useDraft<LineDraft>(place, me.id, empty)
  // A draft that an older build kept lacks the newer questions.
  const draft = { ...emptyDraft, ...kept }
  const read = facts && readLine(draft, facts, house)
  const asked = read?.asked ?? null
  const title = draft.line.trim()
  const key = asked && JSON.stringify(asked)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for the whole line
  const judged = useMemo(
    () => (asked ? judgeAmong(file, operation.id, asked, judgedAt(file.theCase, minute), knowledgeOf(file)) : null),
    [file, operation.id, key, minute],
  )
  if (!ready) return null
  if (!facts || !read) return <Notice tone="warn" title={dosePlanInEnglish.noAnimal} />
  const taken = planned.some(({ body, header }) => body.line === title && header.id !== standing?.header.id)
  const tried = tries > 0
  const nameFault = title === '' ? words.nameMissing : taken ? words.nameTaken : null
  const line = judged?.line ?? null
  const confirmFault = line && reasonFault(line, draft.because, draft.confirm)
  const reasonMissing = standing !== undefined && draft.reason.trim() === ''
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (nameFault !== null || confirmFault !== null || reasonMissing || !weight || !asked) return
    if (!line || line.verdict === 'refused') return
    const body: Body = plannedBody(line, {
      asked,
      because: becauseOf(draft.because, asksReason(line) ? draft.confirm : ''),
      plan: standing?.body.plan ?? null,
      shelfItem: draft.shelfItem === '' ? null : draft.shelfItem,
      weight: fromStored(weight.body.weight),
    })
    await writeEntry(pen, {
      kind: 'planned-line',
      stream: file.stream,
      subject: aboutOperation(file, operation.id),
      body,
      supersedes: standing ? [standing.header.id] : [],
      reason: draft.reason.trim() || null,
    })
    await clear()
    navigate(dosePlanHref(id, operation.id))
  }
  const drug = drugs.find((one) => one.id === draft.drug)
  const row = rowsFor(drug, facts.species).find((one) => rowKey(one) === draft.row)
  const products = house.live('shelf-item').filter(({ body }) => body.drug === draft.drug)
  const isGone = draft.shelfItem !== '' && products.every(({ body }) => body.item !== draft.shelfItem)
  return (
    <form ref={form} className="stack" onSubmit={(event) => void keep(event)} noValidate>
      {!weight && <Notice tone="warn" title={words.noWeight} />}
      <TextField
        label={words.name}
        help={words.nameHelp}
        error={tried ? nameFault : null}
        maxLength={80}
        autoComplete="off"
        readOnly={standing !== undefined}
        value={draft.line}
        onText={(text) => change({ ...draft, line: text })}
      />
      <DoseChoice
        draft={draft}
        species={facts.species}
        refusals={tried ? read.chosen : []}
        onChange={(next) => {
          const same = next.drug === draft.drug
          change({
            ...draft,
            ...next,
            ...(same ? {} : { ...nothingSaid, shelfItem: '', strength: '', divides: '', rounds: '' }),
          })
        }}
      />
      {draft.drug !== '' && (
        <>
          {(products.length > 0 || isGone) && (
            <Field label={words.fromShelf} help={words.strengthHelp}>
              {(control) => (
                <select
                  {...control}
                  value={draft.shelfItem}
                  onChange={(event) => change({ ...draft, shelfItem: event.target.value })}
                >
                  <option value="">{words.notFromShelf}</option>
                  {products.map(({ header, body }) => (
                    <option key={header.id} value={body.item}>
                      {sayProduct(body, dayOf({ at: minute, zone: clinic.row.zone }))}
                    </option>
                  ))}
                  {isGone && <option value={draft.shelfItem}>{fill(plans.gone, { id: draft.shelfItem })}</option>}
                </select>
              )}
            </Field>
          )}
          {draft.shelfItem === '' && (
            <TextField
              label={words.typed}
              help={words.typedHelp}
              error={read.strengthWrong ? words.typedWrong : null}
              autoComplete="off"
              value={draft.strength}
              onText={(text) => change({ ...draft, strength: text })}
            />
          )}
          {asked?.tablet && draft.shelfItem === '' && (
            <Field label={how.divides}>
              {(control) => (
                <select
                  {...control}
                  value={draft.divides}
                  onChange={(event) => change({ ...draft, divides: event.target.value as LineDraft['divides'] })}
                >
                  <option value="">{how.dividesUnsaid}</option>
                  {(['whole', 'halves', 'quarters'] as const).map((one) => (
                    <option key={one} value={one}>
                      {dividesInEnglish[one]}
                    </option>
                  ))}
                </select>
              )}
            </Field>
          )}
          {asked?.tablet && (
            <Field label={how.rounds} help={how.roundsHelp}>
              {(control) => (
                <select
                  {...control}
                  value={draft.rounds}
                  onChange={(event) => change({ ...draft, rounds: event.target.value as LineDraft['rounds'] })}
                >
                  <option value="">{how.roundsUnread}</option>
                  <option value="up">{how.roundsWords.up}</option>
                  <option value="down">{how.roundsWords.down}</option>
                </select>
              )}
            </Field>
          )}
        </>
      )}
      {drug && row && (
        <HowPart
          draft={draft}
          row={row}
          questions={questionsOf(drug, row, true)}
          refusals={tried ? read.how : []}
          onChange={(next) => change({ ...draft, ...next })}
        />
      )}
      <section aria-live="polite" className={styles.result}>
        <h2>{words.result}</h2>
        {judged && line ? (
          <Result line={line} lines={judged.result.lines} ceilings={judged.result.ceilings} />
        ) : (
          <p>{words.noResult}</p>
        )}
      </section>
      {line && line.verdict !== 'refused' && asksReason(line) && (
        <TextField
          label={words.confirm}
          help={words.confirmHelp}
          error={tried ? confirmFault : null}
          autoComplete="off"
          value={draft.confirm}
          onText={(text) => change({ ...draft, confirm: text })}
        />
      )}
      {standing && (
        <TextField
          label={words.reason}
          error={tried && reasonMissing ? words.reasonMissing : null}
          autoComplete="off"
          value={draft.reason}
          onText={(text) => change({ ...draft, reason: text })}
        />
      )}
      {line?.verdict === 'refused' && <p className={styles.stop}>{words.refused}</p>}
      <p>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
      </p>
      <Caution />
    </form>
  )
}

function Result(props: {
  readonly line: DoseLine
  readonly lines: readonly DoseLine[]
  readonly ceilings: Parameters<typeof Ceilings>[0]['ceilings']
}) {
  const { line, lines, ceilings } = props
  return (
    <>
      {line.verdict === 'refused' ? (
        <p className={`${styles.draw} ${styles.stop}`}>{dosePlanInEnglish.line.refused}</p>
      ) : (
        <>
          <p className={styles.draw}>{sayTake(line)}</p>
          <p>{sayDelivered(line)}</p>
          <LineSteps now={line} lines={lines} />
        </>
      )}
      <FindingList findings={line.findings} />
      {ceilings.length > 0 && <Ceilings ceilings={ceilings} />}
    </>
  )
}
