import type { FaultCode } from '#core/laboratory/fault.ts'
import type { Contradiction, Identifier } from '#core/laboratory/match-case.ts'
import type { DoubtCode } from '#core/laboratory/report.ts'

const faults: Readonly<Record<FaultCode, string>> = {
  empty: 'There is nothing in it to read. Send the whole file again.',
  'too-long': 'It is longer than any report. Ask the laboratory for fewer results in one file.',
  'begins-with-no-header':
    'It begins with “{found}” and not with the header of a message (MSH). Ask for the whole message.',
  'delimiters-unreadable':
    'The header does not say what parts its fields: “{found}”. Ask the laboratory to send it again.',
  'not-a-segment':
    '“{found}” is no line of a result message. A line may have been broken in two on its way: ask for the file itself.',
  'not-a-result-message': 'This is a message of another kind (“{found}”). Results come as ORU^R01.',
  'version-unknown':
    'The message is of version “{found}”. Versions 2.3 to 2.5.1 can be read: ask the laboratory for one of them.',
  'batch-count': 'The file says how many messages it holds, and has another number: {found}. Ask for the whole file.',
  'observation-without-order':
    'A result stands where no order of this animal was named. Ask the laboratory to send it again.',
  'category-in-wrong-field':
    'In the ninth field of the line stands “{found}”; a category belongs in the eighth. Ask the laboratory to send it right: it cannot be told which results it means.',
  'category-twice': 'The line says two categories at once: {found}. Ask the laboratory which is right.',
  'value-type-missing': 'The value “{found}” does not say what it is (OBX-2 is empty).',
  'value-type-unknown': '“{found}” is no type of value. Ask the laboratory to send it again.',
  'number-unreadable': '“{found}” should be one number. Ask the laboratory which.',
  'several-values': 'The line gives several values: {found}. Ask the laboratory which is right.',
  'date-unreadable': '“{found}” is not a date that can be read.',
  'date-two-readings': '“{found}” can be two days. Say below which number is the day.',
  'status-unknown': 'It cannot be told whether this line is final: “{found}”. The message may have been cut off.',
  'wrong-patient': 'The laboratory says itself that this line was sent for the wrong animal. Ask it what is right.',
  'entered-in-error': 'The laboratory marks this as entered in error. Ask it what is right.',
  'parent-missing': 'These drugs belong to an isolate that is not in the message: “{found}”.',
  'parent-disagrees': 'These drugs say that they belong to “{found}”; the isolate under that number is another.',
  'isolate-unclear': 'It cannot be told to which isolate “{found}” belongs. Ask the laboratory.',
  'isolate-twice': 'Two isolates stand under one number, the second is “{found}”. Ask the laboratory.',
  'drug-twice': '“{found}” has two different values for one isolate. Ask the laboratory which is right.',
  'unit-disagrees': 'The value and its method say different units: {found}.',
  'no-columns': 'No columns can be found in it: “{found}”. Copy the whole table with its headings, or choose the file.',
  'delimiter-unclear':
    'It can be cut into columns in more than one way ({found}). Save it with semicolons or tabs between the columns.',
  'ragged-row':
    'The row has another number of cells than the headings: “{found}”. A decimal comma may have been taken for the end of a cell: save it with semicolons or tabs.',
  'quote-open': 'A cell begins with a quotation mark and never ends: “{found}”.',
  'column-twice': 'Two columns have the heading “{found}”. Rename one of them.',
  'column-new': 'The column “{found}” is new in the tables of this laboratory. Say below what it holds.',
  'column-missing':
    'A column is missing: {found}. A table needs one for the organism, and one for the drug or one for each drug.',
  'drug-without-isolate': 'A value of “{found}” stands in a row without an organism.',
  'animals-differ':
    'Rows under one number of the laboratory say different things: {found}. Nothing of the table is taken.',
  'not-readable-text': 'This is not text. A picture or a PDF goes into the holding tray, and its values are typed.',
}

const doubts: Readonly<Record<DoubtCode, string>> = {
  'status-not-said': 'It does not say whether it is final.',
  'growth-not-said': 'It does not say whether anything grew.',
  'unit-not-said': '{drug} {value}: no unit stands beside it.',
  'unit-unknown':
    '{drug} {value}: “{unit}” is no unit that can be read. It is kept as printed, and nothing is read from it.',
  'value-unclear': '{drug}: “{value}” is not one number. It is kept as printed, and nothing is read from it.',
  'side-not-said': 'It names no side.',
  'both-sides': 'It names both sides.',
  'some-corrected-some-preliminary': 'Some of its lines are corrected, others only preliminary.',
}

const identifiers: Readonly<Record<Identifier, string>> = {
  chip: 'chip',
  name: 'name',
  owner: 'owner',
  label: 'label of the tube',
  accession: 'number of the laboratory',
}
const against: Readonly<Record<Contradiction, string>> = {
  chip: 'another chip',
  name: 'another name',
  owner: 'another owner',
  species: 'another species',
}

