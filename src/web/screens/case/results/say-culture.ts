import { cultureFindingWords, drugFlagWords } from '#content/wording/culture.ts'
import { type Finding, fill } from '#core/outcome/finding.ts'

const findings: Readonly<Record<string, string>> = cultureFindingWords
const flags: Readonly<Record<string, string>> = drugFlagWords

/** What is to be said of an isolate, as a sentence. A code without words is a bug and stands there as it is. */
export function sayCultureFinding({ code, about }: Finding): string {
  const words = findings[code]
  return words === undefined ? code : fill(words, about)
}

/** What stands beside one drug, in few words. */
export function sayDrugFlag(flag: string): string {
  return flags[flag] ?? flag
}
