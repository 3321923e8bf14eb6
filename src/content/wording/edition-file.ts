import type { EditionFault } from '#core/culture/edition-column.ts'

/** What keeps the file of an edition from being loaded, each with what would be right. */
export const editionFaults: Record<EditionFault['code'], string> = {
  'not-a-table':
    'This is no table: one heading, one delimiter throughout, as many cells in each line. It begins with “{found}”.',
  'no-rows': 'There is a heading and no row below it.',
  'column-unknown': 'No column is called “{found}”. Take it out, or call it by a name of the description.',
  'column-twice': 'The column “{found}” stands there twice.',
  'column-missing': 'This column is missing.',
  'not-written': 'Nothing stands here. It has to be written.',
  'too-long': 'This is longer than {near} letters.',
  'not-a-year': '“{found}” is no year like 2024.',
  'not-one-of': '“{found}” is none of: {near}.',
  'not-the-same': '“{found}” is not “{near}”, as in the first row. A file holds one edition.',
  'host-of-others':
    '“{found}” does not fit whom the edition is made for: “human” stands in one for people and nowhere else.',
  'organism-unknown': 'Nobody here knows the organism “{found}”.',
  'drug-unknown': 'Nobody here knows the drug “{found}”.',
  'disk-missing': 'A zone needs the load of its disk, as in “30 µg”.',
  'disk-of-dilution': 'A dilution has no disk: “{found}” does not belong here.',
  'end-not-understood':
    '“{found}” is not understood. By CLSI: <=2, 4; 8, >=16 (zones >=20, 17-19, <=16). By EUCAST R is >4, or <20 for a zone.',
  'off-the-ladder':
    '“{found}” does not stand on the doubling ladder (0.03, 0.06, 0.12, 0.25 …), or is no whole zone of 6 mm or more.',
  'ends-turned': 'The ends do not go one way from S to R: {found}.',
  'ends-gap': 'Between the ends lies a step without a name: {found}. Name it I or SDD, or correct an end.',
  'no-ends': 'No end stands in this row. Where the document states none, the kind is “none”.',
  'ends-of-none': 'A row of the kind “none” has no ends.',
  'dose-missing': 'SDD needs the dose of each step: SDD 0.12 (10 mg/kg); 0.25 (20 mg/kg).',
  'dose-of-people': 'Doses of people are not taken: nobody may scale them to an animal.',
  'row-twice': 'The same animal, organism, drug, site and method stand in line {found}.',
}

/** The file of an edition, on the command line and in the settings. */
export const editionFileWords = {
  place: 'line {line}',
  placeOfColumn: 'line {line}, {column}',
  fault: '{place}: {said}',
  near: '{said} It may mean: {near}.',
  rows: { one: '1 row', many: '{count} rows' },
  whole: '{name}: {rows}, all readable.',
  nothing: {
    one: '1 fault; nothing of the file was taken.',
    many: '{count} faults; nothing of the file was taken.',
  },
} as const
