import { plateOnScreen as words } from '#content/wording/app-plate.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { handSentences, sentencesOf } from '#core/plate/describe.ts'
import type { Hand } from '#core/plate/hand.ts'
import type { Scene, StructureId } from '#core/plate/scene.ts'
import type { Sheet } from '#core/plate/sheet.ts'
import { touchTargets } from '#core/plate/touch.ts'
import styles from './plate.module.css'

/** The plate for whoever cannot or would rather not look: everything it shows as sentences, and every part as a button. */
export function InWords(props: {
  readonly id: string
  readonly scene: Scene
  readonly hand: Hand
  readonly parts?: {
    readonly sheet: Sheet
    readonly onPart: (structure: StructureId) => void
    readonly level: 2 | 3
  }
}) {
  const { id, scene, hand, parts } = props
  const Heading = `h${parts?.level ?? 3}` as const
  const sentences = [...sentencesOf(scene, plateInEnglish), ...handSentences(hand, plateInEnglish)]
  return (
    <details className={styles.fold}>
      <summary>{words.inWords}</summary>
      <div id={id} className={styles.sentences}>
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      {parts && (
        <div data-screen-only="">
          <Heading className={styles.listHead}>{words.parts.list}</Heading>
          <ul className={styles.switches}>
            {touchTargets(parts.sheet).map(({ structure, name }) => (
              <li key={structure}>
                <button type="button" onClick={() => parts.onPart(structure)}>
                  {name}
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </details>
  )
}
