import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { formulary } from '#content/formulary/index.ts'
import { testsProposed } from '#content/protocols/specimens-wanted.ts'
import { specimensInEnglish as words } from '#content/wording/app-specimens.ts'
import { specimenWords } from '#content/wording/report.ts'
import { aboutOperation, animalIn } from '#core/chapters/subjects-for.ts'
import { type CaseFile, contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { antibioticsOnBoard } from '#core/theatre/antibiotics-on-board.ts'
import { clockOf } from '#core/time/moment.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { Choices } from '../../../../design/choices.tsx'
import { Provenance } from '../../../../design/provenance.tsx'
import { SideWord } from '../../../../design/side-word.tsx'
import { Ticks } from '../../../../design/ticks.tsx'
import { useDraft } from '../../../../journal/drafts.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { useWho } from '../../../../session/use-who.ts'
import { writeHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { useFaultFocus } from '../../use-fault-focus.ts'
import styles from './specimens.module.css'
import { usePots } from './use-pots.ts'

type Site = keyof typeof testsProposed
type Test = BodyOf<'specimen'>['tests'][number]
type Draft = { readonly laboratory: string | null; readonly tests: Readonly<Partial<Record<Site, readonly Test[]>>> }

const sites = Object.keys(testsProposed) as Site[]
const tests = Object.keys(specimenWords.tests) as Test[]
const inHouse = 'in-house'

/** One card for each place: its tests stand ready, one tap keeps that it was taken now. */
export function TakePart({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const { label, take } = usePots(operation)
  const now = useMinute()
  const [tries, setTries] = useState(0)
  const [wrong, setWrong] = useState<Site | null>(null)
  const [keeping, setKeeping] = useState(false)
  const form = useFaultFocus(tries)
  const laboratories = [...file.contacts].flatMap(([contact, { kind }]) => (kind === 'laboratory' ? [contact] : []))
  const { draft, change, ready } = useDraft<Draft>(`specimens ${operation.id}`, me.id, () => ({
    laboratory: laboratories.length === 1 ? (laboratories[0] ?? null) : null,
    tests: {},
  }))
  if (!ready) return null
  const testsOf = (site: Site): readonly Test[] => draft.tests[site] ?? testsProposed[site].value
  const onBoard = sayOnBoard(file, now)
  const keep = async (site: Site) => {
    const chosen = testsOf(site)
    const missing = draft.laboratory === null || chosen.length === 0
    setTries(tries + 1)
    setWrong(chosen.length === 0 ? site : null)
    if (missing || keeping) return
    // A second tap of the same finger would be a second pot.
    setKeeping(true)
    await take({
      site,
      tests: [...chosen],
      laboratory: draft.laboratory === inHouse ? null : draft.laboratory,
      antibioticsOnBoard: sayOnBoard(file, new Date().toISOString()) ?? words.noneRecorded,
    })
    setTries(0)
    setKeeping(false)
  }
  const given = writeHref(id, 'drug-given', {
    subject: aboutOperation(file, operation.id),
  })
  return (
    <form ref={form} className={styles.take} onSubmit={(event: FormEvent) => event.preventDefault()} noValidate>
      <h2>
        {words.take}, <SideWord side={operation.side} />
      </h2>
      <p className={styles.onBoard}>
        {words.onBoard}: <strong>{onBoard ?? words.noneRecorded}</strong>
      </p>
      {onBoard === null && (
        <p>
          {words.noneOnBoard} <Link href={given}>{words.writeGiven}</Link>
        </p>
      )}
      <Choices
        legend={words.laboratory}
        error={tries > 0 && draft.laboratory === null ? words.laboratoryMissing : null}
        value={draft.laboratory}
        options={[...laboratories, inHouse]}
        say={(one) => (one === inHouse ? words.inHouse : contactNamed(file, one))}
        onChoose={(laboratory) => change({ ...draft, laboratory })}
      />
      <p className={styles.next}>{fill(words.next, { label })}</p>
      <ul className={`bare ${styles.cards}`}>
        {sites.map((site) => (
          <li key={site} className={styles.card}>
            <h3>{specimenWords.sites[site]}</h3>
            <button
              type="button"
              data-weight="main"
              disabled={keeping}
              onClick={() => void keep(site)}
              className={styles.tap}
            >
              {fill(words.takeNow, { site: specimenWords.sites[site] })}
            </button>
            <Ticks
              legend={words.tests}
              error={wrong === site ? words.testsMissing : null}
              values={testsOf(site)}
              options={tests}
              say={(one) => specimenWords.tests[one]}
              onValues={(values) => change({ ...draft, tests: { ...draft.tests, [site]: values } })}
            />
          </li>
        ))}
      </ul>
      <details className="soft" data-screen-only>
        <summary>{words.testsWhy}</summary>
        {sites.map((site) => (
          <p key={site}>
            {specimenWords.sites[site]}: <Provenance fact={testsProposed[site]} />
          </p>
        ))}
      </details>
      <p>
        <Link
          href={writeHref(id, 'specimen', { subject: { kind: 'ear', animal: animalIn(file), side: operation.side } })}
        >
          {words.other}
        </Link>
      </p>
    </form>
  )
}

/** The antibiotics in the animal at an instant, each with its time; null where none is written. */
function sayOnBoard(file: CaseFile, at: string): string | null {
  const { given, goesOn } = antibioticsOnBoard(file.theCase, at, formulary)
  const said = [
    ...given.map((line) =>
      fill(words.onBoardGiven, { drug: drugName(line.body.drug), at: clockOf(line.at, line.header.happenedAt.zone) }),
    ),
    ...goesOn.map(({ body }) => fill(words.onBoardBefore, { written: body.written })),
  ]
  return said.length === 0 ? null : said.join('; ').slice(0, 300)
}
