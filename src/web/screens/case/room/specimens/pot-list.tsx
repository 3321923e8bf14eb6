import { Link } from 'wouter'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { specimensInEnglish as words } from '#content/wording/app-specimens.ts'
import { specimenWords } from '#content/wording/report.ts'
import { authorNamed, contactNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { Pot } from '#core/theatre/specimens.ts'
import { clockOf } from '#core/time/moment.ts'
import { SideWord } from '../../../../design/side-word.tsx'
import { paperHref, writeHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import styles from './specimens.module.css'
import { usePots } from './use-pots.ts'

/** Every pot with its label, and the one tap that says that the label is on it. */
export function PotList(props: {
  readonly operation: OperationOnFile
  readonly pots: readonly Pot[]
  readonly mayTake: boolean
}) {
  const { operation, pots, mayTake } = props
  const { file, unsent } = useCaseView()
  return (
    <section aria-labelledby="pots" className={styles.pots}>
      <h2 id="pots">{words.pots}</h2>
      {pots.length === 0 && <p>{words.noPots}</p>}
      <ul className={`bare ${styles.potList}`}>
        {pots.map((pot) => (
          <PotRow key={pot.specimen.header.id} pot={pot} operation={operation} mayTake={mayTake} />
        ))}
      </ul>
      {pots.length > 0 && (
        <p data-screen-only>
          <a
            href={paperHref(file.stream, `specimen-labels-${operation.id}.pdf`)}
            target="_blank"
            rel="noreferrer"
            className={styles.print}
          >
            {words.print}
          </a>{' '}
          {unsent.size > 0 && words.printHelp}
        </p>
      )}
    </section>
  )
}

function PotRow(props: { readonly pot: Pot; readonly operation: OperationOnFile; readonly mayTake: boolean }) {
  const { pot, operation, mayTake } = props
  const { file, id, unsent } = useCaseView()
  const { labelled, takeBack } = usePots(operation)
  const { specimen, side } = pot
  const { header, body, at } = specimen
  const { label } = body
  const waits = unsent.has(header.id)
  const when = (line: Pick<typeof specimen, 'at' | 'header'>) => ({
    at: clockOf(line.at, line.header.happenedAt.zone),
    who: authorNamed(file, line.header.author),
  })
  return (
    <li className={styles.pot} data-labelled={pot.labelled !== null}>
      <p className={styles.label}>{label}</p>
      <div className={styles.what}>
        <h3>
          {side !== null && <SideWord side={side} />} {specimenWords.sites[body.site]}
        </h3>
        <p>
          {[
            body.tests.map((test) => specimenWords.tests[test]).join(', '),
            body.laboratory === null
              ? words.inHouse
              : fill(words.toLaboratory, { laboratory: contactNamed(file, body.laboratory) }),
          ].join('; ')}
        </p>
        <p>{fill(words.onBoardWas, { which: body.antibioticsOnBoard ?? words.none })}</p>
        <p>
          {fill(words.taken, when({ at, header }))}{' '}
          <span className={room.kept} data-waits={waits}>
            {waits ? roomInEnglish.here : roomInEnglish.sent}
          </span>{' '}
          {mayTake && (
            <Link
              href={writeHref(id, 'specimen', { amend: header.id })}
              aria-label={fill(words.correctSaid, { label })}
            >
              {words.correct}
            </Link>
          )}
        </p>
      </div>
      <div className={styles.state} role="status">
        {pot.labelled ? (
          <>
            <p className={styles.on}>{fill(words.labelled, when(pot.labelled))}</p>
            {mayTake && (
              <button
                type="button"
                data-weight="quiet"
                aria-label={fill(words.takeBackSaid, { label })}
                onClick={() => pot.labelled && void takeBack(pot.labelled)}
              >
                {words.takeBack}
              </button>
            )}
          </>
        ) : (
          <>
            <p className={room.stop}>{words.unlabelled}</p>
            {pot.taps.length > 0 && <p>{words.stale}</p>}
            {mayTake && (
              <button
                type="button"
                data-weight="main"
                aria-label={fill(words.tapSaid, { label })}
                onClick={() => void labelled(pot)}
              >
                {words.tap}
              </button>
            )}
          </>
        )}
      </div>
    </li>
  )
}
