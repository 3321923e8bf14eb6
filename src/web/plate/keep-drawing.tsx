import { type FormEvent, useState } from 'react'
import { plateOnScreen } from '#content/wording/app-plate.ts'
import { keptDrawingInEnglish } from '#content/wording/plate.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../design/field.tsx'
import { Modal } from '../design/modal.tsx'
import styles from './plate.module.css'
import type { DrawingToKeep } from './plate.tsx'

const words = plateOnScreen.keeping
const purposes = ['owner', 'team', 'record'] as const

/** Somebody who may have watched: a person of the clinic or a contact of the household. */
export type Watcher = { readonly id: string; readonly name: string }

/** What the plate cannot know of a drawing: what it shows, for whom it was drawn, who watched. */
export function KeepDrawing(props: {
  readonly drawing: DrawingToKeep
  readonly watchers: readonly Watcher[]
  readonly onKeep: (body: BodyOf<'plate-drawing'>) => void
  readonly onClose: () => void
}) {
  const { drawing, watchers, onKeep, onClose } = props
  const [title, setTitle] = useState('')
  const [drawnFor, setDrawnFor] = useState<(typeof purposes)[number]>('owner')
  const [watchedBy, setWatchedBy] = useState<readonly string[]>([])
  const keep = (event: FormEvent) => {
    event.preventDefault()
    onKeep(bodyOf(drawing, { title: title.trim() === '' ? null : title.trim(), drawnFor, watchedBy: [...watchedBy] }))
  }
  const turn = (id: string) =>
    setWatchedBy(watchedBy.includes(id) ? watchedBy.filter((one) => one !== id) : [...watchedBy, id])
  return (
    <Modal title={words.title} close={words.close} onClose={onClose}>
      <form onSubmit={keep} className={styles.keeping}>
        <Field label={words.called} help={words.calledHelp}>
          {(control) => (
            <input {...control} type="text" maxLength={300} value={title} onChange={(e) => setTitle(e.target.value)} />
          )}
        </Field>
        <Field label={words.for}>
          {(control) => (
            <select
              {...control}
              value={drawnFor}
              onChange={(e) => setDrawnFor(purposes.find((one) => one === e.target.value) ?? 'owner')}
            >
              {purposes.map((one) => (
                <option key={one} value={one}>
                  {keptDrawingInEnglish.for[one]}
                </option>
              ))}
            </select>
          )}
        </Field>
        {watchers.length > 0 && (
          <fieldset className={styles.watchers}>
            <legend>{words.watched}</legend>
            {watchers.map(({ id, name }) => (
              <label key={id}>
                <input type="checkbox" checked={watchedBy.includes(id)} onChange={() => turn(id)} />
                {name}
              </label>
            ))}
          </fieldset>
        )}
        <button type="submit" data-weight="main">
          {fill(words.keep, { side: drawing.parameters.side })}
        </button>
      </form>
    </Modal>
  )
}

/** The body of the entry, in lists of its own. */
function bodyOf(
  { plate, parameters, strokes, marks }: DrawingToKeep,
  told: Pick<BodyOf<'plate-drawing'>, 'title' | 'drawnFor' | 'watchedBy'>,
): BodyOf<'plate-drawing'> {
  return {
    plate,
    parameters: { ...parameters, layers: [...parameters.layers] },
    strokes: strokes.map((stroke) => ({ ...stroke, points: [...stroke.points] })),
    marks: [...marks],
    ...told,
  }
}