/** Taking in a result of a laboratory, in English. */
export const takeInResultInEnglish = {
  title: 'Take in a result',
  lead: 'A table or a message of a laboratory is read whole or not at all. It is filed only when two things agree with the animal; otherwise it waits in the holding tray. The original is kept byte for byte.',
  readIt: 'Read it as a result',
  fileGone: 'The original is not on this device, and the server does not answer with it. Try again when it does.',
  fromTray: 'Take in a result that is a table or a message',
  choose: 'Choose the file',
  paste: 'Or paste the table or the message',
  pasteHelp: 'With its headings. A table copied from a screen or a mail will do.',
  read: 'Read what was pasted',
  anew: 'Begin anew',
  encoding: 'Its letters are not in UTF-8. They were read as Western European: look whether accents are right.',
  faults,
  faultTitle: 'It cannot be read',
  messageFault: 'The message that begins in line {line} cannot be read',
  at: { line: 'Line {line}.', field: 'Line {line}, {field}.' },
  nothingTaken: 'Nothing of it was taken.',
  holdWhole: 'Put the file in the holding tray',
  table: {
    title: 'What the columns say',
    guessed: 'Look at each: this is how the headings were understood. The first rows stand beside them.',
    remembered: 'Read as remembered for {laboratory}. Change it here if the laboratory has changed its table.',
    drug: 'Drug of “{heading}”',
    unit: 'Its numbers are',
    unitNone: 'not said',
    dates: 'Which number of a date is the day?',
    dateOrders: {
      'day-first': 'the first: 3/4 is the 3rd of April',
      'month-first': 'the second: 3/4 is the 4th of March',
    },
    comma: 'What is a comma before three digits?',
    commas: { decimal: 'a decimal comma', thousands: 'it parts thousands' },
    remember: 'Remember this for the laboratory called',
    rememberDo: 'Remember',
    file: 'the file {name}',
    changed: 'The laboratory writes its table differently now.',
    rememberedNow: 'Remembered. The next table with these headings is read so.',
  },
  reports: { one: '1 report', many: '{count} reports' },
  animal: { both: '{name}, owner {owner}', name: '{name}, no owner named', none: 'No animal is named' },
  chip: 'chip {chip}',
  collected: 'sample taken {when}',
  report: { accession: 'number {accession}', label: 'tube {label}', none: 'no number' },
  statuses: { preliminary: 'preliminary', final: 'final', corrected: 'corrected' },
  growths: { none: 'no growth', growth: 'growth', 'not-a-culture': 'not a culture: tissue or cells' },
  doubts,
  isolate: '{organism}, {amount}',
  taken: 'taken for {name}',
  untaken: 'kept as printed; nothing is read from it',
  drugLine: '{drug} {value}',
  laboratorySays: 'laboratory: {category}',
  tests: '{test} {result}',
  text: 'It also says',
  questions: {
    title: 'Before it can be filed',
    status: 'Is it final?',
    growth: 'Did anything grow?',
    unit: 'What are the numbers without a unit?',
    units: { 'mg/L': 'mg/L (MIC)', mm: 'millimetres (zone)', unknown: 'nobody knows: keep them as printed' },
    organism: 'Which organism is “{printed}”?',
    agent: 'Which drug is “{printed}”?',
    none: 'none of these: keep it as printed',
    other: 'another one …',
  },
  match: {
    looking: 'Looking for the animal …',
    one: 'This is {name}, owner {owner}. What agrees: {agree}.',
    several: 'It could belong to more than one animal: {names}. Nothing on it tells them apart.',
    contradicted: 'It looks like {names}, but something else stands on it: {against}.',
    tooFew: 'Only this agrees with {names}: {agree}. Two things must agree before it is filed.',
    none: 'No animal on file fits.',
    elsewhere: 'Results under this number stand with {name} already. Only one of the two can be right.',
    noOwner: 'not on record',
    identifiers,
    against,
    list: ', ',
    animals: '; ',
  },
  tube: {
    one: 'It is of the tube {label}, {side}, {site}.',
    choose: 'Which tube is it of? Nothing on it names one of ours.',
    option: '{label}, {side}, {site}, taken {when}',
    other:
      'The report names {says}; the tube {label} is {side}. It is not filed until the laboratory says which is right.',
    none: 'No tube of this animal was written down on that side. Write down the specimen first, then file the report from the holding tray.',
    bothSides: 'both sides',
  },
  filing: {
    already: 'It stands in the case already, the same in every value. Nothing is filed twice.',
    older:
      'A later report under this number stands in the case ({status}). This one is older and is not filed over it.',
    otherTube: 'A report under this number stands with another tube, {label}. It is not filed to a second one.',
    supersedes: 'It takes the place of the report under this number ({status}), which stays in the history.',
    acted: 'Somebody had acted on the earlier one:',
    reason: 'Filed from what the laboratory sent.',
    again: 'The laboratory sent it again: {status}.',
    do: 'File to {name}, {side}',
    hold: 'Put it in the holding tray',
    filed: 'Filed to {name}, {side}.',
    held: 'It waits in the holding tray.',
    open: 'Open its results',
    laboratory: 'Which laboratory sent it?',
    laboratoryNone: 'not in the address book',
  },
  says: '{animal}; {ear}; {report}',
  noSide: 'no side',
  save: {
    title: 'Result {name} {number}',
    table: 'Save it as a table (CSV)',
    message: 'Save it as a message (HL7)',
  },
} as const
