import { plateOnScreen as words } from '#content/wording/app-plate.ts'
import { type Layer, layers, operated, type PlateParameters } from '#core/plate/parameters.ts'
import styles from './plate.module.css'

const ofSurgery: readonly Layer[] = ['incision', 'taken-away', 'opened-bulla']

/** One switch for each layer that this ear has; the layers of an operation only where one is drawn. */
export function LayerSwitches(props: {
  readonly parameters: PlateParameters
  readonly onLayers: (layers: readonly Layer[]) => void
}) {
  const { parameters, onLayers } = props
  const surgery = operated(parameters.surgery) !== null
  const here = layers.filter((layer) => surgery || !ofSurgery.includes(layer))
  const on = new Set(parameters.layers)
  const allOn = here.every((layer) => on.has(layer))
  const turned = (layer: Layer) => layers.filter((one) => (one === layer ? !on.has(one) : on.has(one)))
  return (
    <details className={styles.fold} data-screen-only="">
      <summary>{words.layers.label}</summary>
      <p className={styles.help}>{words.layers.help}</p>
      <ul className={styles.switches}>
        <li>
          <button type="button" disabled={allOn} onClick={() => onLayers(layers)}>
            {words.layers.all}
          </button>
        </li>
        {here.map((layer) => (
          <li key={layer}>
            <button
              type="button"
              className={styles.switch}
              aria-pressed={on.has(layer)}
              onClick={() => onLayers(turned(layer))}
            >
              {words.layers.names[layer]}
            </button>
          </li>
        ))}
      </ul>
    </details>
  )
}
