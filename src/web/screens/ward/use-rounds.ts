import { wardInEnglish as words } from '#content/wording/app-ward.ts'
import type { Side } from '#core/animal/species.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { emptyLook } from '#core/theatre/empty-look.ts'
import { emptyRound } from '#core/ward/empty-round.ts'
import type { Score } from '#core/ward/pain-chain.ts'
import { momentAgain } from '../../journal/moment-again.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'

type Round = BodyOf<'ward-score'>

/** What the ward writes of one animal: a look of now, one tap, an action to a score that stands, a call. */
export function useRounds(file: CaseFile) {
  const { pen } = useWho()
  const about = { stream: file.stream, subject: { kind: 'animal', animal: animalIn(file) } } as const
  const look = (said: Partial<Round>) =>
    writeEntry(pen, { ...about, kind: 'ward-score', body: { ...emptyRound, ...said } })
  const observe = (said: Partial<BodyOf<'observation'>>) =>
    writeEntry(pen, {
      ...about,
      kind: 'observation',
      body: { ...emptyLook, where: 'ward', ...said },
    })
  return {
    look,
    observe,
    wet: (side: Side) => look({ [side]: { ...emptyRound[side], lubricated: 'yes' } }),
    /** The action is added to the score; the moment of the score stays. */
    act: (score: Score, said: Partial<Pick<Round, 'action' | 'given'>>) =>
      writeEntry(pen, {
        ...about,
        kind: 'ward-score',
        body: { ...score.body, ...said },
        happenedAt: momentAgain(score),
        supersedes: [score.header.id],
        reason: words.round.actionAdded,
      }),
    phoned: (body: BodyOf<'call'>) => writeEntry(pen, { ...about, kind: 'call', body }),
    takeBack: (entry: string) =>
      writeEntry(pen, {
        ...about,
        kind: 'withdrawal',
        body: { because: 'wrong' },
        withdraws: entry,
        reason: words.takenBecause,
      }),
  }
}
