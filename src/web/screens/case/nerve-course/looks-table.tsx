import { nerveCourseInEnglish as said, nerveScreen as words } from '#content/wording/nerve-course.ts'
import type { NerveCourse } from '#core/nerve-course/nerve-course.ts'
import { sayReading } from '#core/nerve-course/say-course.ts'
import type { SignCourse } from '#core/nerve-course/sign-course.ts'
import { fill } from '#core/outcome/finding.ts'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import { entryHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './nerve-course.module.css'

/** Every look with what it says of each sign, the look before the operation first. */
export function LooksTable({ course }: { readonly course: NerveCourse }) {
  const { file, id } = useCaseView()
  const { looks, baseline, operation } = course
  const signs = course.signs.filter(isToldOf)
  if (looks.length === 0) return null
  const { zone } = file.clinic
  const caption = fill(words.tableCaption, { side: operation.side })
  return (
    <details className={styles.opener}>
      <summary>{words.table}</summary>
      <ScrollBox label={caption}>
        <table>
          <caption>{caption}</caption>
          <ColumnHeads of={[...Object.values(words.columns), ...signs.map(({ sign }) => said.signs[sign])]} />
          <tbody>
            <tr>
              <td>
                {baseline ? <a href={entryHref(id, baseline.entry)}>{sayWhen(baseline.at, zone)}</a> : words.notKnown}
              </td>
              <td>{words.beforeRow}</td>
              <td>{baseline ? said.sources.us : ''}</td>
              {signs.map((one) => (
                <td key={one.sign}>{sayBefore(one)}</td>
              ))}
            </tr>
            {looks.map((look) => (
              <tr key={look.entry}>
                <td>
                  <a href={entryHref(id, look.entry)}>{sayWhen(look.at, zone)}</a>
                </td>
                <td>{look.day}</td>
                <td>{said.sources[look.source]}</td>
                {signs.map((one) => (
                  <Cell key={one.sign} one={one} entry={look.entry} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </details>
  )
}

/** A sign at which nobody looked since, and which was not there before, has no column: the sentences name it. */
function isToldOf({ points, before }: SignCourse): boolean {
  return points.length > 0 || (before.kind === 'known' && before.reading.step !== 0)
}

function sayBefore({ sign, before }: SignCourse): string {
  return before.kind === 'known' ? sayReading(sign, before.reading, said) : words.notKnown
}

function Cell({ one, entry }: { readonly one: SignCourse; readonly entry: string }) {
  const point = one.points.find(({ look }) => look.entry === entry)
  if (!point) return <td className="soft">{words.notAssessed}</td>
  return (
    <td>
      {sayReading(one.sign, point.reading, said)}
      {point.change !== 'normal' && <span className={styles.change}>{said.changes[point.change]}</span>}
    </td>
  )
}
