import { type ReactNode, useId } from 'react'
import styles from './choices.module.css'

/**
 * One question with a few answers of which any may be true, all in sight.
 *
 * @example <Ticks legend="What helped?" values={helped} options={['count', 'luck']} say={(one) => one} onValues={setHelped} />
 */
export function Ticks<Option extends string>(props: {
  readonly legend: ReactNode
  readonly error?: string | null
  readonly values: readonly Option[]
  readonly options: readonly Option[]
  readonly say: (option: Option) => ReactNode
  readonly onValues: (values: readonly Option[]) => void
}) {
  const { legend, error, values, options, say, onValues } = props
  const id = useId()
  const toggle = (option: Option, on: boolean) =>
    onValues(options.filter((one) => (one === option ? on : values.includes(one))))
  return (
    <fieldset
      className={styles.choices}
      aria-describedby={error ? `${id}-error` : undefined}
      aria-invalid={error ? true : undefined}
    >
      <legend className={styles.legend}>{legend}</legend>
      <div className={styles.options}>
        {options.map((option) => (
          <label key={option} className={styles.option}>
            <input
              type="checkbox"
              checked={values.includes(option)}
              onChange={(event) => toggle(option, event.target.checked)}
            />
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
