import { type ReactNode, useEffect, useState } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { textIn } from '#core/forms/draft.ts'
import type { Control } from '#core/forms/field.ts'
import { readBack, refusalWhileTyping } from '#core/forms/read-back.ts'
import type { Place } from '#core/forms/refusal.ts'
import { unitOf } from '#core/forms/unit-of.ts'
import { optionWord } from '#core/forms/words.ts'
import { fill } from '#core/outcome/finding.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { Option } from './choice-parts.tsx'
import { LabelledFrame, type Part, type Told, useTold } from './field-frame.tsx'
import styles from './forms.module.css'
import { sayRefusal } from './say-refusal.ts'
import { type Choosable, idOf, useScope } from './scope.ts'

/** A line or a box to type in: text, numbers, quantities, dates. What it was read as is said below. */
export function TextPart(props: Part & { readonly beside?: ReactNode }) {
  const { beside, ...part } = props
  const { field, path, draft, group } = part
  const scope = useScope()
  const [left, setLeft] = useState(false)
  const live = left ? refusalWhileTyping(field, group, scope.place) : null
  const told = useTold(part, live && sayRefusal(live, scope.words))
  const back = readBack(field, draft, scope.place)
  const unit = unitBeside(part, scope.place)
  const common = {
    id: told.id,
    value: textIn(draft),
    'aria-describedby':
      [told.describedBy, back && `${told.id}-back`, unit && `${told.id}-unit`].filter(Boolean).join(' ') || undefined,
    'aria-invalid': told.error ? (true as const) : undefined,
    'aria-required': field.blank === 'optional' ? undefined : (true as const),
    onChange: (event: { target: { value: string } }) => scope.set(path, event.target.value),
    onBlur: () => setLeft(true),
  }
  const long = field.control.kind === 'long-text' || field.control.kind === 'lines'
  return (
    <LabelledFrame
      field={field}
      told={told}
      after={
        <>
          {back && (
            <p id={`${told.id}-back`} className={styles.back} aria-live="polite">
              {fill(formsInEnglish.readAs, { value: back })}
            </p>
          )}
          {long && <NoneTick part={part} told={told} />}
        </>
      }
    >
      {long ? (
        <textarea rows={field.control.kind === 'lines' ? 2 : 4} {...common} />
      ) : (
        <div className={styles.line} data-size={unit ? 'short' : sizeOf(field.control)}>
          <input type="text" inputMode={keyboardOf(field.control)} autoComplete="off" {...common} />
          {unit && (
            <span id={`${told.id}-unit`} className={styles.unit}>
              {unit}
            </span>
          )}
          <NowButton part={part} />
          <NoneTick part={part} told={told} />
          {beside}
        </div>
      )}
    </LabelledFrame>
  )
}

/** "Now" beside a time that is often the present. */
function NowButton({ part }: { readonly part: Part }) {
  const { now, set } = useScope()
  if (!now || !part.field.now) return null
  return (
    <button type="button" data-weight="quiet" onClick={() => set(part.path, now())}>
      {formsInEnglish.now}
    </button>
  )
}

/** "Not done", "none": an answer of its own beside a box that would otherwise just be empty. */
export function NoneTick({ part, told }: { readonly part: Part; readonly told: Told }): ReactNode {
  const { set } = useScope()
  const { field, path, draft } = part
  if (!told.words.none || (field.blank !== 'none' && field.blank !== 'not-assessed')) return null
  return (
    <Option
      kind="checkbox"
      quiet
      word={told.words.none}
      chosen={draft === null}
      describedBy={told.errorId}
      onChoose={() => set(path, draft === null ? '' : null)}
    />
  )
}

/** The unit that needs no typing, because the field takes no other. */
function unitBeside({ field, group }: Part, { currency }: Place): string | null {
  const { control } = field
  if (control.kind === 'money') return currency
  if (control.kind !== 'quantity') return null
  const unit = unitOf(control, group)
  if (unit) return unitWord(unit)
  return control.unitBy ? formsInEnglish.unitAfterWhat : null
}

function keyboardOf(control: Control): 'numeric' | 'decimal' | undefined {
  if (control.kind === 'whole-number') return 'numeric'
  if (control.kind === 'decimal') return 'decimal'
  return control.kind === 'quantity' && (control.units.length === 1 || control.unitBy) ? 'decimal' : undefined
}

function sizeOf({ kind }: Control): 'short' | 'medium' | 'long' {
  if (kind === 'whole-number' || kind === 'decimal' || kind === 'time-of-day') return 'short'
  return kind === 'text' || kind === 'from-register' ? 'long' : 'medium'
}

/** "Nothing of this" and "not in this list" as choices of a list to open; no id of the journal begins with a space. */
const noneValue = ' none'
const otherValue = ' other'

/** A list to open: many options, or the things a register or the case holds. */
export function SelectPart(part: Part & { readonly options: readonly Choosable[]; onOther?: () => void }) {
  const { field, path, draft, options, onOther } = part
  const { set } = useScope()
  const told = useTold(part)
  const text = textIn(draft)
  const offered = field.blank !== 'required' ? told.words.none : undefined
  const stray = text !== '' && !options.some(({ id }) => id === text)
  const choose = (value: string) => {
    if (value === otherValue) onOther?.()
    else set(path, value === noneValue ? null : value, field.empties)
  }
  return (
    <LabelledFrame field={field} told={told}>
      <div className={styles.line} data-size="long">
        <select
          id={told.id}
          value={draft === null && offered ? noneValue : text}
          aria-describedby={told.describedBy}
          aria-invalid={told.error ? true : undefined}
          aria-required={field.blank === 'optional' ? undefined : true}
          onChange={(event) => choose(event.target.value)}
        >
          <option value="">{options.length === 0 ? formsInEnglish.noneOnRecord : formsInEnglish.choose}</option>
          {offered && <option value={noneValue}>{offered}</option>}
          {onOther && <option value={otherValue}>{formsInEnglish.writeOther}</option>}
          {stray && <option value={text}>{fill(formsInEnglish.notInList, { id: text })}</option>}
          {options.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </div>
    </LabelledFrame>
  )
}

/** A list to open where a name that is not in it may be written: what was really given is always recorded. */
export function FreeSelectPart(part: Part & { readonly options: readonly Choosable[] }) {
  const { path, draft, options } = part
  const scope = useScope()
  const { set } = scope
  const id = idOf(scope, path)
  const text = textIn(draft)
  const [writing, setWriting] = useState(text !== '' && !options.some(({ id }) => id === text))
  const [turned, setTurned] = useState(false)
  // The keyboard stays at the field when the list becomes a line to write on, and back.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the other control is there only after the turn
  useEffect(() => {
    if (turned) document.getElementById(id)?.focus()
    setTurned(false)
  }, [turned, writing])
  const turn = (next: boolean) => {
    setWriting(next)
    setTurned(true)
    set(path, '')
  }
  if (!writing) return <SelectPart {...part} onOther={() => turn(true)} />
  const back = (
    <button type="button" data-weight="quiet" onClick={() => turn(false)}>
      {formsInEnglish.chooseFromList}
    </button>
  )
  return <TextPart field={part.field} path={path} group={part.group} draft={draft} beside={back} />
}

/** The options of a field with their words, as things to choose. */
export function worded(options: readonly string[], words: Told['words']): Choosable[] {
  return options.map((id) => ({ id, label: optionWord(words, formsInEnglish.options, id) ?? id }))
}
