import { type ReactNode, useId } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { allNormal } from '#core/forms/all-normal.ts'
import { type Draft, draftAt, withAnswer } from '#core/forms/draft.ts'
import type { Field } from '#core/forms/field.ts'
import type { Section } from '#core/forms/form.ts'
import { stillRefused } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import { isRelevant } from '#core/forms/relevant.ts'
import { openLooks, restNotAssessed } from '#core/forms/rest-not-assessed.ts'
import { wordsAt } from '#core/forms/words.ts'
import type { KindName } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { EarColumns } from './ear-columns.tsx'
import { ErrorSummary } from './error-summary.tsx'
import { EstimateRunning } from './estimate-running.tsx'
import { FieldPart } from './field-part.tsx'
import styles from './forms.module.css'
import { formFor, wordsFor } from './forms.ts'
import { AskedOpener } from './group-parts.tsx'
import { Otis3Running } from './otis-3-running.tsx'
import { type FormChoices, type FormScope, ScopeContext, useScope } from './scope.ts'

export type EntryFormProps = {
  readonly kind: KindName
  /** Plain JSON; the caller keeps it. */
  readonly draft: Draft
  onDraft(draft: Draft): void
  /** What `readDraft` refused, after somebody tried to save; a new list takes the focus. */
  readonly refusals: readonly FieldRefusal[]
  /** What is still wrong with fields that can be read: what they say does not go together. */
  readonly beside?: readonly FieldRefusal[]
  readonly place: Place
  readonly choices: FormChoices
  /** The moment now as a person would type it, for the buttons "Now". */
  readonly now?: () => string
  /** What the caller says under one field. */
  readonly under?: ((path: string) => ReactNode) | null
  /** What stands under the form: the buttons of the caller. */
  readonly children?: ReactNode
}

/** The form of one entry. It holds nothing itself: what is typed goes to `onDraft` and comes back as `draft`. */
export function EntryForm(props: EntryFormProps) {
  const { kind, draft, onDraft, place, choices, now = null, under = null, beside = [], children } = props
  const prefix = useId()
  const words = wordsFor(kind)
  const set: FormScope['set'] = (path, part, empties = null) => onDraft(withAnswer(draft, path, part, empties))
  const form = formFor(kind)
  const refusals = [...stillRefused(props.refusals, form, draft, place), ...beside]
  const scope: FormScope = { words, prefix, draft, refusals, place, choices, now, under, set }
  return (
    <ScopeContext value={scope}>
      <section className={styles.form} aria-label={kindsInEnglish[kind]}>
        <ErrorSummary refused={[{ prefix, words, side: null, refusals, asked: props.refusals }]} />
        {form.sections.map((section) => (
          <SectionPart key={section.id} section={section} alone={form.sections.length === 1} />
        ))}
        <RestButton fields={form.fields} path="" word={restWord(kind)} />
        {children}
      </section>
    </ScopeContext>
  )
}

function restWord(kind: KindName): string {
  return kind === 'referral' ? formsInEnglish.restNotAsked : formsInEnglish.restNotAssessed
}

function SectionPart({ section, alone }: { readonly section: Section; readonly alone: boolean }) {
  const { words, draft, place } = useScope()
  const [only] = section.fields
  // A section of one question needs no heading above it: the question is its heading.
  const single = section.fields.length === 1 && wordsAt(words, only?.at ?? '')?.label === words.sections[section.id]
  const headed = !alone && !single
  return (
    <section className={styles.section} data-single={single || undefined}>
      {headed && <h2 className={styles.heading}>{words.sections[section.id]}</h2>}
      <NormalButton section={section} />
      {section.pair ? <PairOfGroups fields={section.fields} /> : <Fields fields={section.fields} />}
      {section.running === 'estimate' && <EstimateRunning draft={draft} place={place} />}
      {section.running === 'otis-3' && <Otis3Running draft={draftAt(draft, 'otis3')} />}
    </section>
  )
}

function Fields({ fields }: { readonly fields: readonly Field[] }) {
  return fields.map((field) => <FieldAt key={field.at} field={field} />)
}

/** A field by its path from the top of the body. */
export function FieldAt({ field }: { readonly field: Field }) {
  const { draft, under = null } = useScope()
  const around = field.at.split('.').slice(0, -1).join('.')
  const part = (
    <FieldPart field={field} path={field.at} group={draftAt(draft, around)} draft={draftAt(draft, field.at)} />
  )
  if (under === null) return part
  return (
    <div className={styles.list}>
      {part}
      {under(field.at)}
    </div>
  )
}

/** The groups LEFT and RIGHT of one body, beside each other. */
function PairOfGroups({ fields }: { readonly fields: readonly Field[] }) {
  const scope = useScope()
  const columns = sides.flatMap((side) => {
    const field = fields.find(({ name }) => name === side)
    return field?.control.kind === 'group' ? [{ side, rows: rowsOf(field, field.control.fields, side, scope) }] : []
  })
  return <EarColumns level={3} columns={columns} />
}

function rowsOf(field: Field, fields: readonly Field[], side: Side, { draft }: FormScope): ReactNode[] {
  const group = draftAt(draft, side)
  const part = { field, path: side, group: draft, draft: group }
  const opener = field.nullable ? [<AskedOpener key="opener" part={part} fields={fields} />] : []
  if (field.nullable && (group === null || group === '' || group === undefined)) return opener
  const asked = fields.map((one) =>
    isRelevant(one, group) ? (
      <FieldPart key={one.at} field={one} path={`${side}.${one.name}`} group={group} draft={draftAt(group, one.name)} />
    ) : null,
  )
  const word = fill(formsInEnglish.restOfEar, { side })
  return [...opener, ...asked, <RestButton key="rest" fields={fields} path={side} word={word} />]
}

/** One tap for a section that was looked at and is normal: it says what it answers, and the answers then stand below. */
export function NormalButton({ section }: { readonly section: Section }) {
  const { draft, words, set } = useScope()
  const normal = allNormal(section, draft)
  const word = words.normal?.[section.id]
  if (normal === null || word === undefined) return null
  return (
    <button type="button" className={styles.rest} onClick={() => set('', normal)}>
      {word}
    </button>
  )
}

/** One tap for everything that nobody looked at. It changes only what is still open. */
export function RestButton(props: { readonly fields: readonly Field[]; readonly path: string; readonly word: string }) {
  const { fields, path, word } = props
  const { draft, set } = useScope()
  const group = draftAt(draft, path)
  if (openLooks(fields, group) < 2) return null
  return (
    <button type="button" className={styles.rest} onClick={() => set(path, restNotAssessed(fields, group))}>
      {word}
    </button>
  )
}
