import { useId, useMemo, useRef } from 'react'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { nerveCourseInEnglish, nerveScreen as words } from '#content/wording/nerve-course.ts'
import { drawCourse } from '#core/nerve-course/draw-course.ts'
import type { NerveCourse } from '#core/nerve-course/nerve-course.ts'
import { inks } from '#core/plate/theme.ts'
import { endOfDay } from '#core/time/calendar-day.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { silent, svgElement } from '../../../plate/svg-element.tsx'
import { useTheme } from '../../../plate/use-theme.ts'
import { useWidth } from '../../../plate/use-width.ts'
import { useCaseView } from '../case-view.ts'
import styles from './nerve-course.module.css'

const ours = { ink: 'var(--ink)', quiet: 'var(--ink-soft)', accent: 'var(--accent)' } as const

/** The looks of one ear as lines over time. The sentences above and the table below say the same. */
export function CourseDrawing({ course }: { readonly course: NerveCourse }) {
  const { zone } = useCaseView().file.clinic
  const now = useMinute()
  const box = useRef<HTMLDivElement>(null)
  const { width, words: larger } = useWidth(box)
  const colours = useTheme() === 'forced' ? inks.forced : ours
  const id = useId().replaceAll(/\W/g, '')
  const until = course.ended ? endOfDay(course.ended.on, zone) : now
  const drawn = useMemo(
    () =>
      drawCourse(course, {
        width,
        font: Math.round(14 * larger),
        colours,
        until,
        every: owedRules.face.thenEvery.value,
        words: { ...words, signs: nerveCourseInEnglish.signs, steps: nerveCourseInEnglish.steps },
        id: `hatch-${id}`,
      }),
    [course, width, larger, colours, until, id],
  )
  return (
    <div ref={box}>
      {drawn && (
        <figure className={styles.figure}>
          <svg
            role="img"
            aria-label={words.pictureAlt}
            width={drawn.width}
            height={drawn.height}
            viewBox={`0 0 ${drawn.width} ${drawn.height}`}
          >
            {svgElement(silent(drawn.nodes), 0)}
          </svg>
          <figcaption>{words.caption}</figcaption>
        </figure>
      )}
    </div>
  )
}
