import type { Observable } from '#core/theatre/ledger.ts'
import type { Awaited } from '#core/theatre/recovery.ts'

/** What the ledger of an anaesthetic says, on the screen and on paper. */
export const ledgerInEnglish = {
  names: {
    'heart-rate': 'heart rate',
    'respiratory-rate': 'breaths',
    'oxygen-saturation': 'oxygen saturation',
    'end-tidal-co2': 'end-tidal CO₂',
    systolic: 'systolic pressure',
    mean: 'mean pressure',
    diastolic: 'diastolic pressure',
    temperature: 'temperature',
    vapour: 'vapour',
    fluids: 'fluids, as set',
  } satisfies Record<Observable, string>,
  stripName: '{what}, {unit}',
  value: '{what} {value}',
  method: '({method})',
  noMethod: '(how it was measured is not written)',
  artefact: 'ARTEFACT',
  unmeasured: 'Nothing could be measured: {because}',
  pain: 'pain {score} of {outOf} ({scale})',
  first: {
    blink: 'first blink',
    sternal: 'lies on the breastbone',
    'normal-temperature': 'temperature normal',
    eaten: 'has eaten',
    walked: 'has walked',
  },
  firstOf: '{first}, {side} eye',
  nothingWritten: 'nothing else was written',
  gap: 'NOTHING MEASURED from {from} to {until}: {minutes} min',
  gapLasting: 'NOTHING MEASURED since {from}: {minutes} min',
  clockBack: 'The clock goes back: {before} becomes {after}. Minutes are real ones.',
  clockForward: 'The clock goes forward: {before} becomes {after}. Minutes are real ones.',
  notDone: '{what}: not done. {because}',
  ofEar: '{side} ear: {what}',
  given: 'Given: {drug} {parts}',
  sideBySide: 'Two entries stand side by side here; a person must settle it.',
  rule: 'A gap is more than {minutes} min from one measured value to the next, from the beginning of anaesthesia to tube out. An artefact and “nothing could be measured” end none.',
  noStart: 'nobody stamped the beginning: before the first measured value none can be counted',
  noEnd: 'nobody stamped tube out: counted to the last stamp',
  nothingMeasured: 'nothing was measured at all',
  noGap: 'none of more than {minutes} min',
  gaps: {
    one: 'one, of {total} min{ofAll}',
    many: '{count}, together {total} min{ofAll}, the longest {longest} min',
  },
  ofAll: ' in {minutes} min',
  stripsCaption:
    'Dots are measured values, joined where no gap lies between. Rings are artefacts; at the edge, beyond the true values. Bands are gaps. Ticks: steps and drugs.',
  stripsAlt:
    'One strip for each of: {names}; from {from} to {until}. The table of observations and events says the same in words.',
  recovery: {
    events: {
      blink: 'First blink, {side} eye',
      sternal: 'Lies on the breastbone',
      'normal-temperature': 'Temperature normal',
    } satisfies Record<Awaited, string>,
    after: '{at}, {span} after tube out',
    look: 'found at a look',
    unsided: 'nobody wrote whose eye',
    waiting: 'Waiting: {span} since tube out',
    block: '{drug} at {at}, {where}: may act until {until}',
    blockUnknown: '{drug} at {at}, {where}: how long it acts is not on record here',
    noBlock: 'No local anaesthetic is written for this operation.',
    effect:
      '{side} eye: a missing blink until {until} is a possible block effect and is not graded as a palsy. The eye is lubricated anyway.',
    effectUnknown:
      '{side} eye: how long the block acts is not known here, so a missing blink is a possible block effect. The eye is lubricated anyway.',
  },
} as const
