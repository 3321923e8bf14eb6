import { howKnown, inWords, say, whereFrom } from './facts.mjs'
import { bullets, head, plainText, table } from './markdown.mjs'

/** The operations: when, when not, the checkpoints of the theatre, the risks by name, what is agreed, what falls due. */
export function proceduresPage({ procedures, outcomeDefinitions, caution }) {
  return [
    ...head(
      'Procedures',
      'Each operation as the tool holds it. How often a risk happens stands in the [studies](studies.md), never here.',
      caution,
    ),
    ...table(
      ['operation', 'species', 'checkpoints', 'named risks'],
      procedures.map((one) => [
        `[${one.name}](#${one.id})`,
        one.species.join(', '),
        one.checkpoints.length,
        one.risks.length,
      ]),
    ),
    ...procedures.flatMap((one) => procedureSection(one, outcomeDefinitions)),
  ]
}

function procedureSection(one, outcomeDefinitions) {
  const reasons = (title, facts) =>
    facts.length === 0
      ? []
      : [
          `### ${title}`,
          '',
          ...table(
            ['reason', 'how known', 'source'],
            facts.map((fact) => [plainText(fact.value), howKnown(fact), whereFrom(fact)]),
          ),
        ]
  return [
    `## ${one.id}`,
    '',
    `${one.name}. Species: ${one.species.join(', ')}.`,
    '',
    ...reasons('For', one.indications),
    ...reasons('Against', one.against),
    ...checkpoints(one),
    ...(one.risks.length === 0
      ? []
      : [
          '### Risks by name',
          '',
          ...table(
            ['risk', 'meaning', 'shows'],
            one.risks.map(({ outcome, shows }) => [
              inWords(outcome),
              plainText(outcomeDefinitions[outcome].meaning),
              inWords(shows),
            ]),
          ),
        ]),
    ...(one.consentItems.length === 0
      ? []
      : ['### Agreed with the owner', '', ...bullets(one.consentItems.map(inWords))]),
    ...followUp(one.followUp),
  ]
}

function checkpoints({ checkpoints, checkpointsComplete }) {
  const unknown =
    checkpointsComplete.kind === 'unknown' ? [`Not complete: ${plainText(checkpointsComplete.because)}`, ''] : []
  if (checkpoints.length === 0 && unknown.length === 0) return []
  return [
    '### Checkpoints',
    '',
    ...unknown,
    ...table(
      ['checkpoint', 'mind', 'asked', 'because', 'how known', 'source'],
      checkpoints.map((point) => [
        point.title,
        plainText(point.mind),
        point.details.map((detail) => detail.asks).join(', '),
        point.because.map((fact) => plainText(fact.value)).join('\n'),
        point.because.map(howKnown).join('\n'),
        point.because.map(whereFrom).join('\n'),
      ]),
    ),
  ]
}

function followUp({ steps, faceLooks, plans }) {
  const row = (step) => [
    inWords(step.id),
    step.way,
    say(step.window.value),
    howKnown(step.window),
    whereFrom(step.window),
  ]
  const looks = faceLooks.kind === 'known' ? faceLooks.fact : []
  const unknown =
    faceLooks.kind === 'unknown' ? [`Looks at face and eye: not known. ${plainText(faceLooks.because)}`, ''] : []
  return [
    '### What falls due afterwards',
    '',
    ...table(['what', 'how', 'after the operation', 'how known', 'source'], [...steps, ...looks].map(row)),
    ...unknown,
    ...(plans.length === 0
      ? []
      : [`Plans to settle at the recheck of weeks 4 to 6: ${plans.map(inWords).join(', ')}.`, '']),
  ]
}
