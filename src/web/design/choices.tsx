import { type ReactNode, useId } from 'react'
import styles from './choices.module.css'

/**
 * One question with a few answers, all in sight. Nothing is answered beforehand: `value` is null until somebody chose.
 *
 * @example <Choices legend="Which ear?" value={side} options={['LEFT', 'RIGHT']} say={(one) => one} onChoose={setSide} />
 */
export function Choices<Option extends string>(props: {
  readonly legend: ReactNode
  readonly help?: string
  readonly error?: string | null
  readonly value: Option | null
  readonly options: readonly Option[]
  readonly say: (option: Option) => ReactNode
  readonly onChoose: (option: Option) => void
  /** One question of a list of like ones: legend and answers on one line where there is room. */
  readonly inline?: boolean
}) {
  const { legend, help, error, value, options, say, onChoose, inline = false } = props
  const id = useId()
  const told = [help && `${id}-help`, error && `${id}-error`].filter(Boolean).join(' ')
  return (
    <fieldset
      className={inline ? styles.inline : styles.choices}
      aria-describedby={told || undefined}
      aria-invalid={error ? true : undefined}
    >
      <legend className={styles.legend}>{legend}</legend>
      {help && (
        <p id={`${id}-help`} className={styles.help}>
          {help}
        </p>
      )}
      <div className={styles.options}>
        {options.map((option) => (
          <label key={option} className={styles.option}>
            <input type="radio" name={id} checked={value === option} onChange={() => onChoose(option)} />
            <span>{say(option)}</span>
          </label>
        ))}
      </div>
      {error && (
        <p id={`${id}-error`} className={styles.error}>
          {error}
        </p>
      )}
    </fieldset>
  )
}
