import { Link } from 'wouter'
import { specimensWanted } from '#content/protocols/specimens-wanted.ts'
import { specimensInEnglish as words } from '#content/wording/app-specimens.ts'
import { specimenWords } from '#content/wording/report.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { potsOf, stillToTake } from '#core/theatre/specimens.ts'
import { besideHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import styles from '../room.module.css'

/** At the checkpoint of the samples: what is still to be taken, which pots have no label, and the way there. */
export function SampleHint({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const pots = potsOf(file.theCase, operation.id)
  const wanted = specimensWanted[operation.procedure].flatMap(({ value }) => value)
  const still = stillToTake(pots, wanted)
  const unlabelled = pots.filter(({ labelled }) => labelled === null).map(({ specimen }) => specimen.body.label)
  return (
    <div className={styles.hint}>
      {still.length > 0 && (
        <p>{fill(words.k7.still, { sites: still.map((site) => specimenWords.sites[site]).join('; ') })}</p>
      )}
      {unlabelled.length > 0 && (
        <p className={styles.stop}>{fill(words.k7.unlabelled, { labels: unlabelled.join(', ') })}</p>
      )}
      <Link href={besideHref(id, operation.id, 'specimens')}>{words.open}</Link>
    </div>
  )
}
