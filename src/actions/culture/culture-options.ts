import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { sources } from '#content/sources/index.ts'
import { cautions } from '#content/susceptibility/cautions.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { optionWords } from '#content/wording/culture-options.ts'
import { type AgainstIsolate, type CultureOption, isReserved, type Way } from '#core/culture/option.ts'
import { cultureOptions } from '#core/culture/options.ts'
import type { ReadingRequest } from '#core/culture/read-isolates.ts'
import type { IsolateReading } from '#core/culture/reading.ts'
import { sayWhyOf } from '#core/culture/say-option.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import { fill } from '#core/outcome/finding.ts'
import { type FindingAnswer, type LineAnswer, writeFinding, writeLine } from '../dosing/dose-answer.ts'
import { type AskedDose, readDoseRequest } from '../dosing/dose-request.ts'
import { InputError } from '../input.ts'

export type OptionAnswer = {
  /** The agent, and the drug of the formulary that it stands for. */
  readonly drug: string
  readonly formulary: string | null
  readonly verdict: CultureOption['verdict']
  /** The isolates that it works against. */
  readonly isolates: readonly string[]
  readonly why: readonly string[]
  readonly whyNot: readonly string[]
  /** The dose that somebody chose; null while nobody did: none is ever filled in. */
  readonly dose: LineAnswer['dose'] | null
  readonly dispense?: LineAnswer['dispense']
  /** Each way it could be given, with its range, as the command `dose` answers. */
  readonly ways: readonly LineAnswer[]
  readonly tier: { readonly category: string; readonly says: string; readonly sources: readonly Cited[] } | null
  /** Category A: only where nothing else is left. */
  readonly reserved: boolean
  /** What it could do to an animal of this species. */
  readonly harms: readonly { readonly says: string; readonly sources: readonly Cited[] }[]
  /** What the record of this animal says of it. */
  readonly findings: readonly (FindingAnswer | OwnFinding)[]
  readonly sources: readonly Cited[]
}
type OwnFinding = Pick<FindingAnswer, 'code' | 'level' | 'text' | 'sources'>

/** What of the input of a culture speaks of the animal: the shapes of the command `dose`. */
export type AboutAnimal = {
  readonly animal?: unknown
  readonly given?: unknown
  readonly at?: unknown
  /** Doses that somebody chose, each of one drug. */
  readonly lines?: unknown
}

/**
 * What could be used against the isolates, in the order of stewardship; nothing without an animal, and nothing for a
 * specimen of another place than an ear. Malformed input throws an InputError, and so does an animal of another species
 * than the culture.
 *
 * @example optionsOf({ animal: { species: 'cat' } }, { host: 'cat', site: 'soft-tissue' }, isolates)[0]?.verdict // 'could'
 */
export function optionsOf(
  { animal, given, at, lines }: AboutAnimal,
  { host, site }: Pick<ReadingRequest, 'host' | 'site'>,
  isolates: readonly IsolateReading[],
): OptionAnswer[] {
  if (animal === undefined || site !== 'soft-tissue') return []
  const said = Object.entries({ animal, given, at, lines }).filter(([, value]) => value !== undefined)
  const asked = readDoseRequest(Object.fromEntries(said))
  if (asked.animal.species !== host) {
    const message = `animal.species: the culture is of a ${host}, the animal is a ${asked.animal.species}; correct one.`
    throw new InputError('other-species', 'animal.species', message)
  }
  const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
  const question = { isolates, ...questionOf(asked) }
  return cultureOptions(question, { ...susceptibility, cautions, knowledge }).map(writeOption)
}

function questionOf({ animal, given, at, lines }: AskedDose) {
  return { animal, given, ...(at && { at }), ...(lines && { lines }) }
}

function writeOption(option: CultureOption): OptionAnswer {
  const { agent, drug, verdict, against, ways, tier, harms, inAnimal } = option
  const chosen = ways.find(({ line }) => line.dose !== undefined)
  const works = ({ standing }: AgainstIsolate) => standing === 'works' || standing === 'works-at-dose'
  const line = chosen && writeWay(chosen)
  return {
    drug: agent,
    formulary: drug,
    verdict,
    isolates: against.filter(works).map(({ isolate }) => isolate),
    ...sayWhyOf(option, optionWords),
    dose: line?.dose ?? null,
    ...(line?.dispense && { dispense: line.dispense }),
    ways: ways.map(writeWay),
    tier: tier && {
      category: tier.value.category,
      says: optionWords.tiers[tier.value.category],
      sources: cite([tier], sources),
    },
    reserved: isReserved(option),
    harms: harms.map((harm) => ({ says: harm.value, sources: cite([harm], sources) })),
    findings: [...inAnimal.map(writeFinding), ...option.findings.map(writeOwn)],
    sources: cite(
      ways.flatMap(({ line: { sources: facts } }) => facts),
      sources,
    ),
  }
}

function writeWay({ line }: Way): LineAnswer {
  return writeLine(line, [line])
}

function writeOwn({ code, about }: CultureOption['findings'][number]): OwnFinding {
  const level = code === 'dose-needed-over-most' ? 'block' : 'confirm'
  return { code, level, text: fill(optionWords.findings[code], about), sources: [] }
}
