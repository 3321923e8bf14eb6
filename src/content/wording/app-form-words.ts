import { outcomeDefinitions } from '../outcomes/outcome-definitions.ts'
import { procedures } from '../procedures/index.ts'

/** Words that are the same on every form, in English. */
export const formsInEnglish = {
  /** Options that mean the same wherever they stand. */
  options: {
    yes: 'yes',
    no: 'no',
    'not-assessed': 'not assessed',
    'not-asked': 'not asked',
    'not-reported': 'not reported',
    'not-stated': 'not stated',
    LEFT: 'LEFT',
    RIGHT: 'RIGHT',
    BOTH: 'BOTH',
  },
  ears: { LEFT: 'LEFT ear', RIGHT: 'RIGHT ear' },
  sides: { LEFT: 'LEFT', RIGHT: 'RIGHT' },
  /** Stands behind the label of a field that may stay empty. */
  optional: 'optional',
  choose: 'choose…',
  now: 'Now',
  remove: 'Remove',
  removeItem: 'Remove {item}',
  close: 'Take it out again',
  restNotAssessed: 'All that is still open: not assessed',
  restNotAsked: 'All that is still open: not asked',
  restOfEar: 'Rest of the {side} ear: not assessed',
  noneOnRecord: 'None is on record yet.',
  writeOther: 'not in this list: write it',
  chooseFromList: 'Choose from the list',
  notInList: '{id} (not in the list)',
  unitAfterWhat: 'unit follows from what is measured',
  readAs: 'Read as {value}.',
  detailsAfterCheckpoint: 'Choose the point first.',
  noDetails: 'Nothing else is asked at this point.',
  estimate: {
    none: 'Together: no line has both prices yet.',
    total: 'Together {low} to {high}.',
    mixed: 'Two currencies stand among the lines: there is no sum.',
    ceiling: 'The limit is {ceiling}.',
    open: { one: '1 line is not in the sum yet.', many: '{count} lines are not in the sum yet.' },
  },
  otis3: {
    none: 'OTIS-3: no sign graded yet',
    open: 'OTIS-3 so far {total}, still open: {signs}',
    unknown: 'OTIS-3 total not known: {signs} not assessed',
    total: 'OTIS-3 total {total} of 12',
  },
  errors: {
    title: { one: 'One answer is missing or cannot be read', many: '{count} answers are missing or cannot be read' },
    line: '{label} – {sentence}',
    lineAt: '{where}: {label} – {sentence}',
    more: { one: 'And 1 more', many: 'And {count} more' },
    rowsOpen: { one: 'One row is still open.', many: '{count} rows are still open.' },
  },
} as const

/** How a drug reaches the animal. */
export const routeWords = {
  IV: 'into the vein (IV)',
  IM: 'into the muscle (IM)',
  SC: 'under the skin (SC)',
  IO: 'into the bone (IO)',
  PO: 'by mouth (PO)',
  OTM: 'through the lining of the mouth',
  INH: 'inhaled',
  TD: 'through the skin',
  perineural: 'beside the nerve',
  infiltration: 'infiltrated',
  splash: 'splashed on',
  'wound-catheter': 'wound catheter',
  topical: 'on the skin',
  'topical-eye': 'into the eye',
  'topical-ear': 'into the ear',
} as const

/** The operations by the names that their own files give them. */
export const procedureWords: Readonly<Record<string, string>> = Object.fromEntries(
  procedures.map(({ id, name }) => [id, name]),
)

/** What a study counted, as an owner hears it. */
export const outcomeWords: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(outcomeDefinitions).map(([code, { operated }]) => [code, operated]),
)
