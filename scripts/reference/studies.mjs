import { howKnown, inWords, whereFrom } from './facts.mjs'
import { bullets, head, plainText, table } from './markdown.mjs'

/** The published counts, study by study. */
export function studiesPage({
  studies,
  citations,
  exactInterval,
  outcomeDefinitions,
  asideReasons,
  countBases,
  caution,
}) {
  const outcomes = [...new Set(studies.flatMap((study) => study.rows.map((row) => row.outcome)))].sort()
  return [
    ...head(
      'Published studies',
      'What each study counted, as events out of total, with the exact 95 % interval. Animals, ears and operations are never added; dogs and cats are never mixed. A row that is set aside says why and is never part of a figure.',
      caution,
    ),
    ...table(
      ['study', 'design', 'species', 'counted', 'set aside'],
      studies.map((study) => [
        `[${study.id}](#${study.id})`,
        study.design,
        [...new Set(study.rows.map((row) => row.species))].sort().join(', '),
        study.rows.filter((row) => row.pool.use === 'primary').length,
        study.rows.filter((row) => row.pool.use !== 'primary').length,
      ]),
    ),
    '## What was counted',
    '',
    ...table(
      ['outcome', 'meaning'],
      outcomes.map((code) => [inWords(code), plainText(outcomeDefinitions[code].meaning)]),
    ),
    ...studies.flatMap((study) => studySection(study, citations, { exactInterval, asideReasons, countBases })),
  ]
}

function studySection(study, citations, words) {
  return [
    `## ${study.id}`,
    '',
    `${plainText(citations.get(study.source))} [${study.source}](sources.md#${study.source})${study.doi ? ` DOI ${study.doi}.` : ''} Design: ${study.design}.${study.remark ? ` ${plainText(study.remark)}` : ''}`,
    '',
    ...bullets(
      study.overlaps.map(
        (other) =>
          `Some animals are ${other.likelihood === 'probable' ? 'probably' : 'possibly'} the same as in [${other.study}](#${other.study}): ${plainText(other.because)}`,
      ),
    ),
    ...table(
      [
        'species',
        'operation',
        'outcome',
        'count',
        'of 100 (exact 95 %)',
        'use',
        'followed',
        'remarks',
        'how known',
        'source',
      ],
      study.rows.map((row) => [
        row.species,
        inWords(row.procedure),
        inWords(row.outcome),
        countOf(row, words.countBases),
        shareOf(row, words.exactInterval),
        row.pool.use === 'primary' ? 'counted' : `aside: ${words.asideReasons[row.pool.because]}`,
        row.followed.kind === 'stated' ? plainText(row.followed.text) : 'not stated',
        [
          row.subgroup && `Subgroup: ${row.subgroup}.`,
          row.reading && `Reading ${row.reading}.`,
          row.remark,
          row.printed,
        ]
          .filter(Boolean)
          .map(plainText)
          .join(' '),
        howKnown(row),
        whereFrom(row),
      ]),
    ),
  ]
}

const unitNames = { animal: ['animal', 'animals'], ear: ['ear', 'ears'], procedure: ['operation', 'operations'] }

function countOf({ counted, unit, basis }, countBases) {
  const how = basis === 'stated' ? '' : ` (${countBases[basis]})`
  if (counted.kind === 'percent-only') return `${counted.printed}, of ${unitNames[unit][1]}${how}`
  return `${counted.events} of ${counted.total} ${unitNames[unit][counted.total === 1 ? 0 : 1]}${how}`
}

function shareOf({ counted }, exactInterval) {
  if (counted.kind === 'percent-only') return 'not known'
  const interval = exactInterval(counted)
  if (interval.kind === 'refusal') return 'not known'
  const per = (share) => (share * 100).toFixed(1)
  return `${per(counted.events / counted.total)} (${per(interval.answer.low)} to ${per(interval.answer.high)})`
}
