import type { OwnerWords } from '#content/languages/owner-words.ts'
import { type Side, sides } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { earOf } from '../case/case-words.ts'

/** Both ears in a sentence each; an ear that nobody examined is said to be so. */
export function earSentences(file: CaseFile, { leaflet: words, papers }: OwnerWords): string[] {
  return sides.map((side) => {
    const findings = file.theCase.live('ear-findings').findLast((line) => earOf(line) === side)?.body
    const about = { side: papers.sides[side] }
    if (!findings) return fill(words.earNotExamined, about)
    const said = [...findingWords(findings, words), ...scanWords(file, side, words)]
    return fill(words.ear, { ...about, findings: said.join('; ') || papers.notRecorded })
  })
}

type Said = OwnerWords['leaflet']

function findingWords(
  { stenosis, canalFeel, painOnPressing, mass }: BodyOf<'ear-findings'>,
  { earFindings }: Said,
): string[] {
  const said: string[] = []
  if (stenosis === 'could-not-see') said.push(earFindings.unseen)
  else if (stenosis !== 'not-assessed') said.push(earFindings[stenosis])
  if (canalFeel === 'bone-hard') said.push(earFindings.boneHard)
  if (painOnPressing === 'yes') said.push(earFindings.pain)
  if (painOnPressing === 'no') said.push(earFindings.noPain)
  if (mass === 'yes') said.push(earFindings.mass)
  return said
}

function scanWords({ theCase }: CaseFile, side: Side, { earFindings }: Said): string[] {
  const bulla = theCase.latest('imaging')?.body[side]?.bulla
  if (bulla === 'filled') return [earFindings.filled]
  return bulla === 'air' ? [earFindings.air] : []
}
