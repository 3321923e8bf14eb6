import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { questionsApp as words } from '#content/wording/app-questions.ts'
import { fill } from '#core/outcome/finding.ts'
import { settingOf } from '#core/owed/setting.ts'
import { type Asking, askingsOf } from '#core/questionnaire/askings.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { useCaseView } from '../case-view.ts'

/** Every time of asking of the case that is open, as it stands now. */
export function useAskings(): readonly Asking[] {
  const { file } = useCaseView()
  return askingsOf(settingOf(file, procedures, { rules: owedRules }), useMinute())
}

/** What a time of asking is called; with the day of the operation where there are two of that name. */
export function sayOccasion(asking: Asking, all: readonly Asking[]): string {
  const occasion = words.occasions[asking.occasion.id]
  const isAlone = all.filter((one) => one.occasion.id === asking.occasion.id).length === 1
  return isAlone ? occasion : fill(words.ofOperation, { occasion, day: sayStoredDay(asking.dayOfOperation) })
}
