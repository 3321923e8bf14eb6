import { Fragment, type ReactElement, useEffect, useRef, useState } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { isRecord } from '#core/forms/draft.ts'
import { emptyGroup } from '#core/forms/empty-draft.ts'
import type { Field } from '#core/forms/field.ts'
import { fill } from '#core/outcome/finding.ts'
import { NoneOption, Option } from './choice-parts.tsx'
import { ChoiceFrame, ErrorLine, Help, LabelText, type Part, useTold } from './field-frame.tsx'
import styles from './forms.module.css'
import { useScope } from './scope.ts'

/** Draws one field; handed in, because a field may be a group of fields again. */
type DrawField = (part: Part) => ReactElement

/** The fields of a group one under the other. */
function GroupFields(props: {
  readonly fields: readonly Field[]
  readonly path: string
  readonly group: Part['draft']
  readonly drawField: DrawField
}) {
  const { fields, path, group, drawField } = props
  const record = isRecord(group) ? group : {}
  return fields.map((field) => {
    const at = `${path}.${field.name}`
    return <Fragment key={at}>{drawField({ field, path: at, group, draft: record[field.name] })}</Fragment>
  })
}

/** A nested group. One that may be missing is opened by a choice; nothing inside is asked before. */
export function GroupPart(part: Part & { readonly fields: readonly Field[]; readonly drawField: DrawField }) {
  const { field, fields, path, draft, drawField } = part
  const { set } = useScope()
  const told = useTold(part)
  const [moved, setMoved] = useState<'in' | 'out' | null>(null)
  const inside = useRef<HTMLDivElement>(null)
  // The keyboard goes into what was opened, and back to the button when it is taken out again.
  useEffect(() => {
    if (moved === 'in') inside.current?.querySelector<HTMLElement>('input, select, textarea')?.focus()
    if (moved === 'out') document.getElementById(told.id)?.focus()
    setMoved(null)
  }, [moved, told.id])
  if (!field.nullable) {
    return (
      <ChoiceFrame field={field} told={told}>
        <div className={styles.group}>
          <GroupFields fields={fields} path={path} group={draft} drawField={drawField} />
        </div>
      </ChoiceFrame>
    )
  }
  return (
    <ChoiceFrame field={field} told={told}>
      <Opener part={part} fields={fields} onOpen={() => setMoved('in')} />
      {isRecord(draft) && (
        <div className={styles.group} ref={inside}>
          <GroupFields fields={fields} path={path} group={draft} drawField={drawField} />
          {field.blank === 'optional' && (
            <button
              type="button"
              data-weight="quiet"
              onClick={() => {
                set(path, '')
                setMoved('out')
              }}
            >
              {formsInEnglish.close}
            </button>
          )}
        </div>
      )}
    </ChoiceFrame>
  )
}

/** Opens a group that may be missing: a button where silence is fine, two answers where a person must choose. */
function Opener(props: { readonly part: Part; readonly fields: readonly Field[]; onOpen?: () => void }) {
  const { part, fields, onOpen } = props
  const { field, path, draft } = part
  const { set } = useScope()
  const told = useTold(part)
  if (field.blank === 'optional') {
    if (isRecord(draft)) return null
    return (
      <button
        type="button"
        id={told.id}
        onClick={() => {
          set(path, emptyGroup(fields))
          onOpen?.()
        }}
      >
        {told.words.open}
      </button>
    )
  }
  return (
    <div className={styles.options}>
      <Option
        kind="radio"
        id={told.id}
        name={told.id}
        word={told.words.open ?? ''}
        chosen={isRecord(draft)}
        onChoose={() => set(path, emptyGroup(fields))}
      />
      <Option
        kind="radio"
        name={told.id}
        word={told.words.none ?? ''}
        quiet
        chosen={draft === null}
        onChoose={() => set(path, null)}
      />
    </div>
  )
}

/** The same with its question and its fault, where nothing around it says them. */
export function AskedOpener({ part, fields }: { readonly part: Part; readonly fields: readonly Field[] }) {
  const told = useTold(part)
  return (
    <ChoiceFrame field={part.field} told={told} role="radiogroup">
      <Opener part={part} fields={fields} />
    </ChoiceFrame>
  )
}

/** A list of groups: one more, one less. The keyboard stays where the work is. */
export function ListPart(part: Part & { readonly fields: readonly Field[]; readonly drawField: DrawField }) {
  const { field, fields, path, draft, drawField } = part
  const { set } = useScope()
  const told = useTold(part)
  const items = Array.isArray(draft) ? draft : []
  const [moved, setMoved] = useState<number | 'add' | null>(null)
  const list = useRef<HTMLFieldSetElement>(null)
  useEffect(() => {
    if (moved === null) return
    const within = moved === 'add' ? list.current : list.current?.querySelectorAll('[data-item]')[moved]
    within?.querySelector<HTMLElement>(moved === 'add' ? '[data-add]' : 'input, select, textarea')?.focus()
    setMoved(null)
  }, [moved])
  return (
    <fieldset className={styles.list} aria-describedby={told.describedBy} ref={list}>
      <legend className={styles.label}>
        <LabelText field={field} words={told.words} />
      </legend>
      <Help told={told} />
      {items.map((item, index) => (
        // The place in the list is what the draft knows an item by.
        // biome-ignore lint/suspicious/noArrayIndexKey: drafts are plain JSON without ids
        <fieldset key={index} className={styles.item} data-item="">
          <legend className={styles.itemName}>{itemName(told.words.item, index)}</legend>
          <button
            type="button"
            className={styles.removal}
            data-weight="quiet"
            aria-label={fill(formsInEnglish.removeItem, { item: itemName(told.words.item, index) })}
            onClick={() => {
              set(
                path,
                items.filter((_, at) => at !== index),
              )
              setMoved('add')
            }}
          >
            {formsInEnglish.remove}
          </button>
          <div className={styles.itemFields} data-columns={fields.length === 3 ? 3 : undefined}>
            <GroupFields fields={fields} path={`${path}.${index}`} group={item} drawField={drawField} />
          </div>
        </fieldset>
      ))}
      <div className={styles.options}>
        <button
          type="button"
          id={told.id}
          data-add=""
          onClick={() => {
            set(path, [...items, emptyGroup(fields)])
            setMoved(items.length)
          }}
        >
          {told.words.add}
        </button>
        {items.length === 0 && <NoneOption part={part} word={told.words.none} />}
      </div>
      <ErrorLine told={told} />
    </fieldset>
  )
}

function itemName(template: string | undefined, index: number): string {
  return fill(template ?? '{number}', { number: String(index + 1) })
}
