import type { DoseFinding } from './findings.ts'
import type { DoseLine } from './request.ts'

/** One thing a second person stands for, and the lines it is about; no line when it is about the animal. */
export type Ask = { readonly finding: DoseFinding; readonly lines: readonly string[] }

/** Everything that has to be confirmed before this plan is carried out: one interruption, however many reasons. */
export type Confirmation = {
  readonly asks: readonly Ask[]
  /** `now`, or `later` when an emergency was declared: then the reason stands already and the second name is owed. */
  readonly secondName: 'now' | 'later'
}

/**
 * Gathers what asks for a second person into one question. A refused line asks for nothing: it is not carried out.
 *
 * @example confirmationOf(lines, findings, undefined)?.asks.length // 2: the weight, for three lines, and one dose
 */
export function confirmationOf(
  lines: readonly DoseLine[],
  findings: readonly DoseFinding[],
  isEmergency: boolean,
): Confirmation | undefined {
  const asks = new Map<string, { finding: DoseFinding; lines: string[] }>()
  const ask = (finding: DoseFinding, line?: string) => {
    if (finding.level !== 'confirm') return
    const key = JSON.stringify([finding.code, finding.about])
    const known = asks.get(key) ?? { finding, lines: [] }
    if (line !== undefined) known.lines.push(line)
    asks.set(key, known)
  }
  const open = lines.filter(({ verdict }) => verdict !== 'refused')
  if (open.length === 0) return undefined
  for (const finding of findings) ask(finding)
  for (const line of open) for (const finding of line.findings) ask(finding, line.id)
  return asks.size === 0 ? undefined : { asks: [...asks.values()], secondName: isEmergency ? 'later' : 'now' }
}
