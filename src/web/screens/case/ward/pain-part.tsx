import { type FormEvent, useState } from 'react'
import { painScales } from '#content/scores/pain-scales.ts'
import { wardScore as formWords } from '#content/wording/app-forms/ward-score.ts'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import { type PainScale, painScales as scaleNames } from '#core/journal/kinds/ward-score.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Doubt, misleading } from '#core/ward/misleads.ts'
import { Choices } from '../../../design/choices.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Provenance } from '../../../design/provenance.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useWho } from '../../../session/use-who.ts'
import { useRounds } from '../../ward/use-rounds.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './round.module.css'

const words = wardInEnglish.round
const { options: scaleWords } = formWords.fields['pain.scale']
type Draft = { readonly scale: PainScale | null; readonly score: string | null; readonly reason: string | null }

/** The total of a pain scale with two taps, or why it is not scored. The scale of the last score stands chosen. */
export function PainPart({ doubts }: { readonly doubts: readonly Doubt[] }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const { look } = useRounds(file)
  const [mode, setMode] = useState<'score' | 'not-scored'>('score')
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const last = file.theCase.live('ward-score').findLast(({ body }) => body.pain !== null)?.body.pain?.scale ?? null
  const nothing: Draft = { scale: null, score: null, reason: null }
  const { draft, change, clear, ready } = useDraft<Draft>(`ward pain ${file.stream}`, me.id, () => nothing)
  if (!ready) return null
  const scale = draft.scale ?? last
  const over = async () => {
    await clear()
    change(nothing)
    await clear()
    setTries(0)
    setMode('score')
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (mode === 'not-scored') {
      if (draft.reason === null) return
      await look({ notScoredBecause: draft.reason })
    } else {
      if (scale === null || draft.score === null) return
      await look({ pain: { scale, score: Number(draft.score) } })
    }
    await over()
  }
  const missing = (isMissing: boolean, said: string) => (tries > 0 && isMissing ? said : null)
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      {mode === 'score' ? (
        <>
          <Choices
            legend={words.scale}
            value={scale}
            options={scalesFor(file.theCase.latest('identity')?.body.species ?? null)}
            say={(one) => scaleWords[one]}
            error={missing(scale === null, words.noScale)}
            onChoose={(one) => change({ ...draft, scale: one, score: null })}
          />
          {scale !== null && (
            <>
              <AboutScale scale={scale} doubts={doubts} />
              <div className={styles.scores}>
                <Choices
                  legend={words.score}
                  help={words.scorePick}
                  value={draft.score}
                  options={Array.from({ length: painScales[scale].value.outOf + 1 }, (_, score) => String(score))}
                  say={(one) => one}
                  error={missing(draft.score === null, words.noScore)}
                  onChoose={(score) => change({ ...draft, scale, score })}
                />
              </div>
            </>
          )}
        </>
      ) : (
        <Choices
          legend={words.notScoredLegend}
          help={words.notScoredHelp}
          value={draft.reason}
          options={Object.values(words.reasons) as string[]}
          say={(one) => one}
          error={missing(draft.reason === null, words.noReason)}
          onChoose={(reason) => change({ ...draft, reason })}
        />
      )}
      <p className="row">
        <button type="submit" data-weight="main">
          {mode === 'score' ? words.keepScore : words.keepNotScored}
        </button>
        <button
          type="button"
          data-weight="quiet"
          onClick={() => {
            setTries(0)
            setMode(mode === 'score' ? 'not-scored' : 'score')
          }}
        >
          {mode === 'score' ? words.notScored : words.close}
        </button>
      </p>
    </form>
  )
}

/** Scales made for this species, and our own; every one where nobody wrote what animal it is. */
function scalesFor(species: 'dog' | 'cat' | null): PainScale[] {
  return scaleNames.filter((one) => {
    const madeFor: 'dog' | 'cat' | null = painScales[one].value.species
    return madeFor === null || species === null || madeFor === species
  })
}

/** Which form it is, from when on one acts and who says so, and what of it misleads in this animal now. */
function AboutScale({ scale, doubts }: { readonly scale: PainScale; readonly doubts: readonly Doubt[] }) {
  const { outOf, actAt, edition } = painScales[scale].value
  const found = misleading(scale, doubts, painScales)
  return (
    <>
      <div className={styles.scale}>
        <p>
          {capital(fill(words.edition, { edition, outOf: String(outOf) }))}{' '}
          <strong>
            {actAt === null ? words.noLimit : fill(words.actAt, { actAt: String(actAt), outOf: String(outOf) })}
          </strong>
        </p>
        <Provenance fact={painScales[scale]} />
      </div>
      {found.length > 0 && (
        <Notice tone="warn" title={words.mayMislead}>
          {found.map(({ items, because }) => (
            <p key={items.join(' ')}>
              <WithSides
                text={capital(
                  fill(words.misleads, {
                    items: items.map((item) => wardInEnglish.scaleItems[item]).join(', '),
                    because: because
                      .map((doubt) => fill(wardInEnglish.doubts[doubt.because], { side: doubt.side ?? '' }))
                      .join(', '),
                  }),
                )}
              />
            </p>
          ))}
          <p>{words.misleadsHelp}</p>
        </Notice>
      )}
    </>
  )
}
