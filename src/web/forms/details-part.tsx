import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { isRecord, textIn } from '#core/forms/draft.ts'
import type { CheckpointDetail } from '#core/procedures/procedure.ts'
import { Option } from './choice-parts.tsx'
import { ChoiceFrame, type Part, useTold } from './field-frame.tsx'
import styles from './forms.module.css'
import { idOf, useScope } from './scope.ts'

/** What the operation asks at the chosen checkpoint. A detail it does not know (of an older edition) can still be read. */
export function DetailsPart(part: Part & { readonly checkpoint: string }) {
  const { field, path, draft, checkpoint } = part
  const { choices } = useScope()
  const told = useTold(part)
  const given = isRecord(draft) ? draft : {}
  const details = choices.checkpoints.find(({ id }) => id === checkpoint)?.details ?? []
  const others = Object.keys(given).filter((id) => !details.some((detail) => detail.id === id))
  const typed = others.map((id) => ({ id, asks: id, kind: 'words', sentence: '{answer}' }) as const)
  const none = checkpoint === '' ? formsInEnglish.detailsAfterCheckpoint : formsInEnglish.noDetails
  return (
    <ChoiceFrame field={field} told={told}>
      {details.length + typed.length === 0 && <p className={styles.help}>{none}</p>}
      <div className={styles.group}>
        {[...details, ...typed].map((detail) => (
          <DetailPart key={detail.id} detail={detail} path={`${path}.${detail.id}`} given={textIn(given[detail.id])} />
        ))}
      </div>
    </ChoiceFrame>
  )
}

type One = { readonly detail: CheckpointDetail; readonly path: string; readonly given: string }

function DetailPart({ detail, path, given }: One) {
  const scope = useScope()
  const id = idOf(scope, path)
  if (detail.kind === 'coded') {
    return (
      <fieldset className={styles.field}>
        <legend className={styles.label}>{detail.asks}</legend>
        <div className={styles.options}>
          {Object.entries(detail.answers).map(([answer, sentence]) => (
            <Option
              key={answer}
              kind="radio"
              name={id}
              word={sentence}
              chosen={given === answer}
              onChoose={() => scope.set(path, answer)}
            />
          ))}
        </div>
      </fieldset>
    )
  }
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        {detail.asks}
      </label>
      <div className={styles.line} data-size={detail.kind === 'number' ? 'short' : 'long'}>
        <input
          type="text"
          id={id}
          value={given}
          autoComplete="off"
          inputMode={detail.kind === 'number' ? 'decimal' : undefined}
          onChange={(event) => scope.set(path, event.target.value)}
        />
      </div>
    </div>
  )
}
