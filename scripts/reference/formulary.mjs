import { howKnown, inWords, say, whereFrom } from './facts.mjs'
import { bullets, head, plainText, sentence, table } from './markdown.mjs'

/** The drugs, each row with every column and how each is known. */
export function formularyPage({ formulary, caution }) {
  const words = say
  return [
    ...head(
      'Formulary',
      'Every dose here is a range from a source. Neither end nor the middle is a default: a dose is chosen by a person, a house policy or a named plan. Sources that disagree stand side by side. What is missing is unknown, not unlimited.',
      caution,
    ),
    ...table(
      ['drug', 'class', 'dog', 'cat'],
      formulary.map((drug) => [`[${drug.name}](#${drug.id})`, drug.class, usesOf(drug, 'dog'), usesOf(drug, 'cat')]),
    ),
    ...formulary.flatMap((drug) => drugSection(drug, words)),
  ]
}

function usesOf(drug, species) {
  const doses = drug.doses.filter((row) => row.species === species).map((row) => inWords(row.use))
  const none = drug.none.filter((one) => one.species === species)
  const without = none.map(
    (one) => `${one.use ? `${inWords(one.use)}: ` : ''}${one.why === 'never' ? '**never**' : 'no dose found'}`,
  )
  return [...new Set([...doses, ...without])].join(', ') || 'not stated'
}

function drugSection(drug, words) {
  return [
    `## ${drug.id}`,
    '',
    `${sentence(drug.name)} ${sentence(drug.class)}${drug.groups.length > 0 ? ` Groups: ${drug.groups.map(inWords).join(', ')}.` : ''}${drug.aliases.length > 0 ? ` Also called ${drug.aliases.join(', ')}.` : ''}`,
    '',
    ...localAnaesthetic(drug, words),
    ...table(
      ['species', 'use', 'no dose', 'because', 'how known', 'source'],
      drug.none.map((one) => [
        one.species,
        `${one.formulation ? `${one.formulation}, ` : ''}${one.use ? inWords(one.use) : 'every use'}`,
        one.why === 'never' ? '**never**' : 'none found',
        plainText(one.because),
        howKnown(one),
        whereFrom(one),
      ]),
    ),
    ...drug.doses.flatMap((row) => rowSection(row, words)),
  ]
}

function localAnaesthetic({ localAnaesthetic }, words) {
  if (!localAnaesthetic) return []
  const { limits, otherLimits = [], washout, formulations = [] } = localAnaesthetic
  const fact = (what, one) => [what, words(one.value), howKnown(one), whereFrom(one)]
  return [
    'As a local anaesthetic it counts toward the one limit of the animal:',
    '',
    ...table(
      ['what', 'value', 'how known', 'source'],
      [
        ...Object.entries(limits).map(([species, one]) => fact(`limit, ${species}`, one)),
        ...otherLimits.map((one) => fact(`limit, ${one.species}, another source (not used)`, one)),
        fact('still counts for', washout),
        ...formulations.flatMap((own) => [
          ...Object.entries(own.limits).map(([species, one]) => fact(`${own.formulation}: limit, ${species}`, one)),
          fact(`${own.formulation}: still counts for`, own.washout),
        ]),
      ],
    ),
  ]
}

function rowSection(row, words) {
  const bracket = row.qualifier ? ` (${row.qualifier})` : ''
  const form = row.formulation ? `, ${row.formulation}` : ''
  const fact = (what, one, value) => [what, value ?? words(one.value), howKnown(one), whereFrom(one)]
  const optional = (what, one, value) => (one ? [fact(what, one, value?.(one.value))] : [])
  return [
    `### ${sentence(row.species).slice(0, -1)}, ${inWords(row.use)}: ${row.routes.join(' or ')}${bracket}${form}`,
    '',
    ...table(
      ['what', 'value', 'how known', 'source'],
      [
        fact('dose range', row.range),
        ...(row.otherRanges ?? []).map((one) => fact('another source (not used)', one)),
        fact('interval', row.interval, plainText(row.interval.value.words)),
        ...(row.otherIntervals ?? []).map((one) =>
          fact('interval, another source (not used)', one, plainText(one.value.words)),
        ),
        ...optional('loading dose before it', row.loading),
        ...optional('most at once', row.maxSingle, (value) => withWords(words(value.limit), value.words)),
        ...optional('most in all', row.maxCumulative, (value) =>
          withWords(value.limit ? `${words(value.limit)} per ${value.per}` : `per ${value.per}`, value.words),
        ),
        fact(
          'strengths',
          row.stocks,
          row.stocks.value.map((one) => withWords(one.strength && words(one.strength), one.words)).join('\n') ||
            'unknown',
        ),
        ...optional('tablets', row.tablets, (value) =>
          value.map((one) => withWords(`${words(one.strength)}, ${divides[one.divides]}`, one.words)).join('\n'),
        ),
        fact(
          'cautions',
          row.cautions,
          row.cautions.value.map((one) => `${plainText(one.words)}${sayWhen(one.when, words)}`).join('\n') ||
            'none recorded',
        ),
        fact(
          'never when',
          row.exclusions,
          row.exclusions.value.map((one) => `${plainText(one.because)}${sayWhen(one.when, words)}`).join('\n') ||
            'none recorded',
        ),
      ],
    ),
    ...bullets((row.neverByHand ?? []).map((text) => `Never: ${plainText(text)} (only a person can see this).`)),
  ]
}

const divides = {
  whole: 'not divided',
  halves: 'may be halved',
  quarters: 'may be quartered',
  unknown: 'dividing unknown',
}

function withWords(value, words) {
  if (!value) return plainText(words ?? 'unknown')
  return words ? `${value} (${plainText(words)})` : value
}

function sayWhen(when, words) {
  if (!when) return ''
  switch (when.kind) {
    case 'any-of':
      return ` [${when.words.map(inWords).join(' or ')}]`
    case 'all-of':
      return ` [${when.words.map(inWords).join(' and ')}]`
    case 'lighter-than':
      return ` [lighter than ${words(when.weight)}]`
    case 'younger-than':
      return ` [younger than ${when.months} months${when.only ? `, ${inWords(when.only)}` : ''}]`
    case 'given-within':
      return ` [${when.drug} given within ${words(when.time)}]`
    case 'given-at-least':
      return ` [${when.drug} given, ${words(when.dose)} or more]`
    default:
      throw new Error(`The page of drugs cannot say when "${when.kind}" applies.`)
  }
}
