import { wardInEnglish } from '#content/wording/app-ward.ts'
import { fill } from '#core/outcome/finding.ts'
import { isLate } from '#core/owed/owed-item.ts'
import { writersOf } from '#core/people/may-write.ts'
import { emptyRound } from '#core/ward/empty-round.ts'
import type { WardEye } from '#core/ward/eye-view.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { SideWord } from '../../../design/side-word.tsx'
import { useWho } from '../../../session/use-who.ts'
import { clockNear } from '../../ward/say-due.ts'
import { useRounds } from '../../ward/use-rounds.ts'
import { useCaseView } from '../case-view.ts'
import styles from './round.module.css'

const words = wardInEnglish.round
const blinks = ['normal', 'weak', 'absent'] as const

/** Both eyes beside each other: what was seen last and what it may mean, one tap for the blink and one for keeping it wet. */
export function EyesPart({ eyes, now }: { readonly eyes: readonly WardEye[]; readonly now: string }) {
  return (
    <div className={styles.eyes}>
      {eyes.map((eye) => (
        <Eye key={eye.side} eye={eye} now={now} />
      ))}
    </div>
  )
}

function Eye({ eye, now }: { readonly eye: WardEye; readonly now: string }) {
  const { file, owed } = useCaseView()
  const { me } = useWho()
  const { look, wet } = useRounds(file)
  const { side } = eye
  const wetting = owed.find((item) => item.what === 'eye-lubricated' && item.side === side)
  const late = wetting && isLate(wetting, now)
  return (
    <div className={styles.eye}>
      <h3>
        <SideWord side={side} /> {eye.operated && <span className="soft">{words.operatedSide}</span>}
      </h3>
      <EyeSays eye={eye} now={now} />
      {wetting && (
        <p className={late ? styles.late : undefined}>
          {fill(late ? words.wetLate : words.wetBy, { at: clockNear(wetting.dueBy, now, wetting.zone) })}
        </p>
      )}
      {writersOf('ward-score').includes(me.role) && (
        <div data-screen-only>
          <fieldset className={styles.taps}>
            <legend>
              <SideWord side={side} /> {fill(words.blinkLegend, { side: '' }).trim()}
            </legend>
            {blinks.map((one) => (
              <button
                key={one}
                type="button"
                aria-label={`${fill(words.blinkLegend, { side })}: ${words.blink[one]}`}
                onClick={() => void look({ [side]: { ...emptyRound[side], blink: one } })}
              >
                {words.blink[one]}
              </button>
            ))}
          </fieldset>
          <button type="button" aria-label={fill(words.wetNowSaid, { side })} onClick={() => void wet(side)}>
            {words.wetNow}
          </button>
        </div>
      )}
    </div>
  )
}

/** A missing blink within the block is never graded. */
function EyeSays({ eye: { blink, block, risk, operated }, now }: { readonly eye: WardEye; readonly now: string }) {
  const { file } = useCaseView()
  const { zone } = file.clinic
  if (!blink) return operated ? <p className={styles.late}>{words.nobodyLooked}</p> : null
  return (
    <>
      <p>
        <strong>{fill(words.blinks[blink.said], { when: clockNear(blink.at, now, zone) })}</strong>
      </p>
      {block && blink.said !== 'normal' ? (
        <p>
          {block.wornOff === null
            ? fill(words.blockUnknown, { drug: drugName(block.drug) })
            : fill(words.possibleBlock, { drug: drugName(block.drug), until: clockNear(block.wornOff, now, zone) })}
        </p>
      ) : (
        risk.length > 0 && <p className={styles.late}>{words.atRisk}</p>
      )}
    </>
  )
}
