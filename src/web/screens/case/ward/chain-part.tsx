import { useState } from 'react'
import { Link } from 'wouter'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { painScales } from '#content/scores/pain-scales.ts'
import { wardScore as formWords } from '#content/wording/app-forms/ward-score.ts'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { fromStored } from '#core/journal/stored.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { rootOf } from '#core/owed/operations.ts'
import { isLate } from '#core/owed/owed-item.ts'
import { writersOf } from '#core/people/may-write.ts'
import { type ChainLink, type Given, painChain } from '#core/ward/pain-chain.ts'
import { readPain } from '#core/ward/pain-scale.ts'
import type { Stay } from '#core/ward/stay.ts'
import { sayAmount } from '#core/why/why.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { useWho } from '../../../session/use-who.ts'
import { clockNear } from '../../ward/say-due.ts'
import { useRounds } from '../../ward/use-rounds.ts'
import { dosePlanHref, entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { ReasonPart } from '../room/reason-part.tsx'
import styles from './round.module.css'

const words = wardInEnglish.round
const { options: scaleWords } = formWords.fields['pain.scale']
type Shown = { readonly link: ChainLink; readonly now: string; readonly stay: Stay }

/** Score, what was done, score again: one line after the other, the newest last; what is open says so. */
export function ChainPart({ stay, now }: { readonly stay: Stay; readonly now: string }) {
  const { file } = useCaseView()
  const links = painChain(file.theCase, stay.since, owedRules.ward.relieves.value)
  if (links.length === 0) return <p>{words.chainNone}</p>
  return (
    <ol className={`bare ${styles.chain}`}>
      {links.map((link, index) => (
        <LinkOfChain
          key={rootOf(file.theCase, link.score.header.id)}
          link={link}
          now={now}
          stay={stay}
          isNewScale={scaleOf(link) !== scaleOf(links.slice(0, index).findLast((one) => scaleOf(one) !== null))}
        />
      ))}
    </ol>
  )
}

function scaleOf(link: ChainLink | undefined): string | null {
  return link?.score.body.pain?.scale ?? null
}

function LinkOfChain({ link, now, stay, isNewScale }: Shown & { readonly isNewScale: boolean }) {
  const { file, owed, unsent } = useCaseView()
  const { score } = link
  const { header, body } = score
  const root = rootOf(file.theCase, header.id)
  const at = (instant: string) => clockNear(instant, now, file.clinic.zone)
  const toTreat = owed.some(({ id }) => id === `pain-to-treat:${root}`)
  const again = owed.find(({ id }) => id === `pain-again:${root}`)
  const waits = unsent.has(header.id)
  return (
    <li className={styles.link} data-open={toTreat}>
      <p className={styles.score}>
        {body.pain === null ? (
          fill(words.notScoredAt, { at: at(score.at), because: body.notScoredBecause ?? '' })
        ) : (
          <strong>
            {fill(words.scoredAt, {
              at: at(score.at),
              score: String(body.pain.score),
              outOf: String(painScales[body.pain.scale].value.outOf),
            })}
          </strong>
        )}{' '}
        <span className={styles.kept} data-waits={waits}>
          {waits ? words.here : words.sent}
        </span>
      </p>
      {body.pain !== null && <Reading pain={body.pain} isNewScale={isNewScale} />}
      {link.given.map((one) => (
        <GivenLine key={one.header.id} given={one} now={now} />
      ))}
      {body.action !== null && (
        <p className={styles.action}>{fill(words.actionSaid, { at: at(score.at), action: body.action })}</p>
      )}
      {body.pain !== null && <Actions link={link} now={now} stay={stay} isOpen={toTreat} />}
      {again && (
        <p className={isLate(again, now) ? styles.late : 'soft'}>
          {fill(isLate(again, now) ? words.againLate : words.againBy, { at: at(again.dueBy) })}
        </p>
      )}
    </li>
  )
}

/** On which side of its limit the score lies; the scale by name and edition where it is another one than before. */
function Reading(props: {
  readonly pain: NonNullable<ChainLink['score']['body']['pain']>
  readonly isNewScale: boolean
}) {
  const { pain, isNewScale } = props
  const { file } = useCaseView()
  const read = readPain(pain, file.theCase.latest('identity')?.body.species ?? null, painScales)
  const { edition } = painScales[pain.scale].value
  const limit =
    read.kind === 'unknown'
      ? words.unknownLimit
      : fill(read.kind === 'act' ? words.asks : words.below, { actAt: String(read.actAt) })
  const [name = ''] = scaleWords[pain.scale].split(',')
  return (
    <p className="soft">
      {isNewScale ? `${fill(words.scoredWith, { scale: name, edition })}; ${limit}` : capital(limit)}
    </p>
  )
}

function GivenLine({ given, now }: { readonly given: Given; readonly now: string }) {
  const { file, id } = useCaseView()
  const at = clockNear(given.at, now, file.clinic.zone)
  const about = { at, drug: drugName(given.body.drug), amount: sayAmount(fromStored(given.body.amount)) }
  return (
    <p className={styles.action}>
      <Link href={entryHref(id, given.header.id)}>{fill(words.givenAt, about)}</Link>
    </p>
  )
}

/** What was given afterwards and may have been the action; and, while nothing was done, the ways to say what is. */
function Actions({ link, now, stay, isOpen }: Shown & { readonly isOpen: boolean }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const { act } = useRounds(file)
  const [other, setOther] = useState(false)
  if (!writersOf('ward-score').includes(me.role)) return null
  const { score, unnamed } = link
  const operation = stay.operations.at(-1)
  const read =
    score.body.pain && readPain(score.body.pain, file.theCase.latest('identity')?.body.species ?? null, painScales)
  const asked = read?.kind !== 'below'
  return (
    <>
      {asked &&
        unnamed.map((one) => (
          <div key={one.header.id} className={styles.perhaps}>
            <GivenLine given={one} now={now} />
            <p className="soft">{words.perhaps}</p>
            <button
              type="button"
              aria-label={fill(words.wasActionSaid, {
                drug: drugName(one.body.drug),
                at: clockNear(one.at, now, file.clinic.zone),
              })}
              onClick={() => void act(score, { given: [...score.body.given, one.header.id] })}
            >
              {words.wasAction}
            </button>
          </div>
        ))}
      {isOpen && (
        <div className={styles.open} data-screen-only>
          <p className={styles.late}>{words.open}</p>
          <div className="row">
            {operation && (
              <Link href={dosePlanHref(id, operation.id)} data-weight="side">
                {words.givePlanned}
              </Link>
            )}
            <Link
              href={writeHref(id, 'drug-given', {
                subject: operation ? aboutOperation(file, operation.id) : null,
                owed: `pain-to-treat:${rootOf(file.theCase, score.header.id)}`,
              })}
              data-weight="side"
            >
              {words.giveDrug}
            </Link>
            <button type="button" onClick={() => setOther(true)}>
              {words.otherAction}
            </button>
          </div>
        </div>
      )}
      {other && isOpen && (
        <ReasonPart
          place={`ward action ${score.header.id}`}
          words={{
            label: words.otherActionLabel,
            missing: words.otherActionMissing,
            keep: words.keep,
            close: words.close,
          }}
          onKeep={async (action) => {
            await act(score, { action })
            return true
          }}
          onClose={() => setOther(false)}
        />
      )}
    </>
  )
}
