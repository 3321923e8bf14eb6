import { otis3CutOffs } from '#content/scores/otis-3.ts'
import { caseInEnglish, readingInEnglish } from '#content/wording/app-case.ts'
import { type Side, sides } from '#core/animal/species.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { plainSaid, type SaidRow } from '#core/reading/said.ts'
import { sayMoment } from '#core/time/moment.ts'
import { whyOtis3 } from '#core/why/why-otis3.ts'
import { otis3Total } from '#core/workup/otis3.ts'
import { Caution } from '../../design/caution.tsx'
import { SideWord } from '../../design/side-word.tsx'
import { Why } from '../../design/why.tsx'
import { useCaseView } from './case-view.ts'
import styles from './panels.module.css'

const words = caseInEnglish.pair
type Findings = Line<BodyOf<'ear-findings'>>

/** The last look at each ear beside each other; what nobody assessed is said in its place and never left out. */
export function FindingsPair() {
  const { file, rows } = useCaseView()
  const last = (side: Side) =>
    file.theCase
      .live('ear-findings')
      .findLast(({ header: { subject } }) => subject.kind === 'ear' && subject.side === side)
  const ears = { LEFT: last('LEFT'), RIGHT: last('RIGHT') }
  if (!ears.LEFT && !ears.RIGHT) return null
  const flat = { LEFT: leaves(ears.LEFT, rows), RIGHT: leaves(ears.RIGHT, rows) }
  const places = [...new Map([...flat.LEFT, ...flat.RIGHT].map((row) => [row.at, row.label]))]
  return (
    <section className={styles.panel} aria-labelledby="pair">
      <h3 id="pair">{words.title}</h3>
      <table className={styles.pair}>
        <thead>
          <tr>
            <th scope="col">{words.finding}</th>
            {sides.map((side) => (
              <th key={side} scope="col">
                <SideWord side={side} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{words.from}</th>
            {sides.map((side) => (
              <td key={side}>
                {ears[side] ? sayMoment({ ...ears[side].header.happenedAt, precision: 'day' }) : words.notExamined}
              </td>
            ))}
          </tr>
          {places.map(([at, label]) => (
            <tr key={at}>
              <th scope="row">{label}</th>
              {sides.map((side) => (
                <td key={side}>
                  <Answer row={flat[side].find((row) => row.at === at)} examined={ears[side] !== undefined} />
                </td>
              ))}
            </tr>
          ))}
          <tr>
            <th scope="row">{words.total}</th>
            {sides.map((side) => (
              <td key={side}>{ears[side] ? <Otis3Total line={ears[side]} side={side} /> : words.notExamined}</td>
            ))}
          </tr>
        </tbody>
      </table>
      <Caution />
    </section>
  )
}

function leaves(line: Findings | undefined, rows: (line: Line) => readonly SaidRow[]): SaidRow[] {
  if (!line) return []
  const free = ['examined', 'text']
  return rows(line as unknown as Line)
    .filter(({ at }) => !free.includes(at))
    .flatMap((row) => (row.said.kind === 'rows' ? row.said.rows : [row]))
}

function Answer({ row, examined }: { readonly row: SaidRow | undefined; readonly examined: boolean }) {
  if (!examined) return <span className={styles.open}>{words.notExamined}</span>
  if (!row) return <span className={styles.open}>{readingInEnglish.notAsked}</span>
  const open = row.said.kind === 'blank' || (row.said.kind === 'text' && row.said.open)
  return <span className={open ? styles.open : undefined}>{plainSaid(row.said, () => '')}</span>
}

/** The OTIS-3 total of one look, or that it is not known, with its "why?". */
export function Otis3Total({ line, side }: { readonly line: Findings; readonly side: Side }) {
  const { file } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species ?? 'dog'
  const total = otis3Total(line.body.otis3)
  return (
    <>
      {total.kind === 'answer' ? (
        <strong>{fill(words.outOf, { total: String(total.answer) })}</strong>
      ) : (
        <span className={styles.open}>{words.notKnown}</span>
      )}
      <Why
        about={`${words.total}, ${side}`}
        make={() => whyOtis3(line, species, otis3CutOffs)}
        hrefOf={(entry) => `#entry-${entry}`}
      />
    </>
  )
}
