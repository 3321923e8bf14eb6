import { whatGrowsInEnglish as words } from '#content/wording/app-what-grows.ts'
import { Field } from '../../../design/field.tsx'
import styles from './grows.module.css'
import type { GrowsInput } from './grows-answer.ts'

const methods = ['calendar-year', 'episode', 'phenotype'] as const
const sites = ['apart', 'each', 'together'] as const

/** How the table is asked for; a day that is not whole yet asks for nothing. */
export function Asked(props: {
  readonly asked: GrowsInput
  /** The last day lies before the first. */
  readonly backwards: boolean
  readonly onAsk: (asked: GrowsInput) => void
}) {
  const { asked, backwards, onAsk } = props
  const day = (name: 'from' | 'until', value: string) => {
    const { [name]: _, ...rest } = asked
    onAsk(value === '' ? rest : { ...rest, [name]: value })
  }
  return (
    <form className={styles.asked} data-screen-only onSubmit={(event) => event.preventDefault()}>
      <Field label={words.first.label}>
        {(control) => (
          <select
            {...control}
            value={asked.method}
            onChange={({ target }) => onAsk({ ...asked, method: target.value as (typeof methods)[number] })}
          >
            {methods.map((method) => (
              <option key={method} value={method}>
                {words.first[method]}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Field label={words.sites.label}>
        {(control) => (
          <select
            {...control}
            value={asked.sites}
            onChange={({ target }) => onAsk({ ...asked, sites: target.value as (typeof sites)[number] })}
          >
            {sites.map((site) => (
              <option key={site} value={site}>
                {words.sites[site]}
              </option>
            ))}
          </select>
        )}
      </Field>
      {(['from', 'until'] as const).map((name) => (
        <Field key={name} label={words[name]} error={name === 'until' && backwards ? words.backwards : null}>
          {(control) => (
            <input
              {...control}
              type="date"
              value={asked[name] ?? ''}
              {...(name === 'until' && asked.from !== undefined && { min: asked.from })}
              onChange={({ target }) => day(name, target.value)}
            />
          )}
        </Field>
      ))}
    </form>
  )
}
