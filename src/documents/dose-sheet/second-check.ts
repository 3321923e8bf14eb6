import { papersInEnglish } from '#content/wording/papers.ts'
import { doseSheetWords as words } from '#content/wording/papers-dose.ts'
import { type CheckState, checkStates, sayVoided } from '#core/dosing/second-check.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { whenOf } from '../case/case-words.ts'
import { drugName } from '../case/drug-name.ts'
import { type Block, paragraph } from '../render/model.ts'
import type { PlannedEntry } from './plan-tables.ts'

/**
 * Who worked it out again; "nobody available", "not yet" and "it no longer counts" are printed as loudly as a name.
 * `asOf` is the cut of an operation that is over.
 */
export function secondCheckBlocks(file: CaseFile, planned: readonly PlannedEntry[], asOf: string | null): Block[] {
  const states = checkStates(file.theCase, planned, asOf)
  const groups = new Map<string, { readonly state: CheckState; readonly drugs: string[] }>()
  for (const line of planned) {
    const state = states.get(line.header.id) ?? { kind: 'none' }
    const key =
      state.kind === 'none' ? state.kind : JSON.stringify([state.kind, state.check.header.id, becauseOf(state)])
    const group = groups.get(key) ?? { state, drugs: [] }
    group.drugs.push(drugName(line.body.drug))
    groups.set(key, group)
  }
  return [...groups.values()].map(({ state, drugs }) => stateBlock(file, state, named(drugs)))
}

function stateBlock(file: CaseFile, state: CheckState, lines: string): Block {
  if (state.kind === 'none') return stop('attention', words.secondWords.missing, fill(words.secondMissing, { lines }))
  const { check } = state
  const { author } = check.header
  const person = author.kind === 'person' ? personNamed(file, author.person) : author.kind
  const about = { person, when: whenOf(check), lines, text: check.body.text ?? '', because: becauseOf(state) }
  switch (state.kind) {
    case 'agrees':
      return paragraph([fill(words.secondAgrees, about), ...boundTo(check)].join(' '))
    case 'disagrees':
      return stop('stop', words.secondWords.disagrees, fill(words.secondDisagrees, about))
    case 'nobody-available':
      return stop('attention', words.secondWords.agrees, fill(words.secondNobody, about))
    case 'same-person':
      return stop('attention', words.secondWords.missing, fill(words.secondOwn, about))
    case 'void':
      return stop('stop', words.secondWords.void, fill(words.secondVoid, about))
  }
}

/** The animal the name stands for, and the first signs of the fingerprint, as the screen shows them. */
function boundTo({ body: { plan } }: Exclude<CheckState, { kind: 'none' }>['check']): string[] {
  if (!plan) return []
  const { species, weight, fingerprint } = plan
  const about = {
    species: papersInEnglish.species[species],
    weight: weight ? inBothUnits(fromStored(weight)) : papersInEnglish.notRecorded,
    fingerprint: fingerprint.slice(0, 8),
  }
  return [fill(words.secondFingerprint, about)]
}

function becauseOf(state: CheckState): string {
  return state.kind === 'void' ? sayVoided(state.because, words.secondVoidBecause) : ''
}

function stop(tone: 'stop' | 'attention', word: string, line: string): Block {
  return { kind: 'callout', tone, word, lines: [line] }
}

/** Each drug once, in the order of the plan. */
function named(drugs: readonly string[]): string {
  return [...new Set(drugs)].join(', ')
}
