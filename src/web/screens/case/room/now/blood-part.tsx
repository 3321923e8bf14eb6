import { Link } from 'wouter'
import { formulary } from '#content/formulary/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { bloodMarks } from '#content/protocols/blood-marks.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { lossActs } from '#content/wording/emergency.ts'
import type { EmergencySheet } from '#core/dosing/emergency.ts'
import { judgedAt } from '#core/dosing/plan-now.ts'
import { redCellsNow } from '#core/dosing/red-cells-now.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { firedMarks, lossFractions } from '#core/theatre/blood-marks.ts'
import { type LossSoFar, lossSoFar } from '#core/theatre/loss-so-far.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { wholeVolume } from '#documents/emergency-sheet/say-whole.ts'
import type { SheetOfCase } from '#documents/emergency-sheet/sheet-of-case.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { saySpan } from '../../blood.tsx'
import { writeHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { FindingList } from '../../finding-list.tsx'
import styles from './now.module.css'

/** How much blood it has, how much is gone, and whether red cells may follow. */
export function BloodPart({ operation, made }: { readonly operation: OperationOnFile; readonly made: SheetOfCase }) {
  const { file } = useCaseView()
  const loss = lossSoFar(file.theCase, operation.id, bloodInSwabs)
  return (
    <section aria-labelledby="blood" className={styles.blood}>
      <h2 id="blood">{words.blood}</h2>
      {made.kind === 'sheet' ? (
        <Lost loss={loss} sheet={made.sheet} />
      ) : (
        <p className={styles.from}>{loss.sum ? fill(words.lostOnly, { span: saySpan(loss.sum) }) : words.lostNone}</p>
      )}
      {loss.refused > 0 && <p className={styles.warn}>{fill(words.refused, { count: String(loss.refused) })}</p>}
      <RedCells />
    </section>
  )
}

function Lost({ loss: { sum }, sheet }: { readonly loss: LossSoFar; readonly sheet: EmergencySheet }) {
  const { blood, lossAt } = sheet
  const fired = new Map(
    sum ? firedMarks(sum, blood.counted, bloodMarks).map(({ mark, by }) => [mark.value.code, by]) : [],
  )
  return (
    <>
      <p className={styles.from}>
        {fill(words.volume, {
          volume: wholeVolume(blood.counted),
          low: wholeVolume(blood.low),
          high: wholeVolume(blood.high),
        })}
      </p>
      <p className={styles.weight}>
        {sum
          ? fill(words.lost, { span: saySpan(sum), percent: sayPercents(lossFractions(sum, blood.counted)) })
          : words.lostNone}
      </p>
      <ul className="bare">
        {lossAt.map(({ mark, volume }) => {
          const by = fired.get(mark.value.code)
          const about = {
            percent: percentOf(new Decimal(mark.value.fraction)),
            volume: wholeVolume(volume),
            act: lossActs[mark.value.code],
          }
          return (
            <li key={mark.value.code} className={styles.from} data-reached={by !== undefined}>
              {fill(words.mark, { ...about, percent: fill(words.percent, about) })}{' '}
              {by && <strong>{by === 'measured' ? words.reached : words.maybe}</strong>}
            </li>
          )
        })}
      </ul>
    </>
  )
}

/** Group and match as the dose engine judges red cells; a cat that nobody typed gets none. */
function RedCells() {
  const { file, id } = useCaseView()
  const now = redCellsNow(file.theCase, judgedAt(file.theCase, useMinute()), formulary, dosingRules)
  if (!now) return null
  const { group, findings, species } = now
  return (
    <>
      <p className={styles.weight}>
        {fill(words.group, { group: group ? words.groups[group] : words.untyped })}{' '}
        {!group && species === 'cat' && words.noRedCells}
      </p>
      <FindingList findings={findings} />
      {!group && <Link href={writeHref(id, 'blood-type')}>{words.writeGroup}</Link>}
    </>
  )
}

function sayPercents({ atLeast, atMost }: ReturnType<typeof lossFractions>): string {
  const [low, high] = [percentOf(atLeast), percentOf(atMost)]
  return fill(low === high ? words.percent : words.percents, { percent: low, low, high })
}

/** Whole per cent, rounded to the nearest. */
function percentOf(fraction: Decimal): string {
  return plain(fraction.times(100).toDecimalPlaces(0, Decimal.ROUND_HALF_UP))
}
