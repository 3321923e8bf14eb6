import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { sides } from '#core/animal/species.ts'
import { isRecord, textIn } from '#core/forms/draft.ts'
import { partsOf, subjectKinds } from '#core/forms/subject-parts.ts'
import { optionWord, wordsAt } from '#core/forms/words.ts'
import { Option } from './choice-parts.tsx'
import { ChoiceFrame, ErrorLine, type Part, useTold } from './field-frame.tsx'
import styles from './forms.module.css'
import { type Choosable, useScope } from './scope.ts'

/** What an entry is about: first the kind of thing, then which one. */
export function SubjectPart(part: Part) {
  const { field, path, draft } = part
  const { set } = useScope()
  const told = useTold(part)
  const kind = textIn(isRecord(draft) ? draft.kind : undefined)
  const first = useTold({ field, path: `${path}.kind` })
  return (
    <ChoiceFrame field={field} told={{ ...told, error: first.error, errorId: first.errorId }}>
      <div className={styles.options}>
        {subjectKinds.map((option, index) => (
          <Option
            key={option}
            kind="radio"
            {...(index === 0 && { id: first.id })}
            name={first.id}
            word={optionWord(told.words, {}, option) ?? option}
            chosen={kind === option}
            onChoose={() => set(path, { ...(isRecord(draft) ? draft : {}), kind: option })}
          />
        ))}
      </div>
      {partsOf(kind).map((name) => (
        <SubjectDetail key={name} part={part} name={name} />
      ))}
    </ChoiceFrame>
  )
}

function SubjectDetail({ part, name }: { readonly part: Part; readonly name: string }) {
  const { words, choices, set } = useScope()
  const { field, draft } = part
  const path = `${part.path}.${name}`
  const told = useTold({ field, path })
  const label = wordsAt(words, `${field.at}.${name}`)?.label ?? name
  const options = optionsOf(name, choices.registers)
  const control = {
    id: told.id,
    value: textIn(isRecord(draft) ? draft[name] : undefined),
    'aria-describedby': told.errorId,
    'aria-invalid': told.error ? (true as const) : undefined,
    onChange: (event: { target: { value: string } }) => set(path, event.target.value),
  }
  return (
    <div className={styles.field}>
      <label htmlFor={told.id} className={styles.label}>
        {label}
      </label>
      <div className={styles.line} data-size="long">
        {options ? (
          <select {...control}>
            <option value="">{formsInEnglish.choose}</option>
            {options.map(({ id, label: word }) => (
              <option key={id} value={id}>
                {word}
              </option>
            ))}
          </select>
        ) : (
          <input type="text" autoComplete="off" {...control} />
        )}
      </div>
      <ErrorLine told={told} />
    </div>
  )
}

function optionsOf(
  name: string,
  registers: { readonly [register: string]: readonly Choosable[] | undefined },
): readonly Choosable[] | undefined {
  return name === 'side' ? sides.map((side) => ({ id: side, label: formsInEnglish.sides[side] })) : registers[name]
}
