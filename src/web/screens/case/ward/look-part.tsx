import { type FormEvent, useState } from 'react'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { Choices } from '../../../design/choices.tsx'
import { Notice } from '../../../design/notice.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useWho } from '../../../session/use-who.ts'
import { useRounds } from '../../ward/use-rounds.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './round.module.css'

const words = wardInEnglish.round
type Look = Partial<Pick<BodyOf<'ward-score'>, 'bandage' | 'airway' | 'throat' | 'eats' | 'urine'>>
const groups = [
  ['bandage', words.bandage, words.bandages],
  ['airway', words.airway, words.airways],
  ['throat', words.throat, words.throats],
  ['eats', words.eats, words.eatings],
  ['urine', words.urine, words.urines],
] as const

/** Bandage, breathing, throat, food, urine: one tap each, or one for "all quiet"; what is not tapped is not assessed. */
export function LookPart() {
  const { file } = useCaseView()
  const { me } = useWho()
  const { look } = useRounds(file)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft<Look>(`ward look ${file.stream}`, me.id, () => ({}))
  if (!ready) return null
  const isEmpty = Object.keys(draft).length === 0
  const alarming = draft.bandage === 'tight' || draft.throat === 'swollen' || isHeard(draft.airway)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (isEmpty) return
    await look(draft)
    change({})
    await clear()
    setTries(0)
  }
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      <p>
        <button type="button" onClick={() => change({ ...draft, bandage: 'fits', airway: 'quiet', throat: 'soft' })}>
          {words.allQuiet}
        </button>
      </p>
      <p className="soft">{words.lookHelp}</p>
      {alarming && (
        <Notice tone="warn" title={words.alarm} live>
          {null}
        </Notice>
      )}
      {groups.map(([field, legend, says]) => (
        <Choices
          key={field}
          legend={legend}
          value={(draft[field] as string | undefined) ?? null}
          options={Object.keys(says)}
          say={(one) => (says as Readonly<Record<string, string>>)[one] ?? one}
          onChoose={(one) => change({ ...draft, [field]: one })}
        />
      ))}
      {tries > 0 && isEmpty && <p className={styles.late}>{words.nothingTapped}</p>}
      <p>
        <button type="submit" data-weight="main">
          {words.keepLook}
        </button>
      </p>
    </form>
  )
}

function isHeard(airway: Look['airway']): boolean {
  return airway === 'noisy' || airway === 'laboured'
}
