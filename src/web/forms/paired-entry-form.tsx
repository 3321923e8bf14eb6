import { type ReactNode, useId } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { type Draft, draftAt, withAnswer } from '#core/forms/draft.ts'
import type { Form, Section } from '#core/forms/form.ts'
import { stillRefused } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import type { KindName } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { EarColumns } from './ear-columns.tsx'
import { FieldAt, NormalButton, RestButton } from './entry-form.tsx'
import { ErrorSummary } from './error-summary.tsx'
import styles from './forms.module.css'
import { formFor, wordsFor } from './forms.ts'
import { Otis3Running } from './otis-3-running.tsx'
import { type FormChoices, type FormScope, ScopeContext } from './scope.ts'

type BothEars<Of> = Readonly<Record<Side, Of>>
const noneBeside: BothEars<readonly FieldRefusal[]> = { LEFT: [], RIGHT: [] }

/**
 * Two entries of one kind at once, one for each ear, beside each other. The caller writes an entry for each ear whose
 * draft was touched (`isUntouched` of core/forms/relevant).
 */
export function PairedEntryForm(props: {
  readonly kind: KindName
  readonly drafts: BothEars<Draft>
  onDrafts(drafts: BothEars<Draft>): void
  readonly refusals: BothEars<readonly FieldRefusal[]>
  /** What is still wrong with fields that can be read. */
  readonly beside?: BothEars<readonly FieldRefusal[]>
  readonly place: Place
  readonly choices: FormChoices
  readonly now?: () => string
  readonly children?: ReactNode
}) {
  const { kind, drafts, onDrafts, refusals, beside = noneBeside, place, choices, now = null, children } = props
  const id = useId()
  const words = wordsFor(kind)
  const form = formFor(kind)
  const scopeOf = (side: Side): FormScope => ({
    words,
    prefix: `${id}-${side}`,
    draft: drafts[side],
    refusals: [...stillRefused(refusals[side], form, drafts[side], place), ...beside[side]],
    place,
    choices,
    now,
    set: (path, part, empties = null) => onDrafts({ ...drafts, [side]: withAnswer(drafts[side], path, part, empties) }),
  })
  const scopes = sides.map((side) => ({ side, scope: scopeOf(side) }))
  return (
    <section className={styles.form} aria-label={kindsInEnglish[kind]}>
      <ErrorSummary
        refused={scopes.map(({ side, scope }) => ({
          ...scope,
          side: formsInEnglish.ears[side],
          asked: refusals[side],
        }))}
      />
      <EarColumns level={2} columns={scopes.map(({ side, scope }) => ({ side, rows: rowsOf(form, side, scope) }))} />
      {children}
    </section>
  )
}

/** Everything of one ear, row by row, so that the same question of the other ear stands beside it. */
function rowsOf(form: Form, side: Side, scope: FormScope): ReactNode[] {
  const within = (key: string, part: ReactNode) => (
    <ScopeContext key={key} value={scope}>
      {part}
    </ScopeContext>
  )
  const rest = <RestButton fields={form.fields} path="" word={fill(formsInEnglish.restOfEar, { side })} />
  return [...form.sections.flatMap((section) => sectionRows(section, scope, within)), within('rest', rest)]
}

function sectionRows(
  section: Section,
  { words, draft }: FormScope,
  within: (key: string, part: ReactNode) => ReactNode,
): ReactNode[] {
  const heading = <h3 className={styles.heading}>{words.sections[section.id]}</h3>
  const fields = section.fields.map((field) => within(field.at, <FieldAt field={field} />))
  const running = section.running === 'otis-3' ? [<Otis3Running key="running" draft={draftAt(draft, 'otis3')} />] : []
  const normal = within('normal', <NormalButton section={section} />)
  return [within(section.id, heading), normal, ...fields, ...running]
}
