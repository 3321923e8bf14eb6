import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { findingWords } from '#content/wording/letter.ts'
import type { ToldId } from '#core/choice/option.ts'

const names: Readonly<Record<ToldId, string>> = {
  ...findingWords.options,
  'both-in-one-session': choiceInEnglish.writing.sessions['both-in-one-session'],
  staged: choiceInEnglish.writing.sessions.staged,
}

/** An option in the words of the trade, as the letters and forms name it. */
export function optionName(option: ToldId): string {
  return names[option]
}
