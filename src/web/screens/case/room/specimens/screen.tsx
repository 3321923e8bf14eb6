import { Link } from 'wouter'
import { specimensWanted } from '#content/protocols/specimens-wanted.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { specimensInEnglish as words } from '#content/wording/app-specimens.ts'
import { specimenWords } from '#content/wording/report.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { stillToTake } from '#core/theatre/specimens.ts'
import { Page } from '../../../../design/page.tsx'
import { Provenance } from '../../../../design/provenance.tsx'
import { useWho } from '../../../../session/use-who.ts'
import { pauseHref, roomHref } from '../../case-hrefs.ts'
import { CaseLine } from '../../case-line.tsx'
import { useCaseView } from '../../case-view.ts'
import { MayNotWrite } from '../../may-correct.tsx'
import { useOperationHere } from '../../use-operation-here.ts'
import { WithCase } from '../../with-case.tsx'
import { EmergencyBar } from '../now/emergency-bar.tsx'
import { useAwake } from '../use-awake.ts'
import { useTheatreTheme } from '../use-theatre-theme.ts'
import { PotList } from './pot-list.tsx'
import styles from './specimens.module.css'
import { TakePart } from './take-part.tsx'
import { usePots } from './use-pots.ts'

/** Everything that is taken in one operation: one tap each, the label of each pot, and whether it is on. */
export default function SpecimensScreen() {
  return (
    <WithCase>
      <SpecimensPage />
    </WithCase>
  )
}

function SpecimensPage() {
  const { wanted, operation, subject } = useOperationHere()
  const { id } = useCaseView()
  useTheatreTheme()
  useAwake()
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine about={subject} />} wide>
      {operation ? <Specimens operation={operation} /> : <p>{roomInEnglish.noOperation}</p>}
      <nav aria-label={words.title} className={styles.links} data-screen-only>
        <Link href={roomHref(id, wanted)}>{roomInEnglish.open}</Link>
        {operation && <Link href={`${pauseHref(id, wanted, 'before-leaving')}?at=end`}>{words.toSignOut}</Link>}
      </nav>
      {operation && <EmergencyBar operation={operation} />}
    </Page>
  )
}

function Specimens({ operation }: { readonly operation: OperationOnFile }) {
  const { me } = useWho()
  const { pots } = usePots(operation)
  const mayTake = writersOf('specimen').includes(me.role)
  return (
    <>
      <Still operation={operation} />
      <PotList operation={operation} pots={pots} mayTake={mayTake} />
      {mayTake ? <TakePart operation={operation} /> : <MayNotWrite kind="specimen" />}
    </>
  )
}

/** What this operation still wants, with who says so. */
function Still({ operation }: { readonly operation: OperationOnFile }) {
  const { pots } = usePots(operation)
  const wanted = specimensWanted[operation.procedure]
  const still = stillToTake(
    pots,
    wanted.flatMap(({ value }) => value),
  )
  return (
    <section aria-labelledby="still" className={styles.still}>
      <h2 id="still">{words.still}</h2>
      {still.length === 0 ? (
        <p>{words.nothingStill}</p>
      ) : (
        <ul className={styles.stillList}>
          {still.map((site) => (
            <li key={site}>{specimenWords.sites[site]}</li>
          ))}
        </ul>
      )}
      <details className="soft" data-screen-only>
        <summary>{words.wantedWhy}</summary>
        {wanted.map((fact) => (
          <p key={fact.value.join()}>
            {fact.value.map((site) => specimenWords.sites[site]).join(', ')}: <Provenance fact={fact} />
          </p>
        ))}
      </details>
    </section>
  )
}
