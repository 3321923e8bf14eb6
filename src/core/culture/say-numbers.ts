import type { Edition } from './breakpoint.ts'
import { editionName } from './edition-name.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { type CultureFinding, say } from './findings.ts'
import type { Line } from './lines.ts'
import type { Organism } from './organism.ts'
import { printedCategory } from './printed-value.ts'
import { type ReadBy, readDrug } from './read-drug.ts'

/** What is to be said of one number: why it cannot be told, and where the laboratory reads it otherwise. */
export function numberFindings(
  line: Line,
  organism: Organism,
  by: ReadBy,
  facts: SusceptibilityFacts,
): CultureFinding[] {
  const { read, agent } = line
  const drug = agent?.name ?? read.printed
  const about = { drug, organism: organism.name, raw: read.raw }
  return [
    ...(read.doubt ? [say('confirm', read.doubt, about)] : []),
    ...(read.flags.includes('panel-does-not-reach') && read.breakpoint
      ? [
          say('confirm', 'panel-does-not-reach', {
            ...about,
            ends: ends(read.breakpoint),
            standard: read.breakpoint.standard,
            possible: read.possible.join(', '),
          }),
        ]
      : []),
    ...(read.proposal
      ? [
          say(
            'confirm',
            'proposed-value-lower',
            {
              ...about,
              proposed: `<=${read.proposal.ends.value.susceptible}`,
              dose: read.proposal.dose?.value ?? 'not known',
            },
            read.proposal.ends,
            ...(read.proposal.dose ? [read.proposal.dose] : []),
          ),
        ]
      : []),
    ...(read.flags.includes('laboratory-differs') ? [differs(line, organism, by, facts, about)] : []),
  ]
}

/** The ends of a used row in one text: `S <=2, I 4, R >=8`. */
export function ends({ susceptible, between, resistant }: NonNullable<Line['read']['breakpoint']>): string {
  const parts = [susceptible && `S ${susceptible}`, between, resistant && `R ${resistant}`]
  return parts.filter((part) => part !== null && part !== '').join(', ')
}

/** Where an older edition of the same standard says what the laboratory says, that is the likely reason. */
function differs(
  { row, read }: Line,
  organism: Organism,
  by: ReadBy,
  { editions }: SusceptibilityFacts,
  about: Readonly<Record<string, string>>,
): CultureFinding {
  const theirs = printedCategory(read.laboratory)
  const told = { ...about, ours: read.category, theirs: read.laboratory ?? '', standard: editionName(by.edition) }
  const older = olderFirst(editions, by.edition).find(
    (edition) => row !== null && readDrug(row, organism, { ...by, edition, proposals: [] }).category === theirs,
  )
  return older
    ? say('confirm', 'laboratory-differs-by-edition', {
        ...told,
        likely: editionName(older),
        year: String(by.edition.year),
      })
    : say('confirm', 'laboratory-differs', told)
}

/** Older editions of the same standard, the newest of them first. */
function olderFirst(editions: readonly Edition[], { standard, year }: Edition): Edition[] {
  return editions
    .filter((one) => one.standard === standard && one.year < year)
    .sort((one, other) => other.year - one.year)
}
