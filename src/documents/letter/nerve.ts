import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { nerveCourseInEnglish, nerveScreen } from '#content/wording/nerve-course.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { nerveCoursesOf } from '#core/nerve-course/nerve-course.ts'
import { sayCourse } from '#core/nerve-course/say-course.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { type Block, heading, list, paragraph, strong, text } from '../render/model.ts'

/** Face, Horner's, balance and eye of every operated ear against the look before it; nothing where no ear was operated. */
export function nerveBlocks(file: CaseFile, title: string, level: 1 | 2): Block[] {
  const courses = nerveCoursesOf(file, { ...owedRules, counting: ownCounting })
  if (courses.length === 0) return []
  const rules = new Set<string>()
  const ears = courses.flatMap((course): Block[] => {
    const said = sayCourse(course, file, nerveCourseInEnglish)
    rules.add(said.rule)
    const about = { side: course.operation.side, date: sayCalendarDay(course.day) }
    return [
      paragraph([strong(`${fill(nerveScreen.ear, about)}. `), text(said.before)]),
      list([...said.signs, ...(said.ended === null ? [] : [said.ended])]),
    ]
  })
  return [heading(level, title), ...ears, ...[...rules].map((rule) => paragraph(rule))]
}
