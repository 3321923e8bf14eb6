import { useState } from 'react'
import { plateOnScreen as words } from '#content/wording/app-plate.ts'
import type { Side } from '#core/animal/species.ts'
import type { Case } from '#core/journal/fold.ts'
import { type PlateWish, plateParametersOf } from '#core/plate/parameters-of.ts'
import styles from './plate.module.css'
import { Plate, type PlateProps } from './plate.tsx'

const shows = ['as-found', 'planned', 'as-left'] as const satisfies readonly PlateWish['show'][]

/**
 * The plate of one ear of a case: as found, as planned, as left, each as far as the entries carry it.
 *
 * @example <EarPlate theCase={theCase} side="LEFT" hands={hands} onHands={keepDraft} onKeep={write} onEntry={open} />
 */
export function EarPlate(
  props: Pick<PlateProps, 'level' | 'onEntry' | 'onStructure' | 'hands' | 'onHands' | 'onKeep' | 'theme'> & {
    readonly theCase: Case
    readonly side: Side
  },
) {
  const { theCase, side, ...rest } = props
  const [show, setShow] = useState<PlateWish['show']>('as-found')
  const wanted = (one: PlateWish['show']) =>
    plateParametersOf(theCase, side, { view: 'transverse', show: one, operation: null })
  const offered = shows.filter((one) => wanted(one).kind === 'answer')
  const shown = offered.includes(show) ? show : 'as-found'
  const parameters = wanted(shown)
  if (parameters.kind === 'refusal') return <p>{words.cannotDraw[parameters.refusal.because]}</p>
  return (
    <Plate key={`${side} ${shown}`} level={2} {...rest} parameters={parameters.answer} theCase={theCase}>
      {offered.length > 1 && (
        <fieldset className={styles.choice}>
          <legend>{words.shows.label}</legend>
          {offered.map((one) => (
            <button
              key={one}
              type="button"
              className={styles.switch}
              aria-pressed={one === shown}
              onClick={() => setShow(one)}
            >
              {words.shows[one]}
            </button>
          ))}
        </fieldset>
      )}
    </Plate>
  )
}
